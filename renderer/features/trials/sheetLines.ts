import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { TrialKind } from '../../../core/model/trial.ts';
import type { TrialRow, TrialSheet } from '../../../core/trials/index.ts';
import { textQuantity } from '../../../core/units/index.ts';

interface SheetLine {
  readonly key: string;
  readonly name: string;
  /** In the order of the heads; null where the line has none. */
  readonly boxes: readonly (TrialRow | null)[];
}

interface SheetLines {
  readonly heads: readonly string[];
  readonly lines: readonly SheetLine[];
}

/** The rows of a sheet laid out as a table: places downward, ends across, speeds in a column of their own. */
export function linesOf({ rows }: TrialSheet, kind: TrialKind, units: UnitChoice): SheetLines {
  const shots = rows.filter(({ which }) => which !== 'speeds');
  const most = shots.reduce((end, row) => Math.max(end, row.end), 0);
  const word = kind === 'paper tear' ? 'tear' : kind === 'clearance' ? 'shot' : 'end';
  const speeds = rows.some(({ which }) => which === 'speeds');
  const lines = new Map<string, { name: string; boxes: (TrialRow | null)[] }>();
  for (const row of rows) {
    const key = lineKey(row);
    const line = lines.get(key) ?? {
      name: nameOf(row, kind, units),
      boxes: Array.from({ length: most + (speeds ? 1 : 0) }, () => null),
    };
    lines.set(key, line);
    line.boxes[row.which === 'speeds' ? most : row.end - 1] = row;
  }
  return {
    heads: [...Array.from({ length: most }, (_, i) => `${word} ${i + 1}`), ...(speeds ? ['speeds'] : [])],
    lines: [...lines].map(([key, line]) => ({ key, ...line })).sort((a, b) => order(a) - order(b)),
  };
}

const lineKey = ({ place, which, fletching }: TrialRow): string =>
  `${place?.distance ?? ''} ${place?.step ?? ''} ${which === 'speeds' ? 'first' : which} ${which === 'tear' ? fletching : ''}`;

function nameOf({ place, which, fletching }: TrialRow, kind: TrialKind, units: UnitChoice): string {
  const at = place === null ? '' : textQuantity(place.distance, 'distance', units);
  const step =
    place === null || place.step === null
      ? null
      : textQuantity(place.step, kind === 'nocking point' ? 'setting' : 'length', units);
  const where = step ?? at;
  if (kind === 'a against b') return which === 'first' ? 'A' : 'B';
  if (kind === 'clearance') return 'powder';
  if (kind === 'bare shaft' || kind === 'nocking point') return `${where} ${fletching}`;
  return where;
}

/** Places in order, the fletched line above the bare one. */
function order({ boxes }: SheetLine): number {
  const row = boxes.find((one) => one !== null);
  return (
    (row?.place?.distance ?? 0) * 1e6 +
    (row?.place?.step ?? 0) * 1e4 +
    (row?.which === 'second' || row?.fletching === 'bare' ? 1 : 0)
  );
}
