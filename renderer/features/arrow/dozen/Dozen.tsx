import { memo, useMemo } from 'react';
import { setStatistics } from '../../../../core/dozen/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { Choice, Figure, Fraction, Mark } from '../../../design/index.ts';
import { DotStrip } from '../../../plots/strip/DotStrip.tsx';
import { useUnits } from '../../../state/useBench.ts';
import { DozenButton } from '../DozenButton.tsx';
import { askOf, useDozenPage } from '../store.ts';
import { atTarget, dozenTitle, matchedLine, restOfSet, stripsOf } from './derive.ts';
import './dozen.css';

/** The numbered set: each arrow a dot, the odd ones named, the best-matched ones, and what the spread does at a distance. */
export const Dozen = memo(function Dozen({ bundle, width }: { bundle: Bundle; width: number }) {
  const units = useUnits();
  const { arrowSet, setup } = bundle;
  const { matching } = useDozenPage(setup.id);
  const set = useMemo(() => setStatistics(arrowSet, units, matching), [arrowSet, units, matching]);
  const strips = useMemo(() => (set.ok ? stripsOf(arrowSet, set.value, units) : []), [set, arrowSet, units]);
  const rest = set.ok ? restOfSet(set.value, units) : '';
  return (
    <section className="dozen">
      <h2 className="plate">{dozenTitle(arrowSet, set.ok ? set.value : null)}</h2>
      <DozenButton bundle={bundle} />
      {!set.ok && arrowSet.arrows.length > 0 && <p className="note">{set.problem.sentence}</p>}
      {strips.map((strip) => (
        <div key={strip.name} className="dozen-strip">
          <p className="note">
            <Fraction>{strip.line}</Fraction>
          </p>
          <DotStrip data={strip.data} width={width} said={strip.line} />
        </div>
      ))}
      {rest !== '' && <p className="note">{rest}</p>}
      {set.ok && set.value.outliers.length > 0 && (
        <ul className="dozen-odd">
          {set.value.outliers.map((outlier) => (
            <li key={outlier.sentence}>
              <Mark level={outlier.what === 'flaw' ? 'stop' : 'caution'} />
              <span>{outlier.sentence}</span>
            </li>
          ))}
        </ul>
      )}
      {set.ok && set.value.mass === null && <p className="note">Weigh each arrow, and enter the masses in the table above.</p>}
      {set.ok && set.value.mass !== null && set.value.shooting > 1 && <Asked bundle={bundle} shooting={set.value.shooting} />}
    </section>
  );
});

/** What is asked of the set: how many that match, and what their spread does at a distance. */
function Asked({ bundle, shooting }: { bundle: Bundle; shooting: number }) {
  const units = useUnits();
  const { arrowSet, setup } = bundle;
  const page = useDozenPage(setup.id);
  const count = Math.min(page.count, shooting);
  const matched = useMemo(() => matchedLine(arrowSet, count, page.matching, units), [arrowSet, count, page.matching, units]);
  const target = useMemo(() => atTarget(bundle, page.distance, units), [bundle, page.distance, units]);
  const counts = Array.from({ length: shooting - 1 }, (_, i) => String(i + 2));
  return (
    <div className="dozen-asked">
      <div>
        <Choice
          name="arrows that match"
          value={String(count)}
          options={counts.map((value) => ({ value, text: value }))}
          onKeep={(value) => askOf(setup.id, { count: Number(value) })}
        />
        <Choice
          name="sorted"
          value={page.matching}
          options={[
            { value: 'club', text: 'for the club' },
            { value: 'match', text: 'for a match' },
          ]}
          onKeep={(value) => askOf(setup.id, { matching: value })}
        />
        <p className="note">
          <Fraction>{matched}</Fraction>
        </p>
      </div>
      <div>
        <Figure
          measure="shootingDistance"
          name="at a distance"
          value={page.distance}
          required
          onKeep={(distance) => {
            if (distance !== null) askOf(setup.id, { distance });
          }}
        />
        <p className="note">
          <Fraction>{target.line}</Fraction>
        </p>
        {target.cannot !== null && <p className="note faint">{target.cannot}</p>}
      </div>
    </div>
  );
}
