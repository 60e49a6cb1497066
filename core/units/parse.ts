import type { UnitChoice } from '../model/preferences.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { chosenUnit } from './chosen.ts';
import { dimensionOf } from './dimensions.ts';
import { findUnit, isUnit } from './find.ts';
import { plainFigure } from './plainFigure.ts';
import { readNumber, type NumberRead } from './number.ts';
import type { Unit } from './table.ts';
import { tidy } from './tidy.ts';
import type { Use } from './uses.ts';
import { wording } from './words.ts';

/** Who is spoken of in a refusal: "A brace height", and a believable figure of it. */
interface Subject {
  readonly name: string;
  readonly such: string;
}

const LONGEST_TEXT = 60;
/** No length, mass, force or time at a bench comes near this many SI units. */
const ABSURD = 1e9;
/** A unit goes on to the next digit; the 2 of "m²" and "in²" is the only digit inside one. */
const UNIT = /^(?:[^\d]|(?<=[ng][ ·*-]?m|lb[sf]?[ ·*-]?in)2)*/;

/**
 * Reads a quantity as people write it: any unit of the right dimension after the number, or none for the chosen unit.
 *
 * @equation SI value = number × factor of the unit, + the SI value at its nought; "5 ft 8 in" and "1 lb 4 oz" add up, each unit smaller than the one before
 * @param text - what was typed [text]
 * @param use - what the figure is used for; it decides the dimension and the unit of a bare number [choice]
 * @param units - the person's choice of units [record]
 * @returns the SI value, or a sentence that says what was expected [SI]
 * @validity improper fractions, "1,234" (thousands or decimals?), units of another dimension and figures beyond 1e9 SI are refused; kilograms of a draw weight are kilograms-force
 * @source nist-sp811
 * @example parseQuantity('28 1/4 in', 'length', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }).value // 0.71755
 */
export function parseQuantity(text: string, use: Use, units: UnitChoice): Result<number> {
  const { kind, such } = wording[use];
  return parseFor({ name: kind.charAt(0).toUpperCase() + kind.slice(1), such }, text, use, units);
}

/**
 * As parseQuantity, with refusals that speak of a named figure.
 *
 * @equation as parseQuantity
 * @param subject - the name with its article and a believable figure [record]
 * @param text - what was typed [text]
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @returns the SI value, or a sentence that names the figure [SI]
 * @validity as parseQuantity
 * @source nist-sp811
 * @example parseFor({ name: 'A brace height', such: '8 1/2 in' }, '9 lb', 'length', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }).problem.sentence // "A brace height is a length: in, cm or mm were expected, not lb."
 */
export function parseFor(subject: Subject, text: string, use: Use, units: UnitChoice): Result<number> {
  const nonsense = refuse('not-a-quantity', `${subject.name} such as ${subject.such} was expected.`);
  const plain = plainFigure(text, dimensionOf[use], chosenUnit(use, units));
  if (plain !== null && Math.abs(plain) < ABSURD) return ok(plain);
  const whole = tidy(text);
  if (whole === '' || whole.length > LONGEST_TEXT) return nonsense;
  const negative = whole.startsWith('-');
  let rest = whole.replace(/^[-+]/, '');
  let sum = 0;
  let before: Unit | null = null;
  while (rest !== '') {
    const read = readNumber(rest);
    if (!read.ok) return read.why === 'none' ? nonsense : refuse('not-a-number', sentenceOf[read.why]);
    rest = rest.slice(read.taken);
    const [typed = ''] = UNIT.exec(rest) ?? [];
    rest = rest.slice(typed.length);
    const word = typed.replace(/[ ,-]+$/, '').trim();
    // A unit-less number ends the text: "28 - 2 mm" is a sum, not a measurement.
    if (rest !== '' && (word === '' || /[.,]$/.test(typed))) return nonsense;
    const unit: Result<Unit> = unitTyped(word, before, subject, use, units);
    if (!unit.ok) return unit;
    // Degrees are no stretches that could be laid end to end.
    if (before !== null && (unit.value.factor >= before.factor || unit.value.zero !== 0 || before.zero !== 0)) return nonsense;
    sum += read.value * unit.value.factor;
    before = unit.value;
  }
  if (before === null) return nonsense;
  if (!(Math.abs(sum) < ABSURD))
    return refuse(
      'absurd',
      `That figure is beyond anything at a bench: ${subject.name.toLowerCase()} such as ${subject.such} was expected.`,
    );
  return ok((negative && sum !== 0 ? -sum : sum) + before.zero);
}

function unitTyped(typed: string, before: Unit | null, subject: Subject, use: Use, units: UnitChoice): Result<Unit> {
  if (typed === '') {
    const inches = before?.symbol === 'ft' ? findUnit('in', 'length') : null;
    return before === null || inches !== null
      ? ok(inches ?? chosenUnit(use, units))
      : refuse('not-a-quantity', `${subject.name} such as ${subject.such} was expected.`);
  }
  const unit = findUnit(typed, dimensionOf[use]);
  if (unit !== null) return ok(unit);
  const { kind, units: expected } = wording[use];
  const were = / /.test(expected) && expected !== 'no unit' ? 'were' : 'was';
  if (!isUnit(typed)) return refuse('unknown-unit', `The unit "${typed}" is not known: ${expected} ${were} expected.`);
  const is = subject.name.toLowerCase() === kind ? 'This' : subject.name;
  return refuse('wrong-unit', `${is} is ${kind}: ${expected} ${were} expected, not ${typed}.`);
}

const sentenceOf: Readonly<Record<Exclude<Extract<NumberRead, { ok: false }>['why'], 'none'>, string>> = {
  lower: 'A fraction needs its lower number, as in 28 1/4.',
  upper: 'A fraction needs its upper number, as in 28 1/4.',
  improper: 'A fraction is smaller than one, with the whole number apart, as in 28 1/4.',
  ambiguous: 'That comma or point can be read in two ways: write 1234 or 1.234.',
};
