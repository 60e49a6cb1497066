import type { KnownMark, MarkPriors, SightScale } from './types.ts';

/** The set-up that the comments' examples go by: 57 m/s, eye 0.12 m, sight radius 0.85 m, 10 mm on the scale at a level arrow. */
export const exampleMarks: readonly KnownMark[] = [
  { distance: 18, reading: 39.1 },
  { distance: 30, reading: 52.8 },
  { distance: 50, reading: 79 },
  { distance: 70, reading: 107.2 },
];

export const exampleScale: SightScale = { unit: 0.001, grows: 'down', lowest: 0, highest: 130 };

export const examplePriors: MarkPriors = {
  speed: { value: 56, low: 52, high: 60 },
  eyeHeight: { value: 0.12, low: 0.1, high: 0.14 },
  k: { value: 0.0014, low: 0.0009, high: 0.002 },
  sightRadius: { value: 0.85, low: 0.83, high: 0.87 },
  spreadPerMetre: 0.0015,
};
