import {
  farthestOffered,
  flightBasis,
  type FittedMarks,
  isWeak,
  type JudgedMark,
  type KnownMark,
  type MarksPicture,
  type NextMark,
  nextMark,
  onBar,
  onFace,
  priorsOf,
  scaleThatSuits,
  type SightScale,
  type StripRow,
} from '../../../../core/aim/index.ts';
import { vacuumRange } from '../../../../core/flight/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import type { SightMark } from '../../../../core/model/sightMark.ts';
import { factorOf } from '../../../../core/units/index.ts';
import { tableDistances } from '../distances.ts';
import { isSame } from './isSame.ts';
import { readingsOf } from './readings.ts';
import type { Span } from './store.ts';

/** Nobody reads a longer table, and a mark for each metre is on the strip. */
const MOST_ROWS = 120;

/** Where a reading lies on the bar; `below 0` where nobody gave its lowest number, and every mark reads above. */
export type RowBar = 'on' | 'off' | 'in doubt' | 'below 0';

/** A distance of the table: what the sight reads there, and the mark that was shot in. */
export interface MarkRow {
  readonly distance: number;
  /** With 95 %; null out of reach, or where the marks fit no flight. */
  readonly reading: Band | null;
  readonly bar: RowBar;
  readonly weak: boolean;
  /** Half of the 95 % on the face [m]. */
  readonly onFace: number | null;
  readonly mark: SightMark | null;
  readonly judged: JudgedMark | null;
}

export interface MarksView {
  readonly picture: MarksPicture;
  readonly rows: readonly MarkRow[];
  /** With the intervals of the worker, every metre or yard; null until it has them. */
  readonly strip: readonly StripRow[] | null;
  /** What to shoot in next; null where nothing is fitted, a mark does not fit, or one more would tell little. */
  readonly next: NextMark | null;
  /** Another scale on which the marks go together, where they do not on this one. */
  readonly otherScale: SightScale | null;
  /** From the archer's own groups [rad]; null where these are too few. */
  readonly spread: number | null;
}

export function spanDistances({ from, to, step }: Span): readonly number[] {
  const count = Math.min(MOST_ROWS, Math.floor((to - from) / step + 1e-9) + 1);
  return Array.from({ length: Math.max(0, count) }, (_, i) => from + i * step);
}

/** Nobody holds a bow higher than this for a usual distance [rad], about 8 degrees: from memory. A slower bow is not sent farther. */
const HIGHEST = 0.14;
const FEWEST = 3;

function usualDistances(bundle: Bundle, units: UnitChoice): readonly number[] {
  const all = tableDistances(units, 10 * factorOf('distance', units));
  const basis = flightBasis(bundle);
  const reach = basis.ok ? vacuumRange(basis.value.speed.value, HIGHEST) : Infinity;
  return all.filter((distance, i) => i < FEWEST || distance <= reach);
}

/** Usual or chosen distances and the known ones [m]. */
function distancesOf(bundle: Bundle, units: UnitChoice, span: Span | null, known: readonly number[]): readonly number[] {
  const asked = span === null ? usualDistances(bundle, units) : spanDistances(span);
  const more = known.filter((one, i) => ![...asked, ...known.slice(0, i)].some((other) => isSame(one, other)));
  return [...asked, ...more].sort((a, b) => a - b);
}

/** Whether the pin goes there: most likely off the bar is off, and nobody is sent there. */
function barOf({ value, low, high }: Band, { scale, of }: MarksPicture): RowBar {
  if (scale.lowest === undefined && value < 0 && of.every(({ reading }) => reading >= 0)) return 'below 0';
  if (onBar({ value, low: value, high: value }, scale) === 'off') return 'off';
  return onBar({ value, low, high }, scale) === 'on' ? 'on' : 'in doubt';
}

export const isOnBar = ({ bar }: Pick<MarkRow, 'bar'>): boolean => bar === 'on' || bar === 'in doubt';

function rowsOf(view: Pick<MarksView, 'picture' | 'strip'>, distances: readonly number[]): MarkRow[] {
  const { picture } = view;
  const { fit, proven, of } = picture;
  const told = fit?.ok === true ? fit.value : null;
  const readings = readingsOf(view, distances);
  return distances.flatMap((distance, i): MarkRow[] => {
    const reading = readings[i] ?? null;
    const row: MarkRow = {
      distance,
      reading,
      bar: reading === null ? 'on' : barOf(reading, picture),
      weak: reading !== null && told !== null && isWeak(reading, told),
      onFace:
        reading === null || told === null
          ? null
          : onFace(((reading.high - reading.low) / 2) * told.scale.unit, distance, told.figures.sightRadius.value),
      mark: null,
      judged: null,
    };
    const here = proven.filter((mark) => isSame(mark.distance, distance));
    if (here.length === 0) return told === null ? [] : [row];
    return here.map((mark) => ({ ...row, mark, judged: told?.judged[of.indexOf(mark)] ?? null }));
  });
}

function otherScaleOf(bundle: Bundle, { proven, scale, from }: MarksPicture, spread: number | null): SightScale | null {
  const priors = priorsOf(bundle, { sightRadius: bundle.setup.settings.sightRadius, spreadPerMetre: spread });
  if (!priors.ok || from !== 'proven') return null;
  const marks = proven.map(({ distance, reading, leftOut }): KnownMark => ({ distance, reading, leftOut: leftOut !== null }));
  return scaleThatSuits(marks, scale, priors.value);
}

/** A mark that does not fit and still counts: first things first. */
export const misfitOf = ({ judged }: FittedMarks): JudgedMark | null =>
  judged.find(({ verdict, leftOut = false }) => verdict === 'does not fit' && !leftOut) ?? null;

/** By less than a quarter nobody's end is better spent: from memory. */
const WORTH = 0.75;

const worthwhile = (next: NextMark | null): NextMark | null =>
  next !== null && next.worstThen <= WORTH * next.worstNow ? next : null;

/** The table and what goes with it, out of what the marks say and the archer's own scatter [rad]. */
export function marksView(
  bundle: Bundle,
  picture: MarksPicture,
  spread: number | null,
  units: UnitChoice,
  span: Span | null,
): MarksView {
  const distances = distancesOf(
    bundle,
    units,
    span,
    picture.proven.map(({ distance }) => distance),
  );
  const rows = rowsOf({ picture, strip: null }, distances);
  const reached = rows.filter((row) => row.reading !== null && isOnBar(row)).map(({ distance }) => distance);
  const fit = picture.fit?.ok === true ? picture.fit.value : null;
  const basis = flightBasis(bundle);
  const farthest = basis.ok ? farthestOffered(basis.value.speed, basis.value.drag) : 0;
  // Nobody is sent where the bow would have to be raised too far.
  const offered = reached.filter((distance) => distance <= farthest);
  return {
    picture,
    rows,
    strip: null,
    next:
      fit === null || picture.from !== 'proven' || misfitOf(fit) !== null ? null : worthwhile(nextMark(fit, offered, offered)),
    otherScale: otherScaleOf(bundle, picture, spread),
    spread,
  };
}

/** The same with the intervals of the worker, everywhere. */
export function withStrip(view: MarksView, strip: readonly StripRow[]): MarksView {
  const finer = { ...view, strip };
  const distances = view.rows.map(({ distance }) => distance);
  const once = distances.filter((distance, i) => distances[i - 1] !== distance);
  const rows = rowsOf(finer, once);
  return { ...finer, rows, next: view.next === null ? null : nextAmong(view.next, rows) };
}

/** The widest interval as the rows have it, and what is left of it in the same proportion. */
function nextAmong(next: NextMark, rows: readonly MarkRow[]): NextMark {
  const reading = rows.find(({ distance }) => distance === next.worstAt)?.reading ?? null;
  const half = reading === null ? next.worstNow : (reading.high - reading.low) / 2;
  return { ...next, worstNow: half, worstThen: (next.worstThen / next.worstNow) * half };
}
