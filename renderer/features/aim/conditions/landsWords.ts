import type { Allowance } from '../../../../core/aim/index.ts';
import type { Why } from '../../../../core/findings/finding.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { together } from '../../../../core/model/sentence.ts';
import { sources } from '../../../../core/sources.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import type { Given } from './given.ts';
import type { Lands, WrongRow } from './lands.ts';
import type { ReadsAt } from './useSightReading.ts';
import { fromHour } from './windWords.ts';
import { bandWithSide, degrees, far, nought, placeText, points, settingText, size } from './words.ts';

/** What is chosen to go wrong, in the order of the page. */
function wrongs(given: Given, units: UnitChoice): readonly string[] {
  const { slope, windSpeed, windHour, believed, distance, marked, within } = given;
  return [
    slope === 0 ? null : `${degrees(slope)} ${slope > 0 ? 'up' : 'down'}`,
    windSpeed === 0 ? null : `${textQuantity(windSpeed, 'wind', units)} ${fromHour(windHour)}`,
    believed === distance ? null : `${far(Math.abs(distance - believed), units)} ${believed < distance ? 'short' : 'long'}`,
    marked || within === 0 ? null : `a distance guessed to within ${far(within, units)}`,
  ].filter((part) => part !== null);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The finding: what goes wrong, where that lands, and what it costs. */
export function landsTitle(given: Given, { landing, cost }: Lands, example: WrongRow, units: UnitChoice): string {
  const at = far(given.distance, units);
  const wrong = wrongs(given, units);
  if (wrong.length === 0) {
    const was = `Nothing to allow for at ${at}: ${points(cost.atMiddle.points)} points an arrow`;
    if (example.guess === null) return whole(was);
    return whole(`${was}; ${far(example.off, units)} short would be ${points(example.short)}`);
  }
  const place = placeText(landing.place.value, units);
  const guess = example.guess;
  const spread =
    given.marked || guess === null
      ? null
      : `up to ${size(guess.farther.value, units)} low or ${size(guess.nearer.value, units)} high`;
  const where = place ?? spread ?? 'still on the middle';
  const what = together(wrong.length === 1 ? wrong : inShort(given, units));
  return whole(
    `${capital(what)} at ${at}: ${where}, ${points(cost.there.points)} points an arrow instead of ${points(cost.atMiddle.points)}`,
  );
}

/** A line never ends between a figure and its unit. */
const whole = (text: string): string => text.replace(/(\d) (?=(?:m|cm|yd|in|m\/s|mph|points)\b)/g, '$1\u00a0');

/** Several together, each in a word: their figures stand beside their sliders. */
const inShort = (given: Given, units: UnitChoice): readonly string[] => [
  ...(given.slope === 0 ? [] : ['hill']),
  ...(given.windSpeed === 0 ? [] : ['wind']),
  ...wrongs({ ...given, slope: 0, windSpeed: 0 }, units),
];

const tellsScatter = {
  groups: 'by this bow’s groups',
  settled: 'from memory, a settled archer’s',
  learner: 'from memory, a learner’s',
} as const;

/** What the score rests on. */
export function scoredText({ scatter: { across, up, from }, distance, face }: Given, units: UnitChoice): string {
  const [wide, high] = [across, up].map((angle) => size(angle * distance, units));
  const how = wide === high ? `${wide} each way` : `${wide} across, ${high} up`;
  return `On the ${face.name} face, with arrows that scatter ${how} (one standard deviation, ${tellsScatter[from]}).`;
}

/** What an arrow scores there, with its band. */
function pointsText({ cost }: Lands): string {
  const [there, right, low, high] = [cost.there.points, cost.atMiddle.points, cost.points.low, cost.points.high].map(points);
  if (there === right) return `${there} points an arrow`;
  return `${there} points an arrow${low === high ? '' : ` (${low} to ${high})`} instead of ${right}`;
}

/** Where the group lands with its band, and what it scores there. */
export function saidText(lands: Lands, units: UnitChoice): string {
  const { up, across, place } = lands.landing;
  const where = placeText(place.value, units);
  if (where === null) return `The centre lies on the middle; ${pointsText(lands)}.`;
  const band = together([bandWithSide(up, 'up', units), bandWithSide(across, 'across', units)].filter((part) => part !== ''));
  return `Nothing allowed for, the centre lies ${where}${band === '' ? '' : ` (${band})`}; ${pointsText(lands)}.`;
}

/** One standard deviation times this: the reach of 95 % up or down. */
const REACH = 1.96;
/** From the middle of the face to the upper edge of its butt, and to the ground [m]: World Archery rule book. */
const [BUTT, GROUND] = [0.62, 1.3];

/** Arrows that miss the face, and where they go. */
export function missText({ landing, cost, spread }: Lands): string | null {
  const share = Math.round(100 * cost.there.missChance);
  if (share === 0) return null;
  const { y } = landing.place.value;
  const [top, bottom] = [y + REACH * spread[1], y - REACH * spread[1]];
  const misses = share >= 100 ? 'No arrow strikes the face' : `${share} of 100 arrows miss the face`;
  if (top > BUTT) return `${misses}; the highest pass over the butt: the ground behind it must be clear.`;
  if (bottom < -GROUND) return `${misses}; the lowest strike the ground in front of the butt.`;
  return `${misses}.`;
}

/** What strikes the middle under hill and wind, with what the sight reads there where that is known; null where neither is chosen. */
export function allowText(given: Given, { setFor, hold }: Allowance, reads: ReadsAt, units: UnitChoice): string | null {
  if (given.slope === 0 && given.windSpeed === 0) return null;
  const set = given.withSight ? 'set the sight for' : 'aim as for';
  const read = setFor === null || !given.withSight ? null : reads(setFor.value);
  const setting = setFor === null ? null : `${set} ${settingText(setFor, units)}${read === null ? '' : ` (${read})`}`;
  const held = nought(hold.value, units) ? null : holdText(hold, units);
  const parts = [setting, held].filter((part) => part !== null);
  return parts.length === 0 ? null : `To strike the middle of a face at ${far(given.distance, units)}: ${together(parts)}.`;
}

const holdText = (hold: Band, units: UnitChoice): string =>
  `hold ${size(hold.value, units)} ${hold.value > 0 ? 'right' : 'left'}`;

/** The whole picture for those who hear it. */
export function facePicture(given: Given, lands: Lands, units: UnitChoice): string {
  const wrong = wrongs(given, units);
  const where = placeText(lands.landing.place.value, units) ?? 'on the middle';
  const what = wrong.length === 0 ? '' : ` with ${together(wrong)}`;
  return `Where the group will land on the ${given.face.name} face at ${far(given.distance, units)}${what}: its centre ${where}, ${pointsText(lands)}.`;
}

/** How the points come about. */
export function scoreWhy(given: Given, { spread, landing, cost }: Lands, units: UnitChoice): Why {
  const { x, y } = landing.place.value;
  return {
    title: 'What an arrow scores on average',
    text:
      'Arrows are taken to scatter about the centre of the group by a normal law, by as much as this archer’s do. Each ring counts the chance that an arrow touches it, line cutters with it. ' +
      'Nothing else is in it: no fear of the edge, no second try.',
    equation: 'E = Σ (points of a ring − points of the one outside it) P(r ≤ ring + shaft/2)',
    symbols: [
      { symbol: 'x', name: 'centre, right of the middle', value: textQuantity(x, 'drop', units) },
      { symbol: 'y', name: 'centre, above the middle', value: textQuantity(y, 'drop', units) },
      { symbol: 'σ across', name: 'one standard deviation', value: size(spread[0], units) },
      {
        symbol: 'σ up',
        name: given.marked ? 'one standard deviation' : 'the same, the guess with it',
        value: size(spread[1], units),
      },
      { symbol: 'E', name: `points on the ${given.face.name} face`, value: cost.there.points.toFixed(2) },
    ],
    source: `${sources['wa-rules']} Own derivation.`,
  };
}
