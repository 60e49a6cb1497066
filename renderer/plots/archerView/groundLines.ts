import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf } from '../../../core/units/index.ts';
import type { ArcherViewData } from './data.ts';
import type { ViewScale } from './frame.ts';

/** A line across the ground at a round distance. */
export interface GroundLine {
  readonly y: number;
  /** In the chosen unit. */
  readonly figure: number;
}

const rounds = [2, 3, 5, 10, 15, 20, 30, 40, 50, 60, 70, 80, 100, 120, 150, 200];
/** Farther behind the target than this the ground tells nothing more [-]. */
const BEHIND = 2;
/** Lines nearer to each other than this run into one [px]. */
const LEAST = 5;

/** Lines at round distances from the lower edge of the picture up to where they run together under the horizon. */
export function groundLines(
  data: ArcherViewData,
  { scale, horizon }: ViewScale,
  height: number,
  units: UnitChoice,
): GroundLine[] {
  const factor = factorOf('distance', units);
  const lines: GroundLine[] = [];
  for (const figure of rounds) {
    const y = horizon + (data.eyeAboveGround * scale) / (figure * factor);
    if (figure * factor > BEHIND * data.distance) break;
    const last = lines.at(-1);
    if (y < height - 2 && y > horizon + LEAST && (last === undefined || last.y - y >= LEAST)) lines.push({ y, figure });
  }
  return lines;
}
