/** A number read from the front of a text, and how many characters it took; or why it cannot be read. */
export type NumberRead =
  | { ok: true; value: number; taken: number }
  | { ok: false; why: 'none' | 'lower' | 'upper' | 'improper' | 'ambiguous' };

const MIXED = /^(?:(\d+)(?: |-))?(\d+)\/(\d+)(?![\d./,])/;
const PLAIN = /^(?:\d[\d.,]*|[.,]\d+)(?:e[+-]?\d+)?/;

/** "1,234.5", "1.234,5", "0,5", "1,234,567": null when it cannot be told which sign parts the decimals. */
function decimal(written: string): number | null {
  const [, body = '', power = ''] = /^([\d.,]+)(e.*)?$/.exec(written) ?? [];
  const read = (whole: string, part: string) => Number(`${whole === '' ? '0' : whole}.${part === '' ? '0' : part}${power}`);
  if (/^\d*\.?\d*$/.test(body)) return read(...split(body, '.'));
  if (/^\d{1,3}(,\d{3})+\.\d*$/.test(body) || /^\d{1,3}(,\d{3}){2,}$/.test(body))
    return read(...split(body.replaceAll(',', ''), '.'));
  if (/^\d{1,3}(\.\d{3})+,\d*$/.test(body)) return read(...split(body.replaceAll('.', ''), ','));
  if (!/^\d*,\d*$/.test(body)) return null;
  const [whole, part] = split(body, ',');
  // One comma and three digits may be thousands or decimals, unless there is nothing before it.
  return part.length === 3 && !/^0*$/.test(whole) ? null : read(whole, part);
}

function split(body: string, at: string): [string, string] {
  const [whole = '', part = ''] = body.split(at);
  return [whole, part];
}

/**
 * Reads the number at the front of a tidied text: decimal point or comma, thousands where they cannot be mistaken, mixed fractions.
 *
 * @equation w n/d = w + n/d with n < d; a single comma followed by exactly three digits is refused unless only noughts precede it
 * @param text - a text after tidy, without its sign [text]
 * @returns the number and the characters taken, or why not: no number, no lower or upper number of a fraction, n ≥ d, or two possible readings [record]
 * @validity the number may be infinite when its power of ten is absurd: the caller refuses that
 * @source common practice
 * @example readNumber('28 1/4 in').value // 28.25
 */
export function readNumber(text: string): NumberRead {
  const fraction = MIXED.exec(text);
  if (fraction !== null) {
    const [all, whole = '0', upper = '', lower = ''] = fraction;
    if (Number(lower) === 0) return { ok: false, why: 'lower' };
    // "71/2" is 7 1/2 with a lost space more often than 35.5.
    if (Number(upper) >= Number(lower)) return { ok: false, why: 'improper' };
    return { ok: true, value: Number(whole) + Number(upper) / Number(lower), taken: all.length };
  }
  if (/^[\d., -]*\d ?\//.test(text)) return { ok: false, why: /^[\d.,]+ \/\d/.test(text) ? 'upper' : 'lower' };
  if (/^\/\d/.test(text)) return { ok: false, why: 'upper' };
  const plain = PLAIN.exec(text);
  if (plain === null) return { ok: false, why: 'none' };
  const value = decimal(plain[0]);
  return value === null ? { ok: false, why: 'ambiguous' } : { ok: true, value, taken: plain[0].length };
}
