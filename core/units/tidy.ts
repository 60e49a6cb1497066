/** Written fractions in one sign, taken apart before anything else turns "28¼" into "281/4". */
const vulgar: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅒': '1/10',
};

/**
 * A typed quantity in plain signs: lower case, one kind of space, minus, prime, quote, slash and product dot.
 *
 * @equation fractions in one sign become n/d; curly quotes and primes become ' and "; narrow spaces that group digits in threes go; all minus signs become -
 * @param text - what was typed [text]
 * @returns the same in plain signs [text]
 * @validity any text
 * @source own derivation
 * @example tidy(' −28¼″ ') // "-28 1/4\""
 */
export function tidy(text: string): string {
  return text
    .replace(/[¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒]/gu, (sign) => ` ${vulgar[sign] ?? ''}`)
    .replace(/[′’‘´`]/gu, "'")
    .replace(/[″”“]|''/gu, '"')
    .replace(/(\d)[\u00a0\u2008\u2009\u202f](?=\d{3}(?![\d/⁄]))/gu, '$1')
    .normalize('NFKC')
    .replace(/[−‐‑‒–—]/gu, '-')
    .replace(/⁄/gu, '/')
    .replace(/\^(?=2)/gu, '')
    .replace(/[⋅∙•×]/gu, '·')
    .replace(/(^|[-+])\s+/gu, '$1')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
}
