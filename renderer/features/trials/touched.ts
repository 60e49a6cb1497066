import type { ClearanceShot } from '../../../core/model/trial.ts';
import { together } from '../../../core/model/sentence.ts';

export const touchedText = (touched: ClearanceShot['touched'] | readonly ClearanceShot['touched'][number][]): string =>
  touched.length === 0 ? 'clean' : together(touched);

/** A nock is turned by thirty-seconds first; a third of a turn puts another vane uppermost. */
export const nockTurns: readonly number[] = [0, 1 / 32, 1 / 16, 3 / 32, 1 / 8, 3 / 16, 1 / 4, 1 / 3, 1 / 2];

const texts: readonly [number, string][] = [
  [1 / 32, '1/32'],
  [1 / 16, '1/16'],
  [3 / 32, '3/32'],
  [1 / 8, '1/8'],
  [3 / 16, '3/16'],
  [1 / 4, '1/4'],
  [1 / 3, '1/3'],
  [1 / 2, '1/2'],
];

export function turnText(turn: number): string {
  if (turn === 0) return 'not turned';
  const [, text = Math.abs(turn).toFixed(3)] = texts.find(([value]) => Math.abs(value - Math.abs(turn)) < 1e-6) ?? [];
  return `${turn < 0 ? '−' : ''}${text} of a turn`;
}
