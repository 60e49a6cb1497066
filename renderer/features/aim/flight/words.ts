import type { BareFletched, BareFletchedAt, FlightBasis } from '../../../../core/aim/index.ts';
import type { Why } from '../../../../core/findings/finding.ts';
import { alongNotes, reynoldsNumber, speedAfter } from '../../../../core/flight/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { countWord, together } from '../../../../core/model/sentence.ts';
import { sources } from '../../../../core/sources.ts';
import { factorOf, readsNought, showQuantity, textQuantity, unitOf } from '../../../../core/units/index.ts';
import { rangeText } from '../words.ts';

const percent = (share: number): string => (100 * share).toFixed(1);
const twoDigits = (figure: number): string => Number(figure.toFixed(2)).toString();
const bandOf = ({ low, high }: Pick<Band, 'low' | 'high'>, text: (figure: number) => string): string =>
  text(low) === text(high) ? text(low) : `${text(low)} to ${text(high)}`;

export const airText = ({ air }: FlightBasis): string => `${air.toFixed(3)} kg/m³`;

/** How much of its speed an arrow loses over a stretch that people shoot. */
const lostOver = (k: number, units: UnitChoice): number => 1 - speedAfter(1, k, 20 * factorOf('distance', units));

export function dragTitle({ drag }: Pick<FlightBasis, 'drag'>, units: UnitChoice): string {
  const lost = (k: number) => percent(lostOver(k, units));
  return `It loses ${lost(drag.value)} % of its speed in ${textQuantity(20 * factorOf('distance', units), 'distance', units)}, ${bandOf(drag, lost).replaceAll(' ', '\u00a0')}`;
}

const layers: Readonly<Record<FlightBasis['layer'], string>> = {
  laminar: 'So slow and thin an arrow keeps the air along it smooth',
  either: 'At this speed and thickness the air along the shaft may be smooth or turbulent',
  turbulent: 'So fast and thick an arrow has turbulent air along it',
};

/** What the drag rests on, and what would tell it better. */
export function dragRests(basis: FlightBasis): string {
  const coefficient = bandOf(basis.coefficient, twoDigits);
  if (basis.dragFrom === 'band')
    return `${layers[basis.layer]}: a drag coefficient of ${coefficient}.${basis.diameter.measured ? '' : ' The shaft’s diameter is assumed, which widens the band.'}`;
  const count = basis.along?.ok === true ? basis.along.value.readings.length : 0;
  const beside = basis.coefficient.low > 2.6 ? ' Straight vanes were found to have 1.5 to 2.6; feathers may have more.' : '';
  return `Read off ${countWord(count)} speeds along the flight: a drag coefficient of ${coefficient}.${beside}`;
}

/** What the speeds along the flight say of themselves. */
export function speedNotes({ along, unused, airGiven, dragFrom }: FlightBasis, units: UnitChoice): string[] {
  if (along === null) return [];
  if (!along.ok) return [`${along.problem.sentence} Until then no drag is taken from them.`];
  const notes = alongNotes(along.value, units);
  if (unused === 'wider')
    notes.push(
      'They tell the drag less well than the coefficients of other arrows do, so these are used. Read them farther apart.',
    );
  if (unused === 'no arrow')
    notes.push(
      'No arrow has the drag coefficient that they ask for, so they are not used. Read them again, one arrow in still air.',
    );
  if (dragFrom === 'speeds' && airGiven)
    notes.push('This drag is that of the air it was read in: what is given of the air here does not change it.');
  return notes;
}

/** Where these speeds say that the arrow left, when that is not on record as it is. */
export function launchNote(
  basis: FlightBasis,
  measured: number | null,
  units: UnitChoice,
): { readonly text: string; readonly speed: number } | null {
  if (basis.along?.ok !== true || !basis.along.value.holds) return null;
  const { launch } = basis.along.value;
  if (measured !== null && Math.abs(launch.value / measured - 1) < 0.005) return null;
  const left = `Carried back to the bow the arrow left at ${textQuantity(launch.value, 'speed', units)}, ${rangeText(launch, 'speed', units)}`;
  const other = measured === null ? '.' : `; ${textQuantity(measured, 'speed', units)} is on record.`;
  return { text: `${left}${other}`, speed: launch.value };
}

export function dragWhy(basis: FlightBasis, units: UnitChoice): Why {
  const { speed, diameter, mass, air, airState, drag, coefficient, dragFrom } = basis;
  const reynolds = (v: number) => (reynoldsNumber(v, diameter.value, air, airState.viscosity) / 1e4).toFixed(1);
  const slow = speedAfter(speed.low, drag.high, 90);
  return {
    title: 'Drag',
    text:
      dragFrom === 'speeds'
        ? 'Drag takes the same share of the speed from every metre, so the logarithm of the speed falls along a straight line: its slope is k. Each reading is held against the line through the others.'
        : 'Whether the thin layer of air along the shaft is smooth or turbulent decides the drag, and arrows fly where it changes over: hence a band. Below Re 10⁴ it stays smooth, above 2 · 10⁴ it does not.',
    equation:
      dragFrom === 'speeds' ? 'ln v = ln v₀ − k s;  k = ½ ρ C_D A / m' : 'k = ½ ρ C_D A / m;  A = π D²/4;  Re = ρ v D / µ',
    symbols: [
      { symbol: 'k', name: 'drag, for each metre', value: bandOf(drag, (k) => `${(1000 * k).toFixed(2)} · 10⁻³`) },
      { symbol: 'C_D', name: 'drag coefficient', value: bandOf(coefficient, twoDigits) },
      { symbol: 'ρ', name: 'density of the air', value: `${air.toFixed(3)} kg/m³` },
      { symbol: 'D', name: 'diameter of the shaft', value: textQuantity(diameter.value, 'setting', units) },
      { symbol: 'm', name: 'mass of the arrow', value: textQuantity(mass, 'mass', units) },
      { symbol: 'Re', name: 'from the loose to 90 m', value: `${reynolds(slow)} to ${reynolds(speed.high)} · 10⁴` },
    ],
    source:
      dragFrom === 'speeds'
        ? 'own derivation; how well one shot repeats the next from memory'
        : `${sources['miyazaki-2013']} ${sources['ortiz-2020']} ${sources['picard-2008']}`,
  };
}

const angleText = (angle: number): string => `${(angle / (Math.PI / 180)).toFixed(1).replace('-', '−')}°`;

/** "3 mm farther to that side (13, to 3 mm the other way)". */
export function apartText({ value, low, high }: Band, units: UnitChoice): string {
  const size = (aside: number) =>
    showQuantity(Math.abs(aside), 'setting', units, { digits: units.setting === 'mm' ? 0 : 2 }).figure;
  const unit = unitOf('setting', units);
  const way = (aside: number) => (aside < 0 ? 'less far' : 'farther');
  if (readsNought(size(value)) && readsNought(size(low)) && readsNought(size(high))) return 'as far to that side as the fletched';
  if (low < 0 && high > 0 && readsNought(size(value)))
    return `about as far to that side as the fletched, anything from ${size(low)} ${unit} less to ${size(high)} more`;
  if (low < 0 && high > 0)
    return `${size(value)} ${unit} ${way(value)} to that side than the fletched, anything from ${size(low)} ${unit} less to ${size(high)} more`;
  const [near, far] = value < 0 ? [high, low] : [low, high];
  return `${size(value)} ${unit} ${way(value)} to that side than the fletched, ${size(near)} to ${size(far)}`;
}

export const noseTitle = (nose: number): string =>
  `A nose ${angleText(nose).replace('.0', '')} off its path at the loose, bare and fletched`;

export function noseNote(flown: BareFletched, there: BareFletchedAt, units: UnitChoice): string {
  const at = textQuantity(there.distance, 'distance', units);
  const swing =
    flown.swing === null
      ? ''
      : ` The fletched nose swings there and back in ${textQuantity(flown.swing.value, 'distance', units, { digits: 0 })}, ${rangeText(flown.swing, 'distance', units, 0)}.`;
  return `At ${at} the bare shaft is ${apartText(there.apart, units)}.${swing}`;
}

/** What the bands are made of, where they can be read. */
export function noseLimits(flown: BareFletched): readonly string[] {
  const assumed = flown.assumed.length === 0 ? '' : ` Not on record, so ordinary ones: ${together(flown.assumed)}.`;
  return [
    `What a bare shaft lifts is fitted, never claimed: this band takes from a slender nose alone to twice the cross-flow of a rod, acting between balance point and middle. Vanes: half of the published estimate to all of it.${assumed}`,
    'It tells how large such an angle shows, not which way this arrow leaves: only this archer’s own bare and fletched groups tell that.',
  ];
}

export function noseWhy(flown: BareFletched): Why {
  return {
    title: 'The nose against its path',
    text: 'Air that meets the arrow at an angle pushes it aside, most of all at the vanes. Behind the balance point the push turns the nose back, so that it swings about its path and comes to rest; meanwhile the path bends the way the nose points.',
    equation: 'α″ + (a + d) α′ + (κ² + a d) α = 0;  ψ′ = a α;  z′ = ψ;  ψ∞ = a (θ′₀ + d θ₀)/(κ² + a d)',
    symbols: [
      { symbol: 'α', name: 'nose against the path', value: '' },
      { symbol: 'ψ', name: 'path against the line of the loose', value: '' },
      {
        symbol: 'C_Nα',
        name: 'lift of the vanes, published estimate the most',
        value: bandOf(flown.vanes, (slope) => slope.toFixed(1)),
      },
      {
        symbol: 'ψ∞',
        name: 'fletched, once it has settled',
        value: bandOf(flown.settled, (path) => `${(path * (180 / Math.PI)).toFixed(3)}°`),
      },
    ],
    source: `${sources['barrowman-1967']} ${sources['allen-perkins-1951']} Shares of both from memory.`,
  };
}

/** The reading at one distance, the most asked for first. */
export function noseSaid(
  there: BareFletchedAt,
  units: UnitChoice,
): { readonly where: string; readonly figures: readonly string[] } {
  const degrees = (band: Band) => `${angleText(band.value)} (${angleText(band.low)} to ${angleText(band.high)})`;
  const aside = (band: Band) => textQuantity(band.value, 'setting', units, { digits: units.setting === 'mm' ? 0 : 2 });
  return {
    where: `At ${textQuantity(there.distance, 'distance', units)}`,
    figures: [
      `bare ${degrees(there.bare.angle)}, ${aside(there.bare.aside)} aside`,
      `fletched ${degrees(there.fletched.angle)}, ${aside(there.fletched.aside)} aside`,
    ],
  };
}
