import { ok, type Bundle, type Result, type SpeedReading } from '../../model/index.ts';
import type { Band } from '../../model/band.ts';
import { defaultPreferences } from '../../model/preferences.ts';
import { drawnOf, letDownOf, type Drawn } from '../curve/drawn.ts';
import { kindFigures } from '../kinds.ts';
import { CHRONOGRAPH_DOUBT, speedLine, type SpeedLine } from './speedLine.ts';
import { speedRows, type SpeedRows } from './speedRows.ts';

/** What a bow's speeds say of its virtual mass: a line through several masses, or one mass with an assumed loss. */
export interface SpeedBasis {
  readonly read: SpeedRows;
  /** The force-draw curve then and now; null where it cannot be had. */
  readonly then: Drawn | null;
  readonly now: Drawn | null;
  /** Null where all the arrows weigh about the same. */
  readonly line: SpeedLine | null;
  /** Their mean where they weigh about the same. */
  readonly single: SpeedReading;
  /** K [kg]; null where one mass is all there is and the energy is not known. */
  readonly virtualMass: Band | null;
  /** η E at the brace height and draw that the speeds were read at [J]; null likewise. */
  readonly returned: Band | null;
  /** η: out of letting down, else the kind's; null for a compound that was not let down [-]. */
  readonly share: Band | null;
  readonly shareFrom: 'let-down' | 'kind' | 'nothing';
  /** Why K may not be used. */
  readonly doubt: 'level' | 'not of a bow' | 'more than stored' | 'scatter' | null;
}

/** The virtual masses that a bow's can be told from a slip by: published bows have 5.5 to 15.9 g. The ends are from memory. */
export const believable = { low: 0.002, high: 0.03 } as const;
/** Arrows nearer than this share of their mass say no more than one does. */
const ALIKE = 0.05;
/** A chronograph scatters by about 1 %: speeds that scatter by more than this share are no one bow's. */
const MOST_SCATTER = 0.03;

/**
 * What the speeds of a set-up say, before anything is said of it.
 *
 * @equation masses more than 5 % apart: speedLine; else K = 2 η E/v² − m at their mean; credible when K lies between 2 and 30 g, W's low end is not above E's high end, and the scatter is at most 3 %
 * @param bundle - the set-up with its records [record]
 * @returns the fit, with the energies it is held against [record]
 * @validity refused as speedRows
 * @source klopsteg-1943
 * @example speedBasis(exampleBundle).ok // false
 */
export function speedBasis(bundle: Bundle): Result<SpeedBasis> {
  const read = speedRows(bundle);
  if (!read.ok) return read;
  const { rows, then: before, moved } = read.value;
  const nowDrawn = drawnOf(bundle);
  const thenDrawn = moved ? drawnOf(before) : nowDrawn;
  const now = nowDrawn.ok ? nowDrawn.value : null;
  const then = thenDrawn.ok ? thenDrawn.value : null;
  const loss = then === null ? null : (letDownOf(before, then, defaultPreferences.units)?.loss ?? null);
  const kind = kindFigures[bundle.bow.bowKind];
  const share = loss === null ? (kind?.hysteresis ?? null) : keptShare(loss.share);
  const mean = (of: (row: SpeedReading) => number) => rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
  const single = { mass: mean(({ mass }) => mass), speed: mean(({ speed }) => speed) };
  const alike = (rows.at(-1)?.mass ?? 0) - (rows[0]?.mass ?? 0) <= ALIKE * single.mass;
  const line = alike ? null : speedLine(rows);
  const alone = line !== null || share === null || then === null ? null : ofOne(single, share, then.energy);
  const { virtualMass, returned } = line ?? alone ?? { virtualMass: null, returned: null };
  return ok({
    read: read.value,
    then,
    now,
    line,
    single,
    virtualMass,
    returned,
    share,
    shareFrom: loss !== null ? 'let-down' : share === null ? 'nothing' : 'kind',
    doubt: virtualMass === null || returned === null ? null : doubtOf(line, virtualMass, returned, then?.energy ?? null),
  });
}

/** Letting down slowly loses more than a loose does, since the limbs creep meanwhile; by how much less a loose loses is from memory. */
const keptShare = (lost: number): Band => ({ value: 1 - lost, low: 1 - lost, high: 1 - lost / 2 });

function ofOne(
  { mass, speed }: SpeedReading,
  share: Band,
  energy: Band,
): { readonly virtualMass: Band; readonly returned: Band } {
  const value = (2 * share.value * energy.value) / (speed * speed);
  const returned = share.value * energy.value;
  const off = (side: 'low' | 'high') => Math.hypot(share[side] / share.value - 1, energy[side] / energy.value - 1);
  return {
    virtualMass: {
      value: value - mass,
      low: value * (1 - Math.hypot(off('low'), 2 * CHRONOGRAPH_DOUBT)) - mass,
      high: value * (1 + Math.hypot(off('high'), 2 * CHRONOGRAPH_DOUBT)) - mass,
    },
    returned: { value: returned, low: returned * (1 - off('low')), high: returned * (1 + off('high')) },
  };
}

function doubtOf(line: SpeedLine | null, virtualMass: Band, returned: Band, stored: Band | null): SpeedBasis['doubt'] {
  if (line !== null && !line.bounded) return 'level';
  if (!(virtualMass.value >= believable.low && virtualMass.value <= believable.high)) return 'not of a bow';
  if (stored !== null && returned.low > stored.high) return 'more than stored';
  return (line?.scatter ?? 0) > MOST_SCATTER ? 'scatter' : null;
}
