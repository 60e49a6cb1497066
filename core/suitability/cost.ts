import { arrowMass, buildArrow, deflectionOf, stiffnessOf, woodPounds } from '../arrow/index.ts';
import { drawWeight, speedFor } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { showQuantity, textQuantity, type Use } from '../units/index.ts';
import type { Needed } from './verdict.ts';

/** From one figure to another, with the unit once. */
const fromTo = (from: number, to: number, use: Use, units: UnitChoice): string =>
  `${showQuantity(from, use, units).figure} to ${textQuantity(to, use, units)}`;

const percent = (share: number): string => (100 * share).toFixed(1).replace('-', '\u2212');

/** Speed after over speed before: the arrow's mass by this bow's own virtual mass, more weight by the energy, which goes with it. */
function speedShare(before: Bundle, after: Bundle, masses: readonly [number, number]): number | null {
  const [was, is] = [speedFor(before, masses[0]), speedFor(before, masses[1])];
  if (!was.ok || !is.ok) return null;
  const weight = ({ archer, bow, setup }: Bundle) => drawWeight(bow, archer, setup.settings);
  const [pulled, pulls] = [weight(before), weight(after)];
  const turned = pulled.ok && pulls.ok ? Math.sqrt(pulls.value.value / pulled.value.value) : 1;
  return (is.value.value / was.value.value) * turned;
}

/**
 * What a move does to the arrow's mass, its front-of-centre and its speed.
 *
 * @equation figures before and after, each left out where it is not known or does not change
 * @param before - the set-up as it is [record]
 * @param after - the set-up after the move [record]
 * @param units - the person's choice of units [record]
 * @returns the figures as one sentence, empty when none is known [text]
 * @validity the speed by speedFor of the bow room, with the energy in proportion to the weight
 * @source own derivation
 * @example changedFigures(exampleBundle, exampleBundle, defaultPreferences.units) // ""
 */
export function changedFigures(before: Bundle, after: Bundle, units: UnitChoice): string {
  const parts: string[] = [];
  const [was, is] = [arrowMass(before.arrowSet), arrowMass(after.arrowSet)];
  if (was.ok && is.ok && was.value.mass !== is.value.mass)
    parts.push(`arrow ${fromTo(was.value.mass, is.value.mass, 'mass', units)}`);
  const [built, rebuilt] = [buildArrow(before.arrowSet), buildArrow(after.arrowSet)];
  if (built.ok && rebuilt.ok && percent(built.value.foc) !== percent(rebuilt.value.foc))
    parts.push(`front of centre ${percent(built.value.foc)} to ${percent(rebuilt.value.foc)} %`);
  const share = was.ok && is.ok ? speedShare(before, after, [was.value.mass, is.value.mass]) : null;
  if (share !== null && Math.abs(share - 1) > 0.0005)
    parts.push(`about ${percent(Math.abs(share - 1))} % ${share < 1 ? 'slower' : 'faster'}`);
  const text = parts.join(', ');
  return text === '' ? '' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/**
 * A range of needed deflection in the words of both conventions.
 *
 * @equation deflections on the 28 in, 880 g tester, the same shafts on the 26 in, 2 lb tester, and for wood their pounds
 * @param needed - low and high, on the standard tester [m] [record]
 * @param wood - whether pounds of wood are told too [choice]
 * @param units - the person's choice of units [record]
 * @returns one sentence [text]
 * @validity deflections above nought
 * @source astm-f2031
 * @example neededText({ low: 0.0127, high: 0.01524 }, false, defaultPreferences.units) // "0.500 to 0.600 in with 880 g over 28 in, which is 0.413 to 0.495 in with 2 lb over 26 in"
 */
export function neededText({ low, high }: Needed, wood: boolean, units: UnitChoice): string {
  const older = (deflection: number) => deflectionOf(stiffnessOf(deflection, '28 in, 880 g'), '26 in, 2 lb');
  const pounds = (deflection: number) => woodPounds(deflection, '28 in, 880 g').toFixed(0);
  const standard = fromTo(low, high, 'deflection', units);
  return `${standard} with 880 g over 28 in, which is ${fromTo(older(low), older(high), 'deflection', units)} with 2 lb over 26 in${wood ? `, ${pounds(high)} to ${pounds(low)} lb of wood` : ''}`;
}
