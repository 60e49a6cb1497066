import type { BowKind } from '../model/index.ts';
import type { Band } from '../model/band.ts';

/** What a kind of bow is like where nothing was measured on this one. */
export interface KindFigures {
  /** Stored energy over full-draw weight times power stroke [-]. */
  readonly fullness: Band;
  /** K, the mass that the bow's own moving parts seem to add to the arrow [kg]. */
  readonly virtualMass: Band;
  /** η, the share of the stored energy that comes back when the bow is let down as quickly as it shoots [-]. */
  readonly hysteresis: Band;
}

// Recurve fullness: the measured bows of Tuijn & Kooi 1992, Table I, have .581 and .582. Every other figure is from memory, chosen so
// that efficiencies come out at .67 to .80 for recurves (Hickman 1947 measured .62 to .68 on a yew bow).
const recurve: KindFigures = {
  fullness: { value: 0.581, low: 0.55, high: 0.61 },
  virtualMass: { value: 0.006, low: 0.005, high: 0.008 },
  hysteresis: { value: 0.95, low: 0.9, high: 1 },
};
const straight: KindFigures = {
  fullness: { value: 0.51, low: 0.48, high: 0.54 },
  virtualMass: { value: 0.0115, low: 0.01, high: 0.013 },
  hysteresis: { value: 0.93, low: 0.86, high: 1 },
};

/** The figures by kind; a compound's cams make each model a kind of its own, so it has none. */
export const kindFigures: Readonly<Record<BowKind, KindFigures | null>> = {
  'take-down recurve': recurve,
  'one-piece recurve': recurve,
  longbow: straight,
  flatbow: straight,
  'self bow': { ...straight, fullness: { value: 0.5, low: 0.46, high: 0.53 } },
  compound: null,
};
