import { useBundle, useUnits } from '../../state/useBench.ts';
import { Headline } from '../frame/Headline.tsx';
import { suitabilityOf, suitsSentence } from './derive.ts';
import { ArrowForm } from './ArrowForm.tsx';
import { Reckoned } from './Reckoned.tsx';
import './arrow.css';

/** The arrow as it is built, what follows from it, and whether this bow wants it. */
export function Arrow() {
  const bundle = useBundle();
  const units = useUnits();
  if (bundle === null) return null;
  return (
    <>
      <Headline
        screen="arrow"
        clear={suitsSentence(suitabilityOf(bundle), units)}
        note="A spine is a deflection with its span and its load; a bare number such as 500 says neither."
      />
      <div className="body arrow-columns">
        <div className="form">
          <ArrowForm bundle={bundle} />
        </div>
        <Reckoned bundle={bundle} />
      </div>
    </>
  );
}
