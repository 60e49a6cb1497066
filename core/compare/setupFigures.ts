import { arrowMass, bendingFrequencies, spineOf } from '../arrow/index.ts';
import { drawWeight } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { Problem, Result } from '../model/problem.ts';
import { suitability } from '../suitability/index.ts';
import type { Use } from '../units/uses.ts';
import type { DoubtedFigure, Section } from './figure.ts';
import { halfOf } from './figure.ts';
import { nudgesOf } from './measured.ts';

interface Plan {
  readonly key: string;
  readonly name: string;
  readonly use: Use;
  readonly section: Section;
  readonly note: string;
}

const plans: readonly Plan[] = [
  { key: 'mass', name: 'Arrow mass', use: 'mass', section: 'Build', note: '' },
  { key: 'deflection', name: 'Spine, standard tester', use: 'deflection', section: 'Build', note: '28 in, 880 g' },
  { key: 'stiffness', name: 'Bending stiffness', use: 'stiffness', section: 'Build', note: '' },
  { key: 'frequency', name: 'First bending frequency', use: 'frequency', section: 'Build', note: 'free arrow' },
  { key: 'weight', name: 'Weight on the fingers', use: 'weight', section: 'On the bow', note: '' },
  { key: 'massPerWeight', name: 'Mass per weight', use: 'massPerWeight', section: 'On the bow', note: '' },
  { key: 'column', name: 'Load figure, C', use: 'ratio', section: 'On the bow', note: 'larger acts weaker' },
  {
    key: 'margin',
    name: 'Spine off the middle of needed',
    use: 'deflection',
    section: 'On the bow',
    note: 'plus is weak; band not checked against a source',
  },
  {
    key: 'cycles',
    name: 'Bends on the string',
    use: 'ratio',
    section: 'On the bow',
    note: 'small parts on the ends, limbs and string as mass that rides with the arrow; no verdict of its own',
  },
];

type Values = Readonly<Record<string, Result<number>>>;

const mapped = <T>(result: Result<T>, figure: (value: T) => number): Result<number> =>
  result.ok ? { ok: true, value: figure(result.value) } : result;
const missing = (sentence: string): { ok: false; problem: Problem } => ({ ok: false, problem: { code: 'missing', sentence } });
/** What a blank is waited for in a column's few words; any other refusal speaks for itself. */
const waiting = <T>(result: Result<T>, sentence: string): Result<T> =>
  !result.ok && result.problem.code === 'missing' ? missing(sentence) : result;

function valuesOf(bundle: Bundle): Values {
  const { archer, bow, arrowSet, setup } = bundle;
  const mass = arrowMass(arrowSet);
  const weight = drawWeight(bow, archer, setup.settings);
  const suits = suitability({ archer, bow, arrowSet, settings: setup.settings });
  const spine = waiting(spineOf(arrowSet), 'Waits for the spine deflection.');
  return {
    mass: mapped(mass, (value) => value.mass),
    deflection: mapped(spine, (value) => value.deflection.value),
    stiffness: mapped(spine, (value) => value.stiffness.value),
    frequency: frequencyOf(bundle),
    weight: mapped(weight, (value) => value.value),
    massPerWeight: mass.ok ? mapped(weight, (value) => mass.value.mass / value.value) : mapped(mass, () => 0),
    column: mapped(suits, (value) => value.column.figure),
    margin: mapped(suits, (value) => value.margin.value),
    cycles: !suits.ok
      ? suits
      : suits.value.cycles.applies
        ? { ok: true, value: suits.value.cycles.figure }
        : missing(suits.value.cycles.why),
  };
}

function frequencyOf({ arrowSet }: Bundle): Result<number> {
  const waits = 'Waits for the arrow\u2019s length, spine and point.';
  return mapped(waiting(bendingFrequencies(arrowSet), waits), ([first = 0]) => first);
}

/**
 * The figures that follow from the records alone, without a shot: the arrow's build, and the arrow on this bow.
 *
 * @equation each figure, and how far it moves with each measured thing off by its doubt
 * @param bundle - the set-up with its records [record]
 * @returns the figures with their doubts [list]
 * @validity as the rooms they come from; a figure that cannot be had says what it waits for
 * @source jcgm-100
 * @example setupFigures(exampleBundle)[0].name // "Arrow mass"
 */
export function setupFigures(bundle: Bundle): readonly DoubtedFigure[] {
  const values = valuesOf(bundle);
  const nudged = nudgesOf(bundle).map(({ name, bundle: off }) => ({ name, values: valuesOf(off) }));
  return plans.map((plan) => {
    const value = values[plan.key];
    if (value === undefined || !value.ok)
      return { ...plan, value: null, half: null, note: value?.problem.sentence ?? '', doubts: new Map() };
    const doubts = new Map<string, number>();
    for (const { name, values: off } of nudged) {
      const moved = off[plan.key];
      if (moved?.ok && moved.value !== value.value) doubts.set(name, moved.value - value.value);
    }
    return { ...plan, value: value.value, half: halfOf(doubts), doubts };
  });
}
