import { AMO_ADDS, forceDrawOf, type ForceDraw } from '../../../core/bow/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, type Result } from '../../../core/model/problem.ts';
import { inch } from '../../../core/units/exact.ts';
import type { ForceReading } from '../../../core/model/readings.ts';

const LAST = 2 * inch;
/** The curve is drawn this far past the draw, or past the last reading. */
const BEYOND = 0.5 * inch;
const PIECES = 60;

/** The force at a draw, with what is not known of it: SI, draws as AMO draws. */
export interface ForceSample extends Band {
  readonly draw: number;
}

export interface DrawnReading extends ForceReading {
  /** Why it is marked; null for one that nothing speaks against. */
  readonly flagged: string | null;
}

/** A force-draw curve ready to be drawn. */
export interface ForceDrawData {
  readonly from: ForceDraw['from'];
  /** The draw at which the string rests, and how far the energy is counted. */
  readonly brace: number;
  readonly full: number;
  /** Whose draw that is: without an archer's on record, the readings' own. */
  readonly fullOf: 'archer' | 'deepest reading';
  readonly samples: readonly ForceSample[];
  readonly weight: Band;
  readonly energy: Band;
  /** What the last two inches add. */
  readonly lastRise: number;
  /** Growth over the later half of the stroke: where it is least and where it is most. */
  readonly growth: ForceDraw['growth'];
  readonly stacksFrom: number | null;
  /** Whether enough was read to say that it does not stack. */
  readonly tellsStacking: boolean;
  readonly readings: readonly DrawnReading[];
  /** The way back, by draw, from nothing at the brace height; empty where nobody read it. */
  readonly letDown: readonly { readonly draw: number; readonly force: number }[];
  readonly loss: ForceDraw['loss'];
  /** What the curve rests on beyond its readings, in sentences. */
  readonly notes: readonly string[];
}

/** The curve of a bow: to the archer's draw, or as deep as it was read while nobody has entered a draw. */
export function forceDrawDataOf(bundle: Bundle, units: UnitChoice): Result<ForceDrawData> {
  const { archer, bow } = bundle;
  const asItIs = forceDrawOf(bundle, units);
  if (asItIs.ok) return ok(forceDrawData(asItIs.value, bow.forceDraw));
  const deepest = Math.max(...bow.forceDraw.filter(({ way }) => way === 'draw').map(({ draw }) => draw));
  if (archer.drawLength !== null || !Number.isFinite(deepest)) return asItIs;
  const read = forceDrawOf({ ...bundle, archer: { ...archer, drawLength: deepest } }, units);
  return read.ok && read.value.from === 'readings' ? ok(forceDrawData(read.value, bow.forceDraw, 'deepest reading')) : asItIs;
}

/** The curve's own figures, laid out along the draw. */
export function forceDrawData(
  curve: ForceDraw,
  readings: readonly ForceReading[],
  fullOf: ForceDrawData['fullOf'] = 'archer',
): ForceDrawData {
  const brace = curve.brace + AMO_ADDS;
  const { full } = curve;
  const farthest = Math.max(full, ...readings.map((reading) => reading.draw)) + BEYOND;
  const at = (draw: number): ForceSample => ({ draw, ...curve.force(draw) });
  const samples = [
    ...Array.from({ length: PIECES + 1 }, (_, i) => at(brace + ((full - brace) * i) / PIECES)),
    ...[0.25, 0.5, 0.75, 1].map((share) => at(full + (farthest - full) * share)),
  ];
  const back = readings.filter(({ way, draw }) => way === 'let-down' && draw > brace);
  return {
    from: curve.from,
    brace,
    full,
    fullOf,
    samples,
    weight: curve.weight,
    energy: curve.energy,
    lastRise: curve.weight.value - curve.force(Math.max(brace, full - LAST)).value,
    growth: curve.growth,
    stacksFrom: curve.stacksFrom,
    tellsStacking: tellsStacking(curve, readings),
    readings: readings.map((reading, i) => ({
      ...reading,
      flagged: curve.flags.find(({ index }) => index === i)?.sentence ?? null,
    })),
    letDown:
      curve.loss === null || back.length === 0
        ? []
        : [{ draw: brace, force: 0 }, ...[...back].sort((a, b) => a.draw - b.draw).map(({ draw, force }) => ({ draw, force }))],
    loss: curve.loss,
    notes: curve.notes,
  };
}

/** Fewer readings than this in the later half of the stroke cannot tell stacking from a careless reading. */
const TELLS = 4;

function tellsStacking({ from, brace, used }: ForceDraw, readings: readonly ForceReading[]): boolean {
  const draws = new Set(used.map((index) => readings[index]?.draw ?? 0));
  const middle = (brace + AMO_ADDS + Math.max(...draws)) / 2;
  return from === 'readings' && [...draws].filter((draw) => draw >= middle).length >= TELLS;
}

/** The samples up to a draw that lies between two of them. */
export function upTo(samples: readonly ForceSample[], draw: number): readonly ForceSample[] {
  return samples.filter((sample) => sample.draw <= draw + 1e-9);
}
