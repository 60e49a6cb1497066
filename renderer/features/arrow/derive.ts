import {
  arrowMass,
  firstBendingFrequency,
  endMasses,
  shaftMass,
  standardDeflection,
  stiffnessOf,
  woodPounds,
} from '../../../core/arrow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { suitability, type Suitability, type Verdict } from '../../../core/suitability/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import type { Result } from '../../../core/model/problem.ts';
import type { SpineView } from '../../plots/spine/marks.ts';

interface ReckonedFigure {
  readonly name: string;
  readonly text: string;
  readonly note: string;
}

/** What follows from the parts, ready to print; a figure that lacks a part says which. */
export function reckonedFigures({ arrowSet }: Bundle, units: UnitChoice): readonly ReckonedFigure[] {
  const figures: ReckonedFigure[] = [];
  const mass = arrowMass(arrowSet);
  if (mass.ok) {
    const left = mass.value.assumedZero.length;
    figures.push({
      name: 'mass',
      text: textQuantity(mass.value.mass, 'mass', units),
      note: mass.value.from === 'weighed' ? 'as weighed' : left === 0 ? 'sum of the parts' : 'sum of the parts that are entered',
    });
  } else figures.push({ name: 'mass', text: '–', note: mass.problem.sentence });
  if (arrowSet.deflection === null) {
    figures.push({ name: 'stiffness', text: '–', note: 'Waits for the spine deflection.' });
    return figures;
  }
  const stiffness = stiffnessOf(arrowSet.deflection, arrowSet.convention);
  figures.push(
    { name: 'stiffness', text: textQuantity(stiffness, 'stiffness', units), note: 'bending stiffness, EI' },
    {
      name: 'standard spine',
      text: textQuantity(standardDeflection(arrowSet.deflection, arrowSet.convention), 'deflection', units),
      note: '28 in span, 880 g',
    },
    {
      name: 'wood pounds',
      text: `${woodPounds(arrowSet.deflection, arrowSet.convention).toFixed(0)} lb`,
      note: '26 in span, 2 lb',
    },
  );
  const shaft = shaftMass(arrowSet);
  const ends = endMasses(arrowSet);
  if (arrowSet.length !== null && shaft.ok && ends.ok) {
    const frequency = firstBendingFrequency({
      stiffness,
      linearDensity: shaft.value.mass / arrowSet.length,
      length: arrowSet.length,
      nockMass: ends.value.nockMass,
      frontMass: ends.value.frontMass,
    });
    figures.push({
      name: 'first bend',
      text: textQuantity(frequency, 'frequency', units),
      note: 'free arrow, nock and point on its ends',
    });
  }
  return figures;
}

export const suitabilityOf = ({ bow, archer, arrowSet, setup }: Bundle): Result<Suitability> =>
  suitability({ bow, archer, arrowSet, settings: setup.settings });

const level = (verdict: Verdict): SpineView['level'] =>
  verdict === 'in range' ? 'ok' : verdict === 'cannot tell' ? 'unknown' : 'caution';

/** The views that speak, as bands on the one spine axis. A view outside its domain says nothing there. */
export function spineViews(answer: Suitability): readonly SpineView[] {
  const views: SpineView[] = [
    { name: 'Load on the shaft', needed: answer.column.needed, says: answer.column.verdict, level: level(answer.column.verdict) },
  ];
  if (answer.rule.applies) {
    views.push({
      name: 'Rule of thumb',
      needed: answer.rule.needed,
      says: answer.rule.verdict,
      level: level(answer.rule.verdict),
    });
  }
  return views;
}

/** The headline when nothing is out of range: what this bow wants, and that the shaft is in it. */
export function suitsSentence(answer: Result<Suitability>, units: UnitChoice): string {
  if (!answer.ok || answer.value.verdict !== 'in range') return 'Nothing measured on this arrow is out of range';
  const { measured, needed } = answer.value.margin;
  const text = (si: number) => textQuantity(si, 'deflection', units);
  return `This shaft suits the bow: ${text(measured)}, where ${text(needed.low)} to ${text(needed.high)} is wanted`;
}
