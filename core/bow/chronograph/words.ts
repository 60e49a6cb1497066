import type { Bundle } from '../../model/index.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import { believable, type SpeedBasis } from './speedBasis.ts';

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const whole = (share: number) => `${Math.round(100 * share)} %`;

/**
 * Why a virtual mass may not be used.
 *
 * @equation what the basis finds fault with, and what to do
 * @param basis - what the speeds say [record]
 * @param units - the person's choice of units [record]
 * @returns the sentence; null when nothing is wrong [text]
 * @validity any basis
 * @source own derivation
 * @example whyNot({ doubt: null }, defaultPreferences.units) // null
 */
export function whyNot(basis: SpeedBasis, units: UnitChoice): string | null {
  const { doubt, virtualMass, returned, then, line } = basis;
  const joules = (si: number) => textQuantity(si, 'energy', units);
  const mass = (si: number) => textQuantity(si, 'mass', units);
  if (doubt === null || virtualMass === null || returned === null) return null;
  switch (doubt) {
    case 'level':
      return 'The speeds do not fall with the arrow\u2019s mass by more than a chronograph may err, so they give no virtual mass: it is not used. Shoot arrows that differ more, and weigh them again.';
    case 'not of a bow':
      return `These speeds ask for a virtual mass of ${mass(virtualMass.value)}, and a bow\u2019s lies between ${mass(believable.low)} and ${mass(believable.high)}: it is not used. ${line === null ? 'Weigh the arrow and the bow, and read the speed again.' : 'One mass or one speed is wrong: read them again.'}`;
    case 'more than stored':
      return `These speeds give back at least ${joules(returned.low)} of at most ${joules(then?.energy.high ?? 0)} stored, which cannot be: it is not used. Read the bow on the scale and the speeds again.`;
    case 'scatter':
      return `The speeds scatter by ${percent(line?.scatter ?? 0)} about one curve, and a chronograph\u2019s do by about 1 %: it is not used. Shoot them again, each arrow three times.`;
  }
}

/**
 * What speeds alone cannot tell apart.
 *
 * @equation (m + K₀ + k m) v²/2 = E is (m + K) v²/2 = W with K = K₀/(1 + k) and W = E/(1 + k): the same speeds for every arrow
 * @param basis - what the speeds say [record]
 * @param units - the person's choice of units [record]
 * @returns the sentence [text]
 * @validity any basis
 * @source own derivation
 * @example cannotSeparate({ line: null, virtualMass: null, returned: null, then: null }, defaultPreferences.units).slice(0, 9) // "One arrow"
 */
export function cannotSeparate(basis: SpeedBasis, units: UnitChoice): string {
  const { line, virtualMass, returned, then } = basis;
  const joules = (si: number) => textQuantity(si, 'energy', units);
  const mass = (si: number) => textQuantity(si, 'mass', units);
  if (line === null || virtualMass === null || returned === null) {
    const between =
      virtualMass === null ? '' : ` Between them it may be anything from ${mass(virtualMass.low)} to ${mass(virtualMass.high)}.`;
    return `One arrow\u2019s speed cannot tell virtual mass from energy that does not come back: shoot arrows of two masses or more.${between}`;
  }
  const alike = 'Speeds alone cannot tell a virtual mass that grows with the arrow from energy that does not come back';
  if (then === null || !(then.energy.value > returned.value) || !line.bounded)
    return `${alike}: what they give is the energy that came back, not what was stored.`;
  const grows = then.energy.value / returned.value - 1;
  return `${alike}: ${mass(virtualMass.value)} for every arrow with ${joules(returned.value)}, and ${mass(virtualMass.value * (1 + grows))} and ${percent(grows)} of the arrow\u2019s own mass with the ${joules(then.energy.value)} stored, give the same speeds. So the ${percent(1 - returned.value / then.energy.value)} between the two energies is no measure of hysteresis; readings of letting down are.`;
}

/**
 * What a virtual mass rests on beyond the speeds.
 *
 * @equation another brace height or draw than now; the set-up's own speed; where η is from
 * @param basis - what the speeds say [record]
 * @param bundle - the set-up as it is now [record]
 * @param units - the person's choice of units [record]
 * @returns the sentences [list]
 * @validity any basis
 * @source own derivation
 * @example speedNotes({ read: { moved: false, own: 'none', then: exampleBundle }, line: {}, share: null, shareFrom: 'nothing' }, exampleBundle, defaultPreferences.units) // []
 */
export function speedNotes(basis: SpeedBasis, bundle: Bundle, units: UnitChoice): readonly string[] {
  const { read, line, share, shareFrom } = basis;
  const length = (si: number) => textQuantity(si, 'length', units);
  const notes: string[] = [];
  if (read.moved) {
    const what: string[] = [];
    const [then, now] = [read.then.setup.settings.braceHeight, bundle.setup.settings.braceHeight];
    if (then !== null && now !== null && then !== now) what.push(`a brace height of ${length(then)}, now ${length(now)}`);
    const [drew, draws] = [read.then.archer.drawLength, bundle.archer.drawLength];
    if (drew !== null && draws !== null && drew !== draws) what.push(`a draw of ${length(drew)}, now ${length(draws)}`);
    notes.push(
      `The speeds were read at ${what.join(', and ')}: the energy is carried over by the force-draw curve. Shoot them again to settle it.`,
    );
  }
  if (read.own === 'read at another brace or draw')
    notes.push(
      'The set-up\u2019s own measured speed was read at another brace height or draw than these, so it is not counted with them.',
    );
  if (line === null && share !== null)
    notes.push(
      shareFrom === 'let-down'
        ? `${percent(share.low)} to ${percent(share.high)} of the energy is taken to come back, out of the readings of letting down.`
        : `${whole(share.low)} to ${whole(share.high)} of the energy is assumed to come back; that is not checked against a source.`,
    );
  return notes;
}
