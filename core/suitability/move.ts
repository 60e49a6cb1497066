import type { Use } from '../units/index.ts';

/** One way to bring a shaft to the middle of what is needed, how far it goes and at what cost. */
export interface Move {
  readonly what: 'point' | 'length' | 'weight' | 'shaft';
  /** The figure as it is and as it would be [SI]: point mass, arrow length, weight on the fingers, or deflection on the standard tester. */
  readonly from: number;
  readonly to: number;
  readonly use: Use;
  /** Deflection on the standard tester that the shaft would then act like, on this bow as it is now [m]. */
  readonly actsLike: number;
  readonly reaches: 'middle' | 'edge' | 'not';
  /** What it costs, ready to read. */
  readonly cost: string;
  /** Why it may not be done, ready to read; null when it may. */
  readonly stopped: string | null;
}

/** The trade's whole steps and what it sells, in its own units. */
export const tradeSteps = {
  pointGr: 5,
  lengthIn: 0.5,
  weightLb: 1,
  /** Target points and wooden points weigh so much: from memory. */
  usualPointGr: { from: 60, to: 145 },
  /** Nobody looks for another length farther off than this: from memory. */
  lengthReachIn: 2,
  /** Draw weight is turned by no more than this share of it: common practice. */
  weightShare: 0.1,
  /** What a whole turn of both limb bolts may do to the weight at most: from memory. */
  weightPerTurn: 0.05,
  /** More weight comes in steps of 2 to 3 lb: common practice. */
  mostMoreLb: 3,
} as const;
