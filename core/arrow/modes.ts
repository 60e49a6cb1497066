import { ok, type ArrowSet, type Result } from '../model/index.ts';
import { beamModes, type Lump } from './beam.ts';
import type { BendingMode } from './bending.ts';
import { buildArrow, type ArrowPart } from './build.ts';
import { spineOf } from './spineOf.ts';

/** One way in which the free arrow bends. */
export interface ModeShape {
  readonly mode: BendingMode;
  /** Natural frequency [Hz]. */
  readonly frequency: number;
  /** Sideways movement w along the shaft, x from the throat of the nock [m]: the largest is 1, and the throat's is positive. */
  readonly shape: readonly { readonly x: number; readonly w: number }[];
  /** Where the arrow stands still, from the throat of the nock [m]. */
  readonly nodes: readonly number[];
}

const SAMPLES = 61;

/**
 * The masses that stand for an arrow's parts on its shaft: two halves of each part, set apart so that mass, centre and moment of inertia are the part's own.
 *
 * @equation two of mᵢ/2 at xᵢ ± lᵢ/√12
 * @param parts - from buildArrow [list]
 * @returns x from the throat [m] and mass [kg] of each half, the shaft's own left out [list]
 * @validity each part an even rod of its length
 * @source own derivation
 * @example lumpsOf([{ name: 'point', mass: 0.008, at: 0.7, from: 0.7, to: 0.7, placed: 'assumed' }]) // [{"x":0.7,"mass":0.004},{"x":0.7,"mass":0.004}]
 */
export function lumpsOf(parts: readonly ArrowPart[]): readonly Lump[] {
  return parts
    .filter(({ name, mass }) => name !== 'shaft' && mass > 0)
    .flatMap(({ mass, at, from, to }) => {
      const apart = (to - from) / Math.sqrt(12);
      return [
        { x: at - apart, mass: mass / 2 },
        { x: at + apart, mass: mass / 2 },
      ];
    });
}

/** The places between the ends where a shape crosses nought. */
function nodesOf(at: (x: number) => number, from: number, to: number): readonly number[] {
  const nodes: number[] = [];
  const place = (step: number) => from + ((to - from) * step) / SAMPLES;
  for (let step = 0; step < SAMPLES; step++) {
    let [low, high] = [place(step), place(step + 1)];
    const below = Math.sign(at(low));
    if (below === Math.sign(at(high))) continue;
    for (let halving = 0; halving < 24; halving++) {
      const middle = (low + high) / 2;
      if (Math.sign(at(middle)) === below) low = middle;
      else high = middle;
    }
    nodes.push((low + high) / 2);
  }
  return nodes;
}

/**
 * The first three bending modes of the free arrow: how fast it swings, its shape, and where it stands still.
 *
 * @equation EI w⁗ = ω² λ w along the shaft, every part's mass and moment of inertia at its place: beamModes
 * @param arrowSet - length, shaft, spine and parts of an arrow set [record]
 * @returns frequency [Hz], shape and nodes [m] of modes 1 to 3 [list]
 * @validity a free arrow, so neither on the string nor in air; a uniform shaft that no part stiffens; a tube's spine at its middle value; refused as buildArrow and spineOf are
 * @source bathe-2014
 * @example bendingModes(exampleBundle.arrowSet).value.map(({ nodes }) => nodes.length) // [2,3,4]
 */
export function bendingModes(arrowSet: ArrowSet): Result<readonly ModeShape[]> {
  const spine = spineOf(arrowSet);
  if (!spine.ok) return spine;
  const build = buildArrow(arrowSet);
  if (!build.ok) return build;
  const { parts, length, wholeLength } = build.value;
  const shaft = parts.find(({ name }) => name === 'shaft')?.mass ?? 0;
  const found = beamModes({
    stiffness: spine.value.stiffness.value,
    linearDensity: shaft / length,
    length,
    lumps: lumpsOf(parts),
  });
  return ok(
    found.map(({ frequency, at }, index): ModeShape => {
      const places = Array.from({ length: SAMPLES }, (_, i) => (length * i) / (SAMPLES - 1));
      const moved = places.map(at);
      const size = Math.max(...moved.map(Math.abs)) * (at(0) < 0 ? -1 : 1);
      return {
        mode: (index + 1) as BendingMode,
        frequency,
        shape: places.map((x, i) => ({ x, w: (moved[i] ?? 0) / size })),
        nodes: nodesOf(at, 0, wholeLength),
      };
    }),
  );
}
