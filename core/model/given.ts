import { limits, type Measure } from './limits.ts';
import { ok, refuse, type Problem, type Result } from './problem.ts';
import { together } from './sentence.ts';

const inSentence = (key: Measure): string => limits[key].name.charAt(0).toLowerCase() + limits[key].name.slice(1);

const unbelievable = (key: Measure, value: number): Problem | null => {
  const { name, min, max } = limits[key];
  if (!Number.isFinite(value)) return { code: 'not a number', sentence: `${name} was expected as a number.`, field: key };
  // A length typed in inches may sit a rounding error outside its limit.
  const slack = 1e-9 * (max - min);
  if (value < min - slack) return { code: 'out of limits', sentence: `${name} is below what can be.`, field: key };
  if (value > max + slack) return { code: 'out of limits', sentence: `${name} is above what can be.`, field: key };
  return null;
};

/**
 * The figures that a computation cannot do without: all there and believable, or one refusal that names everything missing
 * ("For the power stroke, enter a draw length.").
 * Records from the notebook have passed their schema; figures from elsewhere have not, and no NaN may travel on.
 */
export function given<K extends Measure>(purpose: string, wanted: Readonly<Record<K, number | null>>): Result<Record<K, number>> {
  const keys = Object.keys(wanted) as K[];
  // Asked of every reading of every table, and nearly always in order: nothing is made until something is missing.
  if (keys.some((key) => wanted[key] === null)) {
    const missing = keys.filter((key) => wanted[key] === null);
    return refuse('missing', `For ${purpose}, enter ${together(missing.map(inSentence))}.`, missing[0]);
  }
  for (const key of keys) {
    const problem = unbelievable(key, wanted[key] as number);
    if (problem !== null) return { ok: false, problem };
  }
  return ok(wanted as Record<K, number>);
}
