import { useBundle } from '../../state/useBench.ts';
import { ArcherForm } from './ArcherForm.tsx';
import { BowForm } from './BowForm.tsx';
import { SettingsForm } from './SettingsForm.tsx';
import { Headline } from '../frame/Headline.tsx';
import './bow.css';

/** Everything a tape, a square and a bow scale can say of this archer and this bow, as a plain form; the findings stand beside it. */
export function Bow() {
  const bundle = useBundle();
  if (bundle === null) return null;
  return (
    <>
      <Headline
        screen="bow"
        clear="Nothing measured on this bow is out of range"
        note="Enter keeps a figure, Esc gives the old one back. Any unit may follow a number: 8 3/4 in, 222 mm, 38 lb."
      />
      <div className="body two-columns">
        <div className="form">
          <SettingsForm bundle={bundle} />
        </div>
        <div className="form">
          <BowForm bundle={bundle} />
          <ArcherForm bundle={bundle} />
        </div>
      </div>
    </>
  );
}
