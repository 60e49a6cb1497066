import { limits } from '../model/limits.ts';
import { ok, refuse, type Result, type SpineConvention, type UnitChoice } from '../model/index.ts';
import { inch } from '../units/exact.ts';
import { readMeasure, unitOf } from '../units/index.ts';

/** Printed numbers of shafts lie in here: thousandths of an inch. */
const printed = { from: 100, to: 2000 } as const;
/** Wooden shafts are sorted in pounds between about these. */
const woodLb = { from: 10, to: 120 } as const;

/**
 * Reads a shaft's spine as the trade writes it: a deflection or, of a wooden shaft, its pounds.
 *
 * @equation δ = 26 in / P on the 26 in, 2 lb tester; otherwise as readMeasure
 * @param text - what was typed; an empty field means not measured [text]
 * @param convention - the tester that the figure is from [choice]
 * @param units - the person's choice of units [record]
 * @returns δ on that tester, null for an empty field, or a refusal whose field is the deflection [m]
 * @validity pounds belong to the 26 in tester only; a shaft's printed number such as 500 is refused with what it usually means
 * @source from memory
 * @example readSpine('40 lb', '26 in, 2 lb', defaultPreferences.units).value // 0.01651
 */
export function readSpine(text: string, convention: SpineConvention, units: UnitChoice): Result<number | null> {
  const [, figure = '', pounds] = /^\s*(\d+(?:\.\d+)?)\s*(lbs?|pounds?|#)?\s*$/i.exec(text) ?? [];
  const number = Number(figure);
  const wood = convention === '26 in, 2 lb';
  const field = 'deflection';
  const { min, max } = limits.deflection;
  if (pounds !== undefined) {
    if (!wood)
      return refuse(
        'pounds',
        'Pounds are a wooden shaft\u2019s, from a 26 in span and 2 lb: choose that tester, or type the deflection.',
        field,
      );
    const deflection = (26 * inch) / number;
    return number > 0 && deflection >= min && deflection <= max
      ? ok(deflection)
      : refuse('out-of-limits', `A wooden shaft\u2019s pounds, such as 45 lb, were expected.`, field);
  }
  const read = readMeasure(field, text, units);
  if (read.ok || figure === '') return read;
  if (!figure.includes('.') && number >= printed.from && number <= printed.to) {
    const typed = `${number / 1000}${unitOf('deflection', units) === 'in' ? '' : ' in'}`;
    return refuse(
      'printed number',
      `${figure} on a shaft usually means ${(number / 1000).toFixed(3)} in over 28 in with 880 g: ${wood ? 'choose that tester and type' : 'type'} ${typed}.`,
      field,
    );
  }
  if (wood && number >= woodLb.from && number <= woodLb.to)
    return refuse('pounds', `${figure} reads like a wooden shaft\u2019s pounds: type ${figure} lb.`, field);
  return read;
}
