import { useMemo, useState } from 'react';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { ScoreSheet } from '../../../../core/model/scoreSheet.ts';
import { lengthText, sheetReading, sheetTotal } from '../../../../core/questions/index.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { PutAway } from '../../../design/PutAway.tsx';
import { edited } from '../../../state/bench.ts';
import { now, whenText } from '../../../state/clock.ts';
import { useBench, useBenchApi, useUnits } from '../../../state/useBench.ts';
import { keepFocus } from '../../frame/keepFocus.ts';
import { ScoreSheetPage } from './ScoreSheetPage.tsx';
import { sheetsOf } from './sheets.ts';

interface Props {
  bundle: Bundle;
  shaftRadius: number;
  /** What the next sheet begins with. */
  usual: Pick<ScoreSheet, 'distance' | 'face'>;
}

/** Scores written down without places: what they add up to, and how wide the arrows fell. */
export function ScoreSheets({ bundle, shaftRadius, usual }: Props) {
  const units = useUnits();
  const bench = useBenchApi();
  const records = useBench((state) => state.records);
  const sheets = useMemo(() => sheetsOf(records, bundle.setup.id), [records, bundle.setup.id]);
  const [open, setOpen] = useState<string | null>(null);
  const today = now();
  const nameOf = ({ distance, ends }: ScoreSheet) => {
    const { total, arrows } = sheetTotal(ends);
    return `${textQuantity(distance, 'distance', units)}: ${total} with ${arrows}`;
  };
  const chosen = sheets.kept.find(({ id }) => id === open) ?? null;
  const close = () => setOpen(null);
  return (
    <section className="score-sheets">
      <h2 className="plate">Score sheets</h2>
      <ul>
        {sheets.kept.map((sheet) => (
          <li key={sheet.id}>
            <button type="button" className="link" onClick={() => setOpen(sheet.id)}>
              {nameOf(sheet)}
            </button>{' '}
            <span className="faint">{whenText(sheet.shotAt, today)}</span>
            <p>{spreadLine(sheet, shaftRadius, units)}</p>
          </li>
        ))}
      </ul>
      <div className="acts">
        <button type="button" className="link" onClick={() => setOpen('new')}>
          New score sheet
        </button>
      </div>
      {open === 'new' && (
        <ScoreSheetPage bundle={bundle} sheet={null} usual={sheets.kept[0] ?? usual} shaftRadius={shaftRadius} onClose={close} />
      )}
      {chosen !== null && (
        <ScoreSheetPage key={chosen.id} bundle={bundle} sheet={chosen} usual={chosen} shaftRadius={shaftRadius} onClose={close} />
      )}
      <PutAway
        items={sheets.away.map((sheet) => ({
          id: sheet.id,
          name: `Scores, ${nameOf(sheet)}`,
          small: whenText(sheet.shotAt, today),
        }))}
        onTakeOut={(id) =>
          void bench
            .getState()
            .change('A score sheet taken out again', (all) => {
              const sheet = all.get(id);
              return sheet?.kind === 'scoreSheet' ? [edited(sheet, { archivedAt: null })] : [];
            })
            .then(keepFocus)
        }
      />
    </section>
  );
}

function spreadLine(sheet: ScoreSheet, shaftRadius: number, units: ReturnType<typeof useUnits>): string {
  const read = sheetReading(sheet.ends, sheet.face, sheet.distance, shaftRadius);
  return read.ok ? `Mean radius of many such ${lengthText(read.value.meanRadius, units)}.` : read.problem.sentence;
}
