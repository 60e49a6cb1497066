import { ok, type Bundle, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { estimatedSpeed } from './speed.ts';
import { strokeOf } from './stroke.ts';
import { drawWeight } from './weight.ts';

/** Speed of an arrow of any mass from this bow, and what it rests on. */
export interface MassSpeed extends Band {
  readonly from: 'chronograph' | 'fitted' | 'estimated';
}

/**
 * Speed at which an arrow of any mass leaves this bow.
 *
 * @equation (m + K) v² / 2 = η E
 * @param bundle - the set-up with its records [record]
 * @param mass - m, arrow [kg]
 * @returns v, value with low and high [m/s], and what it rests on [record]
 * @validity as estimatedSpeed
 * @source klopsteg-1943
 * @example speedFor(exampleBundle, 0.02).value.from // "estimated"
 */
export function speedFor(bundle: Bundle, mass: number): Result<MassSpeed> {
  const { bow, archer, setup } = bundle;
  const weight = drawWeight(bow, archer, setup.settings);
  if (!weight.ok) return weight;
  const stroke = strokeOf(bow, archer, setup.settings);
  if (!stroke.ok) return stroke;
  const speed = estimatedSpeed(bow.bowKind, weight.value, stroke.value.stroke, mass);
  return speed.ok ? ok({ ...speed.value, from: 'estimated' }) : speed;
}
