import { pointBeyondShaft } from '../arrow/index.ts';
import { dragBand, peak } from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import { ok, type Result } from '../model/problem.ts';
import { type AimInput, checkAim } from './aimInput.ts';
import { atCorners, bandOver, type Corners } from './bands.ts';
import { type DropRow, dropTable } from './dropTable.ts';
import { launchBand } from './launch.ts';
import { setSight, type SetSight } from './lineOfSight.ts';
import { pointOnDistance } from './pointOn.ts';

/** Everything that the screen for aiming draws. Plain data, SI; a figure that cannot be had carries its reason. */
export interface AimPlan {
  readonly setFor: number;
  /** Drag parameter that was used [1/m]. */
  readonly drag: Band;
  /** Launch angle above the horizontal with the sight set [rad]. */
  readonly elevation: Band;
  /** Highest over the line of sight: how far out, and how high [m]. */
  readonly apex: { readonly x: Band; readonly height: Band };
  readonly table: readonly DropRow[];
  /** Without the sight: where tip and arrow agree [m]. */
  readonly pointOn: Result<Band>;
}

/**
 * All figures of the screen for aiming, each with its band over what is not known of speed and drag.
 *
 * @equation setSight, dropTable and pointOnDistance over launchBand
 * @param input - speed with its band, arrow, air, eye height, distances and the one that the sight is set for [record]
 * @returns the plan, or a refusal that says what was expected [record]
 * @validity speeds of 20 to 120 m/s; the archer sets the sight by shooting, so every launch of the band passes through the mark it is set for
 * @source own derivation
 * @example aimPlan({ speed: { value: 55, low: 54, high: 56 }, mass: 0.02, diameter: 0.006, airDensity: 1.225, eyeHeight: 0.12, arrowLength: 0.72, distances: [18, 30, 50], setFor: 30 }).value.table.length // 3
 */
export function aimPlan(input: AimInput): Result<AimPlan> {
  const checked = checkAim(input);
  if (!checked.ok) return checked;
  const { speed, mass, diameter, airDensity, eyeHeight, arrowLength, distances, setFor } = input;
  const { targetDrop = 0, pointLength = pointBeyondShaft } = input;
  const drag = input.drag ?? dragBand(diameter, mass, airDensity);
  const launches = launchBand(speed, drag, eyeHeight, targetDrop);
  const tipForward = arrowLength + pointLength;
  const farthest = 1.1 * Math.max(setFor, ...distances);

  const sights = atCorners(launches, (launch) => setSight(launch, setFor, farthest));
  if (!sights.ok) return sights;
  const table = dropTable(sights.value, distances);
  if (!table.ok) return table;
  const pointOn = atCorners(launches, (launch) => pointOnDistance(launch, tipForward));
  return ok({
    setFor,
    drag,
    elevation: bandOver(sights.value, (sight) => sight.elevation),
    apex: apexOf(sights.value),
    table: table.value,
    pointOn: pointOn.ok ? ok(bandOver(pointOn.value, (distance) => distance)) : pointOn,
  });
}

function apexOf(sights: Corners<SetSight>): AimPlan['apex'] {
  const topOf = (sight: SetSight) => {
    const heightAt = (x: number) => sight.heightOverLine(x) ?? -Infinity;
    const x = peak(heightAt, 0, sight.setFor, 1e-3);
    return { x, height: heightAt(x) };
  };
  const tops = { value: topOf(sights.value), corners: sights.corners.map(topOf) };
  return { x: bandOver(tops, (top) => top.x), height: bandOver(tops, (top) => top.height) };
}
