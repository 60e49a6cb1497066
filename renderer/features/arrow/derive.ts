import { arrowMass, bendingModes, buildArrow, spineOf, woodPounds } from '../../../core/arrow/index.ts';
import { drawWeight } from '../../../core/bow/index.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Result } from '../../../core/model/problem.ts';
import { suitability, type Suitability } from '../../../core/suitability/index.ts';
import { showQuantity, textQuantity } from '../../../core/units/index.ts';
import { together } from '../../../core/model/sentence.ts';
import type { ArrowScale } from '../../drawing/arrow/scale.ts';
import type { Bend } from '../../plots/modes/marks.ts';

/** A figure that follows from what was measured, ready to print. */
export interface Fact {
  readonly name: string;
  readonly text: string;
  /** What it is over, or how it was found; null where the name says it all. */
  readonly note: string | null;
}

interface Follows {
  readonly facts: readonly Fact[];
  /** What is missing, or was assumed, ready to read. */
  readonly missing: string | null;
}

/** What follows from the arrow’s parts: its mass against the bow, how it turns, how long it is. */
export function arrowFollows({ archer, bow, arrowSet, setup }: Bundle, units: UnitChoice): Follows {
  const build = buildArrow(arrowSet, units);
  const mass = arrowMass(arrowSet);
  const weight = drawWeight(bow, archer, setup.settings);
  const facts: Fact[] = [];
  if (build.ok && arrowSet.weighed !== null)
    facts.push({ name: 'parts together', text: textQuantity(build.value.mass, 'mass', units), note: null });
  if (mass.ok && weight.ok)
    facts.push({
      name: 'mass for the weight',
      text: textQuantity(mass.value.mass / weight.value.value, 'massPerWeight', units),
      note: `at ${textQuantity(weight.value.value, 'weight', units)}`,
    });
  if (build.ok)
    facts.push(
      { name: 'moment of inertia', text: textQuantity(build.value.inertia, 'inertia', units), note: 'about its balance' },
      { name: 'whole length', text: textQuantity(build.value.wholeLength, 'length', units), note: 'throat to tip' },
    );
  return {
    facts,
    missing: build.ok ? build.value.assumes : build.problem.sentence,
  };
}

/** The shaft's spine in every convention, and where it is from. */
export function spineFacts(
  arrowSet: ArrowSet,
  units: UnitChoice,
): { readonly facts: readonly Fact[]; readonly missing: string | null } {
  const spine = spineOf(arrowSet);
  if (!spine.ok) return { facts: [], missing: spine.problem.sentence };
  const { deflection, stiffness, from } = spine.value;
  const between = (low: string, high: string) => (from === 'tube' ? `${low} to ${high}` : null);
  const sag = (si: number) => textQuantity(si, 'deflection', units);
  const pounds = (si: number) => woodPounds(si, '28 in, 880 g').toFixed(0);
  return {
    facts: [
      {
        name: 'standard spine',
        text: sag(deflection.value),
        note: between(showQuantity(deflection.low, 'deflection', units).figure, sag(deflection.high)) ?? '880 g over 28 in',
      },
      {
        name: 'wood pounds',
        text: `${pounds(deflection.value)} lb`,
        note: between(pounds(deflection.high), `${pounds(deflection.low)} lb`) ?? '2 lb over 26 in',
      },
      {
        name: 'stiffness',
        text: textQuantity(stiffness.value, 'stiffness', units),
        note: between(showQuantity(stiffness.low, 'stiffness', units).figure, textQuantity(stiffness.high, 'stiffness', units)),
      },
      {
        name: 'known from',
        text: from === 'measured' ? 'the tester' : 'the tube',
        note: from === 'tube' ? 'diameter and wall' : null,
      },
    ],
    missing: null,
  };
}

const ordinals = { 1: 'first', 2: 'second', 3: 'third' } as const;

/** The first three bends, named and ready to draw. */
export function bendsOf(arrowSet: ArrowSet, units: UnitChoice): Result<readonly Bend[]> {
  const modes = bendingModes(arrowSet);
  if (!modes.ok) return modes;
  const digits = units.length === 'mm' ? 0 : 1;
  return {
    ok: true,
    value: modes.value.map(({ mode, frequency, shape, nodes }) => ({
      mode,
      frequency,
      shape,
      nodes,
      name: `${ordinals[mode]} bend, ${hertz(frequency)} Hz`,
      nodeTexts: nodes.map((node, i) => {
        const { figure, unit } = showQuantity(node, 'length', units, { digits });
        return i === 0 ? `${figure} ${unit}` : figure;
      }),
    })),
  };
}

const hertz = (frequency: number): string => frequency.toFixed(0);

/** "Bends at 62, 193 and 390 Hz; 0.91 full bends while on the string" */
export function bendsTitle(bends: readonly Bend[], answer: Result<Suitability> | null): string {
  const at = `Bends at ${together(bends.map(({ frequency }) => hertz(frequency)))} Hz`;
  const cycles = answer?.ok === true ? answer.value.cycles : null;
  return cycles?.applies === true ? `${at}; about ${cycles.figure.toFixed(1)} of a full bend while on the string` : at;
}

export const suitabilityOf = ({ bow, archer, arrowSet, setup }: Bundle): Result<Suitability> =>
  suitability({ bow, archer, arrowSet, settings: setup.settings });

/** The headline when nothing is out of range: what this bow wants, and that the shaft is in it. */
export function suitsSentence(answer: Result<Suitability>, units: UnitChoice): string {
  if (!answer.ok || answer.value.verdict !== 'in range') return 'Nothing measured on this arrow is out of range';
  const { measured, needed } = answer.value.margin;
  const text = (si: number) => textQuantity(si, 'deflection', units);
  return `This shaft suits the bow: ${text(measured)}, where ${text(needed.low)} to ${text(needed.high)} is wanted`;
}

/** Whether no figure of the arrow is entered: its drawing is all pencil. */
export const nothingEntered = (arrowSet: ArrowSet): boolean =>
  [
    arrowSet.length,
    arrowSet.pointMass,
    arrowSet.deflection,
    arrowSet.linearDensity,
    arrowSet.diameter,
    arrowSet.weighed,
    arrowSet.balance,
  ].every((figure) => figure === null) && arrowSet.arrows.length === 0;

/** What the drawing exaggerates, and what the sizes of its dots and of the shaft’s line say; the scale stands in the title block. */
export const drawnSentence = ({ thickness }: Pick<ArrowScale, 'thickness'>): string =>
  `${thickness === 1 ? '' : `Thickness is drawn ${thickness} times. `}Masses are drawn by their area.`;
