import { useBundle } from '../../state/useBench.ts';
import { Headline } from '../frame/Headline.tsx';
import { ArrowForm } from './ArrowForm.tsx';
import { Reckoned } from './Reckoned.tsx';
import './arrow.css';

/** The arrow as it is built, what follows from it, and whether this bow wants it. */
export function Arrow() {
  const bundle = useBundle();
  if (bundle === null) return null;
  return (
    <>
      <Headline
        screen="arrow"
        clear="Nothing measured on this arrow is out of range"
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
