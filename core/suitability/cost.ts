import { arrowMass, buildArrow, deflectionOf, stiffnessOf, woodPounds } from '../arrow/index.ts';
import { speedByMass, type SpeedByMass } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { showQuantity, textQuantity, type Use } from '../units/index.ts';
import type { Needed } from './verdict.ts';

/** From one figure to another, with the unit once. */
const fromTo = (from: number, to: number, use: Use, units: UnitChoice): string =>
  `${showQuantity(from, use, units).figure} to ${textQuantity(to, use, units)}`;

const percent = (share: number): string => (100 * share).toFixed(1).replace('-', '\u2212');

/** The arrow as it is, worked out once for all moves; null where it is not known. */
export interface Today {
  readonly mass: number | null;
  readonly foc: number | null;
  /** Of any arrow mass; null where it is not known. */
  readonly speeds: SpeedByMass | null;
}

const massOf = ({ arrowSet }: Bundle): number | null => {
  const mass = arrowMass(arrowSet);
  return mass.ok ? mass.value.mass : null;
};
const focOf = ({ arrowSet }: Bundle): number | null => {
  const build = buildArrow(arrowSet);
  return build.ok ? build.value.foc : null;
};
const speedOf = ({ speeds }: Today, mass: number | null): number | null => {
  const speed = mass === null || speeds === null ? null : speeds(mass);
  return speed?.ok === true ? speed.value.value : null;
};

/**
 * The figures that moves are told against.
 *
 * @equation mass, front-of-centre from the parts, and speed against mass by the bow's own virtual mass
 * @param bundle - the set-up with its records [record]
 * @returns the arrow's mass [kg], front-of-centre [-] and speed [m/s] by mass, each null where it is not known [record]
 * @validity as arrowMass, buildArrow and speedByMass
 * @source own derivation
 * @example todayOf(exampleBundle).mass // 0.02112444466
 */
export function todayOf(bundle: Bundle): Today {
  const speeds = speedByMass(bundle);
  return { mass: massOf(bundle), foc: focOf(bundle), speeds: speeds.ok ? speeds.value : null };
}

/**
 * What a move does to the arrow's mass, its front-of-centre and its speed.
 *
 * @equation figures before and after, each left out where it is not known or does not change; more weight quickens by the root of its share
 * @param today - the arrow as it is, from todayOf [record]
 * @param after - the set-up after the move [record]
 * @param pull - draw weight after over draw weight before [-]
 * @param units - the person's choice of units [record]
 * @returns the figures as one sentence, empty when none is known [text]
 * @validity the speed by speedByMass of the bow room, with the energy in proportion to the weight
 * @source own derivation
 * @example changedFigures(todayOf(exampleBundle), exampleBundle, 1, defaultPreferences.units) // ""
 */
export function changedFigures(today: Today, after: Bundle, pull: number, units: UnitChoice): string {
  const parts: string[] = [];
  const [mass, foc] = [massOf(after), focOf(after)];
  const other = mass !== today.mass;
  if (other && mass !== null && today.mass !== null) parts.push(`arrow ${fromTo(today.mass, mass, 'mass', units)}`);
  if (foc !== null && today.foc !== null && percent(foc) !== percent(today.foc))
    parts.push(`front of centre ${percent(today.foc)} to ${percent(foc)} %`);
  const [was, is] = [speedOf(today, today.mass), speedOf(today, mass)];
  const share = (was === null || is === null ? 1 : is / was) * Math.sqrt(pull);
  if (Math.abs(share - 1) > 0.0005) parts.push(`about ${percent(Math.abs(share - 1))} % ${share < 1 ? 'slower' : 'faster'}`);
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
