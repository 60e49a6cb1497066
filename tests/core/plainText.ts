/** Every text anywhere inside. */
export function everyText(found: unknown): string[] {
  if (typeof found === 'string') return [found];
  if (found === null || typeof found !== 'object') return [];
  return Object.values(found).flatMap(everyText);
}

/** What no text for people may hold: an empty figure, a minus before nought, a gap, a stop doubled. */
const never = /\b(null|undefined|NaN|Infinity|object Object)\b|[\u2212-]0(?![\d./])|  |\.\.| [.,;:]|\bsafe\b/i;

/** Everything wrong anywhere inside what a room handed out: a number that is none, a value that is missing, a text nobody should read. */
export function wrongIn(found: unknown, path: string): string[] {
  switch (typeof found) {
    case 'undefined':
      return [`${path} is undefined`];
    case 'number':
      return Number.isFinite(found) ? [] : [`${path} is ${found}`];
    case 'string':
      return never.test(found) ? [`${path} says "${found}"`] : [];
    case 'object':
      return found === null ? [] : Object.entries(found).flatMap(([key, value]) => wrongIn(value, `${path}.${key}`));
    default:
      return [];
  }
}

/** A sentence begins with a capital, a figure or a quotation, and ends with a stop. */
export const wrongSentence = (text: string): string[] =>
  /^[A-Z0-9\d"\u2212+].*[.]$/s.test(text) ? [] : [`no sentence: "${text}"`];

/** A title or a remark has no stop at its end. */
export const wrongTitle = (text: string): string[] => (/[.,;:\s]$/.test(text) ? [`no title: "${text}"`] : []);
