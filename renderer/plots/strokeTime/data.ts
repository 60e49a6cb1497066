import type { SetupStroke, StrokeChange } from '../../../core/bow/index.ts';

/** Where the stored energy is at a moment, from the axis up: each part's top is the next one's ground. */
export const energyParts = ['arrow', 'string', 'limbs', 'lost', 'stored'] as const;
export type EnergyPart = (typeof energyParts)[number];

export interface StrokeSample {
  readonly time: number;
  readonly speed: number;
  readonly thrust: number;
  readonly tension: number;
  readonly energy: Readonly<Record<EnergyPart, number>>;
}

/** A stroke ready to be drawn, from the loose to the exit. SI. */
export interface StrokeData {
  readonly samples: readonly StrokeSample[];
  readonly exit: SetupStroke['exit'];
  /** All that is shared out. */
  readonly work: number;
  readonly braceTension: number;
  readonly simple: SetupStroke['simple'];
  readonly assumed: readonly string[];
  readonly changes: readonly StrokeChange[];
}

export function strokeData(stroke: SetupStroke, changes: readonly StrokeChange[]): StrokeData {
  return {
    samples: stroke.samples.map((sample) => ({
      time: sample.t,
      speed: sample.speed,
      thrust: sample.thrust,
      tension: sample.tension,
      energy: {
        arrow: sample.arrowEnergy,
        string: sample.stringEnergy,
        limbs: sample.limbEnergy,
        lost: sample.lost,
        stored: sample.stored,
      },
    })),
    exit: stroke.exit,
    work: stroke.work,
    braceTension: stroke.braceTension,
    simple: stroke.simple,
    assumed: stroke.assumed,
    changes,
  };
}

/** The moment nearest to a time. */
export function sampleAt(samples: readonly StrokeSample[], time: number): StrokeSample | null {
  let nearest: StrokeSample | null = null;
  for (const sample of samples) {
    if (nearest === null || Math.abs(sample.time - time) < Math.abs(nearest.time - time)) nearest = sample;
  }
  return nearest;
}
