import { capital, shootingStops } from '../findings/index.ts';
import type { Finding } from '../findings/finding.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { acrossText } from '../trials/index.ts';
import { textQuantity } from '../units/index.ts';
import type { CompareRow } from './compareSetups.ts';
import { shortNames } from './shortNames.ts';

/**
 * The sentence that settles a comparison, or says what would.
 *
 * @equation stops first, and one that is stopped is never advised; then bare shafts really nearer the fletched; then a really tighter group; then what is real of the build; else no difference shown yet
 * @param rows - the rows of compareSetups [list]
 * @param reference - the set-up counted from [record]
 * @param other - the other set-up [record]
 * @param units - the person's choice of units [record]
 * @returns the headline [text]
 * @validity bare shafts nearer and groups tighter are both better; when they disagree both are said and neither is kept; a figure that only one of them has says nothing
 * @source own derivation
 * @example compareHeadline(compareSetups(exampleBundle, exampleBundle), exampleBundle, exampleBundle, defaultPreferences.units) // "The two do not differ in any figure"
 */
export function compareHeadline(rows: readonly CompareRow[], reference: Bundle, other: Bundle, units: UnitChoice): string {
  const names = shortNames(reference.setup.name, other.setup.name).map(spoken) as [string, string];
  const stops = [reference, other].map((bundle) => shootingStops(bundle, units));
  // What was shot before a brace height left the maker's range still tells something; beside any other stop nothing does.
  const hurts = stops.some((list) => list.some(({ id }) => id !== 'braceHeight'));
  const stopped = stops.map(([first]) => first);
  if (hurts) return stoppedLine(names, stopped);
  return `${shownLine(
    rows,
    reference,
    other,
    units,
    names,
    stopped.every((stop) => stop === undefined),
  )}${untilMended(names, stopped)}`;
}

type Stops = readonly (Finding | undefined)[];

function stoppedLine([name, otherName]: readonly [string, string], [one, another]: Stops): string {
  if (one !== undefined && another !== undefined)
    return one.title === another.title
      ? `Shoot neither until the stop is mended. ${one.title}`
      : `Shoot neither ${name} nor ${otherName} until their stops are mended`;
  return one === undefined ? `Do not shoot ${otherName}. ${another?.title ?? ''}` : `Do not shoot ${name}. ${one.title}`;
}

function untilMended([name, otherName]: readonly [string, string], [one, another]: Stops): string {
  if (one === undefined && another === undefined) return '';
  if (one !== undefined && another !== undefined) return '; shoot neither until the brace height is mended';
  return `; do not shoot ${one === undefined ? otherName : name} until its brace height is mended`;
}

/** What the figures and the groups show; it advises to keep one only where both may be shot. */
function shownLine(
  rows: readonly CompareRow[],
  reference: Bundle,
  other: Bundle,
  units: UnitChoice,
  [name, otherName]: readonly [string, string],
  sound: boolean,
): string {
  const known = rows.filter(({ verdict }) => verdict !== 'unknown');
  if (known.length === 0) return 'Nothing to compare yet: no figure is known of both';
  if (known.every(({ verdict }) => verdict === 'same'))
    return `The two do not differ in any figure${known.length < rows.length ? ' that is known of both' : ''}`;
  const row = (key: string) => rows.find((one) => one.key === key);
  const bare = winner(row('bareOff'), bareIsReal(rows));
  const tight = winner(row('meanRadius'), row('meanRadius')?.verdict === 'real');
  const called = (won: Won) => (won.which === 'other' ? otherName : name);
  // Between two archers or two bows there is nothing to keep: the arrows are not what differs.
  const alike = reference.archer.id === other.archer.id && reference.bow.id === other.bow.id;
  const lead = (won: Won) => (alike && sound ? `Keep ${called(won)}` : capital(called(won)));
  const bareWords = (won: Won) =>
    `bare shafts land ${acrossText(won.better, units)} from the fletched, not ${acrossText(won.worse, units)}`;
  const tightWords = (won: Won) => `mean radius ${acrossText(won.better, units)}, not ${acrossText(won.worse, units)}`;
  if (bare !== null && tight !== null && bare.which !== tight.which)
    return `${capital(called(bare))}: ${bareWords(bare)}; but ${called(tight)} groups tighter`;
  if (bare !== null) return `${lead(bare)}: ${bareWords(bare)}`;
  if (tight !== null) return `${lead(tight)}: ${tightWords(tight)}`;

  const shot = ['bareOff', 'meanRadius'].some((key) => typeof row(key)?.difference === 'number');
  const told = shot ? 'the face shows no difference yet' : 'no groups at one distance yet';
  const real = (keys: readonly string[]) => keys.flatMap((key) => row(key) ?? []).filter(({ verdict }) => verdict === 'real');
  const differs = real(['mass', 'deflection', 'column', 'speed']).map((one) => differenceWords(one, units));
  const set = real(['braceHeight', 'tiller', 'strands']).map(
    ({ name: of, use, difference }) => `${of.toLowerCase()} ${textQuantity(difference ?? 0, use, units, { signed: true })}`,
  );
  const two = (words: readonly string[]) => words.slice(0, 2).join(' and ');
  // The same arrows on a bow set otherwise: what was set is the cause, and their speed what follows.
  if (set.length > 0 && (differs.length === 0 || reference.arrowSet.id === other.arrowSet.id))
    return `${capital(otherName)}: ${two(set)}; ${told}`;
  if (differs.length > 0) return `${arrowsOf(otherName)} ${two(differs)}; ${told}`;
  return `No difference shown yet between ${name} and ${otherName}`;
}

/** Of the arrows, whoever shoots them: a name takes a possessive, a description its colon. */
const arrowsOf = (name: string): string =>
  /^(the|an?|my|our|his|her|their)\s/u.test(name) ? `${capital(name)}: arrows` : `${capital(name)}\u2019s arrows are`;

interface Won {
  readonly which: 'reference' | 'other';
  readonly better: number;
  readonly worse: number;
}

/** Smaller is better, once the difference is real. */
function winner(row: CompareRow | undefined, real: boolean): Won | null {
  if (!real || row === undefined || row.reference === null || row.other === null) return null;
  const [a, b] = [row.reference.value, row.other.value];
  return b < a ? { which: 'other', better: b, worse: a } : { which: 'reference', better: a, worse: b };
}

/** A distance cannot tell two directions apart: the shift differs when its side or its height does. */
const bareIsReal = (rows: readonly CompareRow[]): boolean =>
  rows.some(({ key, verdict }) => (key === 'bareSide' || key === 'bareHeight') && verdict === 'real');

const words: Readonly<Record<string, readonly [more: string, less: string]>> = {
  mass: ['heavier', 'lighter'],
  deflection: ['softer in spine', 'stiffer in spine'],
  column: ['weaker by the load figure', 'stiffer by the load figure'],
  speed: ['faster', 'slower'],
};

function differenceWords({ key, use, difference }: CompareRow, units: UnitChoice): string {
  const [more, less] = words[key] ?? ['more', 'less'];
  return `${textQuantity(Math.abs(difference ?? 0), use, units)} ${(difference ?? 0) > 0 ? more : less}`;
}

/** A description takes an article in a sentence ("the 85 gr point"), a name does not ("Ines"). */
const spoken = (name: string): string =>
  /^[\d\p{Ll}]/u.test(name) && !/^(the|an?|my|our|his|her|their)\s/u.test(name) ? `the ${name}` : name;
