import { flightBasis, setSight, type FlightBasis } from '../aim/index.ts';
import { trajectory } from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import type { Bundle } from '../model/bundle.ts';
import { ok, refuse, type Problem, type Result } from '../model/problem.ts';

/** How much higher the other arrow strikes at one distance, with its band [m]. */
export interface HeightApart extends Band {
  readonly distance: number;
}

type Known = Pick<FlightBasis, 'speed' | 'drag'>;

/** Which end of its band each unknown is flown with. */
interface Ends {
  readonly speed: keyof Band;
  readonly drag: keyof Band;
}

const middle: Ends = { speed: 'value', drag: 'value' };
const fast: Ends = { ...middle, speed: 'high' };
const slow: Ends = { ...middle, speed: 'low' };
const light: Ends = { ...middle, drag: 'low' };
const heavy: Ends = { ...middle, drag: 'high' };

/** Two ends of one unknown, as both arrows meet it. */
type Source = readonly (readonly [reference: Ends, other: Ends])[];
const drag: Source = [
  [light, light],
  [heavy, heavy],
];
const oneSpeed: Source = [
  [slow, slow],
  [fast, fast],
];
const eachSpeed: readonly Source[] = [
  [
    [slow, middle],
    [fast, middle],
  ],
  [
    [middle, slow],
    [middle, fast],
  ],
];

/**
 * How much higher the other set-up's arrow strikes at each distance, the reference's sight mark for that distance kept.
 *
 * @equation Δ(R) = y_other(R) on the line that the reference's arrow left along, less the mark; low and high add the moves of each unknown at its ends as √Σ Δ²
 * @param reference - the set-up whose sight marks are kept [record]
 * @param other - the other set-up [record]
 * @param distances - R, from the eye [m]
 * @returns the heights with their bands [m], the distances that one of the two does not reach left out; or a refusal that names the set-up and what it lacks [list]
 * @validity level ground, still air, the eye of the reference for both; the drag of both is one unknown, and so are two estimated speeds of one archer with one bow; measured speeds err each for itself
 * @source jcgm-100
 * @example heightsApart(exampleBundle, exampleBundle, [18, 30]).value.map(({ value }) => Math.abs(value) < 1e-6) // [true, true]
 */
export function heightsApart(reference: Bundle, other: Bundle, distances: readonly number[]): Result<readonly HeightApart[]> {
  const [first, second] = [flightBasis(reference), flightBasis(other)];
  if (!first.ok) return named(reference, first.problem);
  if (!second.ok) return named(other, second.problem);
  const together =
    reference.bow.id === other.bow.id &&
    reference.archer.id === other.archer.id &&
    first.value.speed.from === 'estimated' &&
    second.value.speed.from === 'estimated';
  const sources = [drag, ...(together ? [oneSpeed] : eachSpeed)];
  const eye = first.value.eyeHeight.value;
  const found: HeightApart[] = [];
  for (const distance of distances) {
    const apart = (one: Ends, another: Ends) => higher(first.value, one, second.value, another, eye, distance);
    const value = apart(middle, middle);
    if (value === null) continue;
    const [up, down] = [1, -1].map((side) =>
      Math.hypot(
        ...sources.map((ends) =>
          ends.reduce((most, [one, another]) => Math.max(most, side * ((apart(one, another) ?? value) - value)), 0),
        ),
      ),
    ) as [number, number];
    found.push({ distance, value, low: value - down, high: value + up });
  }
  return ok(found);
}

/** The other arrow's height over the point that the reference's arrow strikes, both loosed along one line. */
function higher(a: Known, one: Ends, b: Known, another: Ends, eyeHeight: number, distance: number): number | null {
  const sight = setSight({ speed: a.speed[one.speed], k: a.drag[one.drag], eyeHeight }, distance, distance);
  if (!sight.ok) return null;
  const { elevation, start } = sight.value;
  const ahead = distance - start.x;
  const flight = trajectory({ speed: b.speed[another.speed], elevation, k: b.drag[another.drag], until: { x: ahead } });
  const point = flight.at(ahead);
  return point === null ? null : start.y + point.y;
}

const named = ({ setup }: Bundle, { code, sentence, field }: Problem) => refuse(code, `${setup.name}: ${sentence}`, field);
