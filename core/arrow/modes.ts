import { ok, type ArrowSet, type Result } from '../model/index.ts';
import { beamModes, type BeamMode, type Lump } from './beam.ts';
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

const HALVINGS = 16;

/** Where a shape crosses nought: between two of its samples, or between the shaft's end and the tip. */
function nodesOf(at: (x: number) => number, places: readonly number[], moved: readonly number[]): readonly number[] {
  const nodes: number[] = [];
  for (let i = 1; i < places.length; i++) {
    const below = (moved[i - 1] ?? 0) < 0;
    if (below === (moved[i] ?? 0) < 0) continue;
    let [low, high] = [places[i - 1] ?? 0, places[i] ?? 0];
    for (let halving = 0; halving < HALVINGS; halving++) {
      const middle = (low + high) / 2;
      if (at(middle) < 0 === below) low = middle;
      else high = middle;
    }
    nodes.push((low + high) / 2);
  }
  return nodes;
}

interface FreeArrow {
  readonly modes: readonly BeamMode[];
  readonly length: number;
  readonly wholeLength: number;
}

function freeArrow(arrowSet: ArrowSet): Result<FreeArrow> {
  const spine = spineOf(arrowSet);
  if (!spine.ok) return spine;
  const build = buildArrow(arrowSet);
  if (!build.ok) return build;
  const { parts, length, wholeLength } = build.value;
  const shaft = parts.find(({ name }) => name === 'shaft')?.mass ?? 0;
  const modes = beamModes({
    stiffness: spine.value.stiffness.value,
    linearDensity: shaft / length,
    length,
    lumps: lumpsOf(parts),
  });
  return ok({ modes, length, wholeLength });
}

/**
 * The frequencies of the first three bending modes of the free arrow, without their shapes.
 *
 * @equation as bendingModes
 * @param arrowSet - length, shaft, spine and parts of an arrow set [record]
 * @returns f₁, f₂ and f₃ [Hz]
 * @validity as bendingModes
 * @source bathe-2014
 * @example bendingFrequencies(exampleBundle.arrowSet).value.length // 3
 */
export function bendingFrequencies(arrowSet: ArrowSet): Result<readonly number[]> {
  const found = freeArrow(arrowSet);
  return found.ok ? ok(found.value.modes.map(({ frequency }) => frequency)) : found;
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
  const found = freeArrow(arrowSet);
  if (!found.ok) return found;
  const { modes, length, wholeLength } = found.value;
  const places = Array.from({ length: SAMPLES }, (_, i) => (length * i) / (SAMPLES - 1));
  return ok(
    modes.map(({ frequency, at }, index): ModeShape => {
      const moved = places.map(at);
      const size = Math.max(...moved.map(Math.abs)) * (at(0) < 0 ? -1 : 1);
      return {
        mode: (index + 1) as BendingMode,
        frequency,
        shape: places.map((x, i) => ({ x, w: (moved[i] ?? 0) / size })),
        nodes: nodesOf(at, [...places, wholeLength], [...moved, at(wholeLength)]),
      };
    }),
  );
}
