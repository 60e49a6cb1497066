import { windCaution, windSign, type Allowance, type CosineGap, type Landing } from '../../../../core/aim/index.ts';
import type { Why } from '../../../../core/findings/finding.ts';
import type { Point } from '../../../../core/group/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { together } from '../../../../core/model/sentence.ts';
import { showQuantity, textQuantity, unitOf } from '../../../../core/units/index.ts';
import { depthRange, isNought, rangeText } from '../words.ts';
import type { Given } from './given.ts';
import type { Hill, Lands, WrongRow } from './lands.ts';

export const far = (distance: number, units: UnitChoice): string => textQuantity(distance, 'distance', units);
export const size = (height: number, units: UnitChoice): string => textQuantity(Math.abs(height), 'drop', units);
export const points = (score: number): string => score.toFixed(1);

/** "48 cm low" */
export const upText = (up: number, units: UnitChoice): string =>
  isNought(up, units) ? 'none' : `${size(up, units)} ${up > 0 ? 'high' : 'low'}`;

/** "12 cm left" */
export const acrossText = (across: number, units: UnitChoice): string =>
  isNought(across, units) ? 'none' : `${size(across, units)} ${across > 0 ? 'right' : 'left'}`;

/** "48 cm low", "12 cm left"; nothing on the middle. */
export const placeTexts = ({ x, y }: Point, units: UnitChoice): readonly string[] => [
  ...(isNought(y, units) ? [] : [upText(y, units)]),
  ...(isNought(x, units) ? [] : [acrossText(x, units)]),
];

/** "48 cm low and 12 cm left"; null on the middle. */
export function placeText(place: Point, units: UnitChoice): string | null {
  const said = placeTexts(place, units);
  return said.length === 0 ? null : together(said);
}

/** The two sides of a place on the face: below nought, and above. */
const sides = { up: ['low', 'high'], across: ['left', 'right'] } as const;

/** The ends of a band behind its figure: "44 to 52", "0.8 low to 3.1 high"; empty where they read like the figure itself. */
export function bandText(band: Band, way: keyof typeof sides, units: UnitChoice): string {
  if (isNought(band.low, units) && isNought(band.high, units)) return '';
  if (band.low < 0 && band.high > 0) {
    const [low, high] = [band.low, band.high].map((end) => showQuantity(Math.abs(end), 'drop', units).figure);
    return `${low} ${sides[way][0]} to ${high} ${sides[way][1]}`;
  }
  const range = depthRange(band, units);
  return range.includes(' to ') ? range : '';
}

export const settingText = (setFor: Band, units: UnitChoice): string =>
  textQuantity(setFor.value, 'distance', units, { digits: 1 });

export const settingRange = (setFor: Band, units: UnitChoice): string => {
  const range = rangeText(setFor, 'distance', units, 1);
  return range.includes(' to ') ? range : '';
};

export const degrees = (slope: number): string => `${Number(((Math.abs(slope) * 180) / Math.PI).toFixed(1))}°`;

export const hours: readonly string[] = [
  '12 o’clock, head on',
  '1 o’clock',
  '2 o’clock',
  '3 o’clock, from the right',
  '4 o’clock',
  '5 o’clock',
  '6 o’clock, from behind',
  '7 o’clock',
  '8 o’clock',
  '9 o’clock, from the left',
  '10 o’clock',
  '11 o’clock',
];

/** "from 3 o’clock" */
export const fromHour = (hour: number): string => `from ${hour === 0 ? 12 : hour} o’clock`;

/** A wind in the units that people have a feeling for, and what it looks like. */
export function windText(speed: number): string {
  const { force, name, sign } = windSign(speed);
  const round = (figure: number) => String(Number(figure.toFixed(figure < 10 ? 1 : 0)));
  return `${round(speed)} m/s, ${round(3.6 * speed)} km/h, ${round(speed / 0.44704)} mph. Force ${force}, ${name}: ${sign}.`;
}

export const stormText = windCaution;

/** What is chosen to go wrong, in the order of the page. */
function wrongs(given: Given, units: UnitChoice): readonly string[] {
  const { slope, windSpeed, windHour, believed, distance, marked, within } = given;
  return [
    slope === 0 ? null : `${degrees(slope)} ${slope > 0 ? 'up' : 'down'}`,
    windSpeed === 0 ? null : `${textQuantity(windSpeed, 'speed', units)} ${fromHour(windHour)}`,
    believed === distance ? null : `${far(Math.abs(distance - believed), units)} ${believed < distance ? 'short' : 'long'}`,
    marked || within === 0 ? null : `guessed to within ${far(within, units)}`,
  ].filter((part) => part !== null);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The finding: what goes wrong, where that lands, and what it costs. */
export function landsTitle(given: Given, { landing, cost }: Lands, example: WrongRow, units: UnitChoice): string {
  const at = far(given.distance, units);
  const wrong = wrongs(given, units);
  if (wrong.length === 0) {
    const was = `Nothing to allow for at ${at}: ${points(cost.atMiddle.points)} points an arrow`;
    if (example.guess === null) return was;
    return `${was}; ${far(example.off, units)} short would be ${points(example.short)}`;
  }
  const place = placeText(landing.place.value, units);
  const guess = example.guess;
  const spread =
    given.marked || guess === null
      ? null
      : `up to ${size(guess.farther.value, units)} low or ${size(guess.nearer.value, units)} high`;
  const where = place ?? spread ?? 'still on the middle';
  const what = together(wrong.length === 1 ? wrong : inShort(given, units));
  return `${capital(what)} at ${at}: ${where}, ${points(cost.there.points)} points an arrow instead of ${points(cost.atMiddle.points)}`;
}

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

/** Everything that goes wrong, where that lands with its band, and what it scores. */
export function saidText(given: Given, lands: Lands, units: UnitChoice): string {
  const { slope, windSpeed, windHour, believed, distance, marked, within, withSight } = given;
  const set = withSight ? 'the sight set' : 'aimed';
  const wrong = [
    slope === 0 ? '' : `a slope of ${degrees(slope)} ${slope > 0 ? 'up' : 'down'}`,
    windSpeed === 0 ? '' : `a wind of ${textQuantity(windSpeed, 'speed', units)} ${fromHour(windHour)}`,
    believed === distance
      ? ''
      : `${set} ${far(Math.abs(distance - believed), units)} too ${believed < distance ? 'short' : 'long'}`,
    marked || within === 0 ? '' : `the distance guessed to within ${far(within, units)}`,
  ].filter((part) => part !== '');
  if (wrong.length === 0) return `Nothing goes wrong: the centre lies on the middle; ${pointsText(lands)}.`;
  const band = bandOfPlace(lands.landing, units);
  const where = placeText(lands.landing.place.value, units) ?? 'on the middle';
  return `With ${together(wrong)}, nothing allowed for: the centre lies ${where}${band === '' ? '' : ` (${band})`}; ${pointsText(lands)}.`;
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

/** What strikes the middle under hill and wind; null where neither is chosen. */
export function allowText(given: Given, { setFor, hold }: Allowance, units: UnitChoice): string | null {
  if (given.slope === 0 && given.windSpeed === 0) return null;
  const set = given.withSight ? 'set the sight for' : 'aim as for';
  const setting = setFor === null ? null : `${set} ${settingText(setFor, units)}`;
  const held = isNought(hold.value, units) ? null : holdText(hold, units);
  const parts = [setting, held].filter((part) => part !== null);
  return parts.length === 0 ? null : `To strike the middle of a face at ${far(given.distance, units)}: ${together(parts)}.`;
}

export const holdText = (hold: Band, units: UnitChoice): string =>
  `hold ${size(hold.value, units)} ${hold.value > 0 ? 'right' : 'left'}`;

/** Why the cosine rule is not the whole of it, each reason with what it adds to the setting. */
export function gapText(slope: number, { gravity, drag, eye }: CosineGap, units: UnitChoice): string {
  const way = slope > 0 ? 'slows it on the way up' : 'hurries it on the way down';
  const reasons = [
    { part: gravity, says: `gravity along the path, which ${way}` },
    { part: drag, says: 'drag over the whole way' },
    { part: eye, says: 'the eye over the arrow' },
  ].map(({ part, says }) => ({ says, adds: textQuantity(part, 'distance', units, { digits: 1, signed: true }) }));
  const told = reasons.filter(({ adds }) => !/^0\.0/.test(adds));
  if (told.length === 0) return 'Here the cosine rule is as good as the full solution.';
  return `The rule leaves out ${together(told.map(({ says, adds }) => `${says} (${adds})`))}.`;
}

export function hillWhy(given: Given, hill: Hill, units: UnitChoice): Why {
  const chosen = hill.sides[given.slope < 0 ? 1 : 0];
  return {
    title: 'A shot up or down a slope',
    text:
      'Both ways gravity pulls the arrow off its line with its share square to the path alone, so the sight is set for less than the distance; that is the cosine rule. ' +
      'Its share along the path slows an arrow going up and hurries one going down, drag works on the whole length, and the eye stands over the arrow: the full solution has all three.',
    equation: 'the flight passes (S cos φ, S sin φ); δ = θ − φ; set for R with δ(R) = δ. Rule: S cos φ',
    symbols: [
      { symbol: 'S', name: 'distance along the slope', value: far(given.distance, units) },
      { symbol: 'φ', name: 'slope, up positive', value: textQuantity(given.slope, 'angle', units) },
      { symbol: 'v', name: 'speed of the arrow', value: textQuantity(given.launches.value.speed, 'speed', units) },
      { symbol: 'R', name: 'set for', value: chosen?.setFor == null ? 'none' : settingText(chosen.setFor, units) },
      { symbol: 'S cos φ', name: 'cosine rule', value: textQuantity(hill.cosineRule, 'distance', units, { digits: 1 }) },
    ],
    source: 'own derivation',
  };
}

/** The whole picture for those who hear it. */
export function facePicture(given: Given, lands: Lands, units: UnitChoice): string {
  const where = placeText(lands.landing.place.value, units) ?? 'on the middle';
  return `Where the group will land on the ${given.face.name} face at ${far(given.distance, units)}: its centre ${where}, ${pointsText(lands)}.`;
}

/** "41 to 45 cm low and 9 to 16 cm left" */
function bandOfPlace({ up, across }: Landing, units: UnitChoice): string {
  const told = (band: Band, way: keyof typeof sides) => {
    const range = bandText(band, way, units);
    if (range === '' || band.low < 0 === band.high > 0) return range;
    return `${range} ${unitOf('drop', units)} ${sides[way][band.value > 0 ? 1 : 0]}`;
  };
  return together([told(up, 'up'), told(across, 'across')].filter((range) => range !== ''));
}

export const heightFigure = (height: number, units: UnitChoice): string =>
  showQuantity(Math.abs(height), 'drop', units, { digits: 0 }).figure;
