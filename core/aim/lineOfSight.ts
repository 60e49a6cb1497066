import { type Flight, launchElevation, trajectory } from '../flight/index.ts';
import { ok, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';

/** A sight that has been set for a distance: the flight that follows, seen from the eye. */
export interface SetSight {
  readonly setFor: number;
  /** Launch angle above the horizontal [rad]. */
  readonly elevation: number;
  /** From where the arrow leaves, not from the eye. */
  readonly flight: Flight;
  /** Where the arrow leaves, from the eye [m]. */
  readonly start: { readonly x: number; readonly y: number };
  /** The arrow above the line of sight at a distance from the eye [m]; null past the end of the flight. */
  readonly heightOverLine: (x: number) => number | null;
}

/**
 * Set the sight for a distance: the flight that passes through the line of sight there.
 *
 * @equation (R, −d) lies on the flight from (e sin θ, −e cos θ); line of sight y = −d x / R
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param distance - R, where arrow and line of sight meet [m]
 * @param farthest - how far the flight is wanted [m]
 * @returns the flight and its height over the line, or a refusal when R is out of reach [record]
 * @validity level ground, still air; before it leaves, the arrow is taken along its axis
 * @source own derivation
 * @example Math.abs(setSight({ speed: 57, k: 0.001, eyeHeight: 0.12 }, 30, 30).value.heightOverLine(30)) < 1e-6 // true
 */
export function setSight(launch: Launch, distance: number, farthest: number): Result<SetSight> {
  const { speed, k, eyeHeight, targetDrop = 0 } = launch;
  const found = launchElevation({ speed, k, eyeHeight, x: distance, y: -targetDrop });
  if (!found.ok) return found;
  const elevation = found.value;
  const start = { x: eyeHeight * Math.sin(elevation), y: -eyeHeight * Math.cos(elevation) };
  const flight = trajectory({ speed, elevation, k, until: { x: Math.max(distance, farthest) - Math.min(0, start.x) } });
  const heightOverLine = (x: number) => {
    const ahead = x - start.x;
    const flown = ahead < 0 ? ahead * Math.tan(elevation) : flight.at(ahead)?.y;
    return flown === undefined ? null : start.y + flown + (targetDrop * x) / distance;
  };
  return ok({ setFor: distance, elevation, flight, start, heightOverLine });
}

/**
 * How far below the eye the sight's pin stands for a distance.
 *
 * @equation q = r tan δ,  δ = θ + atan(d / R), the angle between the line of sight and the arrow's axis
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param sightRadius - r, from the eye to the pin along the arrow [m]
 * @param distance - R [m]
 * @returns q, below the line through the eye along the arrow, or a refusal when R is out of reach [m]
 * @validity level ground, still air; the arrow leaves along its own axis
 * @source own derivation
 * @example sightDrop({ speed: 57, k: 0, eyeHeight: 0 }, 1, 18).value.toFixed(4) // "0.0272"
 */
export function sightDrop(launch: Launch, sightRadius: number, distance: number): Result<number> {
  const { speed, k, eyeHeight, targetDrop = 0 } = launch;
  const found = launchElevation({ speed, k, eyeHeight, x: distance, y: -targetDrop });
  return found.ok ? ok(sightRadius * Math.tan(found.value + Math.atan2(targetDrop, distance))) : found;
}
