import { useState } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import { MOST_READINGS } from '../../../core/model/readings.ts';
import type { TableRead } from '../../../core/tables/index.ts';
import { Figure } from '../../design/index.ts';
import { EntrySheet, EntryTable, isBlank, PasteTable, TableFates, withSpare } from '../../design/entry/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { useEdits } from '../../state/useEdits.ts';
import { blankSpeed, speedColumns, speedRows, speedsFromTable, speedsOf, type SpeedRow } from './speedRows.ts';

/** Arrows of several masses over a chronograph, kept as one Change with the brace height and the draw they were shot at. */
export function SpeedsSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  const units = useUnits();
  const edit = useEdits();
  const { setup, archer } = bundle;
  const [start] = useState(() => withSpare(speedRows(setup.chronograph, units), blankSpeed, MOST_READINGS));
  const [rows, setRows] = useState<readonly SpeedRow[]>(start);
  const [startBrace] = useState(setup.chronographBrace ?? setup.settings.braceHeight);
  const [brace, setBrace] = useState(startBrace);
  const [startDraw] = useState(setup.chronographDraw ?? archer.drawLength);
  const [draw, setDraw] = useState(startDraw);
  const [read, setRead] = useState<TableRead | null>(null);

  const { found: speeds, wrong } = speedsOf(rows, units);
  const count = speeds.length;
  const onRead = (text: string) => {
    const table = speedsFromTable(text, units);
    setRead(table.read);
    setRows(withSpare([...rows.filter((row) => !isBlank(row, blankSpeed)), ...table.rows], blankSpeed, MOST_READINGS));
  };
  return (
    <EntrySheet
      title="Arrows over the chronograph"
      keep={count === 0 ? 'Keep no arrows' : `Keep ${count} ${count === 1 ? 'arrow' : 'arrows'}`}
      changed={rows !== start || brace !== startBrace || draw !== startDraw}
      wrong={wrong}
      held={[setup.chronograph, setup.chronographBrace, setup.chronographDraw]}
      onKeep={() =>
        edit.setup('Arrows over the chronograph', {
          chronograph: [...speeds],
          chronographBrace: count === 0 ? null : brace,
          chronographDraw: count === 0 ? null : draw,
        })
      }
      onClose={onClose}
    >
      <p className="note care">
        At a butt with the ground beyond it clear, nobody in front of the line. No arrow lighter than the bow’s maker allows, and
        none that is too short for this archer.
      </p>
      <Figure measure="braceHeight" name="at a brace height of" value={brace} onKeep={setBrace} />
      <Figure measure="drawLength" name="at a draw of" value={draw} onKeep={setDraw} hint="AMO draw, as on the archer’s page." />
      <EntryTable
        name="Timed arrows"
        columns={speedColumns}
        rows={rows}
        blank={blankSpeed}
        most={MOST_READINGS}
        onChange={setRows}
        onPasted={setRead}
      />
      <PasteTable holds="mass, speed" onRead={onRead} />
      <TableFates read={read} />
      <p className="hint">
        One row for each arrow as it was shot; the same arrow may stand here more than once. Two masses that lie far apart tell
        the most.
      </p>
    </EntrySheet>
  );
}
