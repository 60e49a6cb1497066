import { useState } from 'react';
import { alongNotes, dragAlong } from '../../../../core/flight/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { MOST_READINGS } from '../../../../core/model/readings.ts';
import type { TableRead } from '../../../../core/tables/index.ts';
import { EntrySheet, EntryTable, isBlank, PasteTable, TableFates, withSpare } from '../../../design/entry/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { useEdits } from '../../../state/useEdits.ts';
import {
  blankFlightSpeed,
  flightSpeedColumns,
  flightSpeedRows,
  flightSpeedsFromTable,
  flightSpeedsOf,
  type FlightSpeedRow,
} from './flightSpeedRows.ts';

/** One arrow's speed at several places of its flight, typed or pasted, and kept as one Change. */
export function FlightSpeedsSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  const units = useUnits();
  const edit = useEdits();
  const { flightSpeeds } = bundle.setup;
  const [start] = useState(() => withSpare(flightSpeedRows(flightSpeeds, units), blankFlightSpeed, MOST_READINGS));
  const [rows, setRows] = useState<readonly FlightSpeedRow[]>(start);
  const [read, setRead] = useState<TableRead | null>(null);

  const { found: speeds, rowOf, wrong } = flightSpeedsOf(rows, units);
  const count = speeds.length;
  const along = count < 2 ? null : dragAlong(speeds);
  const remarks = (row: number): readonly string[] =>
    along?.ok === true && along.value.inconsistent !== null && rowOf[along.value.inconsistent] === row
      ? ['Does not fit the others.']
      : [];
  const said = along === null ? [] : along.ok ? alongNotes(along.value, units) : [along.problem.sentence];
  const onRead = (text: string) => {
    const table = flightSpeedsFromTable(text, units);
    setRead(table.read);
    setRows(
      withSpare([...rows.filter((row) => !isBlank(row, blankFlightSpeed)), ...table.rows], blankFlightSpeed, MOST_READINGS),
    );
  };
  return (
    <EntrySheet
      title="Speeds along the flight"
      keep={count === 0 ? 'Keep no speeds' : `Keep ${count} ${count === 1 ? 'speed' : 'speeds'}`}
      changed={rows !== start}
      wrong={wrong}
      held={flightSpeeds}
      onKeep={() => edit.setup('Speeds along the flight', { flightSpeeds: [...speeds] })}
      onClose={onClose}
    >
      <p className="note care">
        Nobody forward of the line while anybody shoots, and the ground beyond the butt clear. An arrow that touches a chronograph
        or its stand may fly anywhere: shoot over one only where every arrow goes where it is sent.
      </p>
      <EntryTable
        name="Speeds along the flight"
        columns={flightSpeedColumns}
        rows={rows}
        blank={blankFlightSpeed}
        most={MOST_READINGS}
        onChange={setRows}
        onPasted={setRead}
        remarks={remarks}
      />
      {said.map((sentence) => (
        <p key={sentence} className="note" role="status">
          {sentence}
        </p>
      ))}
      <PasteTable holds="distance, speed" onRead={onRead} />
      <TableFates read={read} />
      <p className="hint">
        The same arrow of this set each time, in still air, with the chronograph about as high as the loose. The farther the
        places lie apart, the better; with four, one that is wrong can be named.
      </p>
    </EntrySheet>
  );
}
