import { shortNames } from '../../../core/compare/index.ts';
import { setSight } from '../../../core/aim/index.ts';
import { trajectory } from '../../../core/flight/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, refuse, type Result } from '../../../core/model/problem.ts';
import { factorOf, textQuantity, unitOf } from '../../../core/units/index.ts';
import type { HeightsData } from '../../plots/heights/marks.ts';
import { aimBasis } from '../aim/basis.ts';

/** One arrow's flight as far as it is known. */
interface Known {
  readonly speed: Band;
  readonly drag: Band;
}

/** Which end of a band a flight is flown with. */
type End = 'low' | 'value' | 'high';
interface Ends {
  readonly speed: End;
  readonly drag: End;
}

const middle: Ends = { speed: 'value', drag: 'value' };

export interface HeightsApart {
  readonly data: HeightsData;
  readonly sentence: string;
}

/** The distances of the trade where the marks stand, in the shown unit. */
const usual = { m: [18, 30, 40, 50, 60, 70], yd: [20, 30, 40, 50, 60, 80] } as const;

/**
 * How much higher the other arrow strikes at each distance when the reference's sight mark for that distance is kept. The drag of both
 * is unknown in the same way, so its error is one and the same; so is that of two estimated speeds from one bow and archer. Measured
 * speeds err each for itself. Independent errors add as squares.
 */
export function heightsApart(reference: Bundle, other: Bundle, units: UnitChoice): Result<HeightsApart> {
  const [first, second] = [aimBasis(reference), aimBasis(other)];
  if (!first.ok) return named(reference, first.problem);
  if (!second.ok) return named(other, second.problem);
  const together =
    reference.bow.id === other.bow.id &&
    reference.archer.id === other.archer.id &&
    first.value.speed.from === 'estimated' &&
    second.value.speed.from === 'estimated';
  const [name, otherName] = shortNames(reference.setup.name, other.setup.name);
  const eye = first.value.eyeHeight.value;
  const factor = { distance: factorOf('distance', units), height: factorOf('drop', units) };
  const shown: readonly number[] = usual[units.distance];
  const samples = shown.flatMap((distance) => {
    const band = apartAt(first.value, second.value, eye, distance * factor.distance, together);
    return band === null
      ? []
      : [{ distance, value: band.value / factor.height, low: band.low / factor.height, high: band.high / factor.height }];
  });
  const last = samples.at(-1);
  if (samples.length < 2 || last === undefined)
    return refuse('short-flight', `One of the two does not reach ${shown[1]} ${unitOf('distance', units)} in a flat flight.`);
  const at = textQuantity(last.distance * factor.distance, 'distance', units);
  const height = (value: number) => textQuantity(value * factor.height, 'drop', units);
  return ok({
    data: {
      reference: name,
      other: otherName,
      samples,
      distanceUnit: unitOf('distance', units),
      unit: unitOf('drop', units),
    },
    sentence: `With the sight mark of ${name}, ${otherName} strikes ${height(Math.abs(last.value))} ${last.value < 0 ? 'lower' : 'higher'} at ${at}, between ${height(last.low)} and ${height(last.high)}.`,
  });
}

function apartAt(a: Known, b: Known, eyeHeight: number, distance: number, together: boolean): Band | null {
  const apart = (one: Ends, another: Ends) => higher(a, one, b, another, eyeHeight, distance);
  const value = apart(middle, middle);
  if (value === null) return null;
  const ends = ['low', 'high'] as const;
  const bySpeed = (speed: End): Ends => ({ ...middle, speed });
  const byDrag = (drag: End): Ends => ({ ...middle, drag });
  const sources: readonly (readonly (number | null)[])[] = [
    ends.map((end) => apart(byDrag(end), byDrag(end))),
    ...(together
      ? [ends.map((end) => apart(bySpeed(end), bySpeed(end)))]
      : [ends.map((end) => apart(bySpeed(end), middle)), ends.map((end) => apart(middle, bySpeed(end)))]),
  ];
  const moves = sources.map((source) => source.map((height) => (height ?? value) - value));
  const up = Math.hypot(...moves.map((source) => Math.max(0, ...source)));
  const down = Math.hypot(...moves.map((source) => Math.max(0, ...source.map((move) => -move))));
  return { value, low: value - down, high: value + up };
}

/** The other arrow's height over the point that the reference's arrow strikes, both loosed along one line. */
function higher(reference: Known, one: Ends, other: Known, another: Ends, eyeHeight: number, distance: number): number | null {
  const sight = setSight({ speed: reference.speed[one.speed], k: reference.drag[one.drag], eyeHeight }, distance, distance);
  if (!sight.ok) return null;
  const { elevation, start } = sight.value;
  const flight = trajectory({
    speed: other.speed[another.speed],
    elevation,
    k: other.drag[another.drag],
    until: { x: distance - Math.min(0, start.x) + 0.01 },
  });
  const point = flight.at(distance - start.x);
  return point === null ? null : start.y + point.y;
}

const named = (bundle: Bundle, problem: { code: string; sentence: string; field?: string | undefined }) =>
  refuse(problem.code, `${bundle.setup.name}: ${problem.sentence}`, problem.field);
