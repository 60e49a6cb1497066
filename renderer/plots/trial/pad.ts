import type { Tear } from '../../../core/model/trial.ts';

export interface PadView {
  /** The pad is a square of this many pixels. */
  readonly size: number;
  /** From its middle, where the point went through, to its edge [m]. */
  readonly half: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The least that is shown [m], so that a small tear looks small. */
const LEAST = 0.06;

/** Wide enough for the longest tear, in steps of 20 mm, so that it does not breathe with every one. */
export function padView(tears: readonly Pick<Tear, 'across' | 'up'>[], size: number): PadView {
  const longest = tears.reduce((most, { across, up }) => Math.max(most, Math.abs(across), Math.abs(up)), 0);
  return { size, half: Math.max(LEAST, Math.ceil((longest * 1.2) / 0.02) * 0.02) };
}

export const onPad = ({ size, half }: PadView, { across, up }: Pick<Tear, 'across' | 'up'>): Spot => ({
  x: size / 2 + (across / half) * (size / 2),
  y: size / 2 - (up / half) * (size / 2),
});

export const fromPad = ({ size, half }: PadView, { x, y }: Spot): { across: number; up: number } => ({
  across: ((x - size / 2) / (size / 2)) * half,
  up: ((size / 2 - y) / (size / 2)) * half,
});
