import { arrowMass } from '../../arrow/index.ts';
import { AMO_ADDS, speedFor } from '../../bow/index.ts';
import type { Band } from '../../model/band.ts';
import type { Bundle } from '../../model/bundle.ts';
import { ok, type Result } from '../../model/problem.ts';

/** Two readings of a chronograph, each to 1 % [-]: from memory. */
const MEASURED_AGAIN = Math.SQRT2 * 0.01;
/** What no figure tells, 95 % [-]: another string, a turn of a limb bolt, another hook, cover or grip of the nock. From memory. */
const STRING = 0.02;
const BOLT_TURN = 0.025;
const HAND = 0.01;
/** A draw, a brace height and a virtual mass that nobody measured [m], [kg]: from memory. */
const usualDraw = 0.71;
const usualBrace = 0.21;
const usualVirtualMass = 0.006;
/** Arrows nearer than this are one and the same [kg]. */
const SAME_MASS = 3e-5;

/** Then and now, each filled with the other where it is blank, and the keys of what changed. */
export interface Since {
  readonly then: Bundle;
  readonly now: Bundle;
  readonly changed: ReadonlySet<string>;
}

const parts = ['pointMass', 'insertMass', 'nockMass', 'fletchingMass', 'pinMass', 'wrapMass'] as const;

function partsOf({ arrowSet }: Bundle): number {
  const shaft = (arrowSet.linearDensity ?? 0) * (arrowSet.length ?? 0);
  return parts.reduce((sum, part) => sum + (arrowSet[part] ?? 0), shaft);
}

/**
 * What the arrow weighed and weighs.
 *
 * @equation arrowMass of both; where parts changed and the whole was not weighed again, the old mass and what the parts differ by
 * @param since - then, now and what changed [record]
 * @returns both masses [kg], or the refusal that says what is missing [record]
 * @validity as arrowMass
 * @source own derivation
 * @example massesSince({ then: exampleBundle, now: exampleBundle, changed: new Set() }).value.then.toFixed(4) // "0.0211"
 */
export function massesSince({ then, now, changed }: Since): Result<{ readonly then: number; readonly now: number }> {
  const [before, after] = [arrowMass(then.arrowSet), arrowMass(now.arrowSet)];
  if (!before.ok) return before;
  if (!after.ok) return after;
  const stale =
    after.value.from === 'weighed' && !['arrowSet.weighed', 'arrowSet.mass', 'arrowSet.id'].some((key) => changed.has(key));
  const own = before.value.mass;
  return ok({ then: own, now: stale ? Math.max(own / 2, own + partsOf(now) - partsOf(then)) : after.value.mass });
}

/** The speed of one arrow as the bow's figures give it, whatever was measured. */
function byFigures({ archer, bow, arrowSet, setup }: Bundle, mass: number): number | null {
  const untimed = { ...setup, settings: { ...setup.settings, arrowSpeed: null }, chronograph: [] };
  const speed = speedFor({ archer, bow, arrowSet, setup: untimed }, mass);
  return speed.ok ? speed.value.value : null;
}

/** √(weight × power stroke): the energy of a bow that draws in a straight line. */
function byStroke({ archer, setup: { settings } }: Bundle): number {
  const stroke = (archer.drawLength ?? usualDraw) - AMO_ADDS - (settings.braceHeight ?? usualBrace);
  return Math.sqrt((settings.weightOnFingers ?? 1) * Math.max(0.1, stroke));
}

function drawRatio({ then, now, changed }: Since, mass: number): number {
  if (!['archer.drawLength', 'settings.braceHeight', 'settings.weightOnFingers'].some((key) => changed.has(key))) return 1;
  const [before, after] = [byFigures(then, mass), byFigures(now, mass)];
  return before !== null && after !== null ? after / before : byStroke(now) / byStroke(then);
}

function massRatio({ then }: Since, from: number, to: number): number {
  if (Math.abs(to - from) < SAME_MASS) return 1;
  const [before, after] = [speedFor(then, from), speedFor(then, to)];
  if (before.ok && after.ok) return after.value.value / before.value.value;
  return Math.sqrt((from + usualVirtualMass) / (to + usualVirtualMass));
}

const isString = (key: string): boolean =>
  ['stringFitted', 'stringMaterial', 'strands', 'stringLength', 'stringMass', 'twists'].includes(key.replace('settings.', ''));

/** Turns of the bolts that no weight read since tells of. */
function unreadTurns({ then, now, changed }: Since): number {
  if (changed.has('settings.weightOnFingers')) return 0;
  const turned = (bolt: 'upperBolt' | 'lowerBolt') =>
    Math.abs((now.setup.settings[bolt] ?? 0) - (then.setup.settings[bolt] ?? 0));
  return (turned('upperBolt') + turned('lowerBolt')) / 2;
}

/**
 * How much faster or slower the arrow leaves than when a mark was shot in.
 *
 * @equation v'/v ± 1.4 % where both were measured; else of speedFor by mass, times that by draw, brace height and weight, each ± half of what it differs from 1 by; with ± 2 % for a string, 2.5 % for a turn of both bolts, 1 % for hook, cover or nock, in quadrature
 * @param since - then, now and what changed [record]
 * @param masses - of the arrow then and now [record]
 * @returns the ratio with its 95 % band; exactly 1 when nothing bears on it [record]
 * @validity the bow is the same one; a speed that was measured before the change says nothing of it
 * @source klopsteg-1943; from memory
 * @example speedChange({ then: exampleBundle, now: exampleBundle, changed: new Set() }, { then: 0.021, now: 0.021 }) // {"value":1,"low":1,"high":1}
 */
export function speedChange(since: Since, masses: { readonly then: number; readonly now: number }): Band {
  const { then, now, changed } = since;
  const [before, after] = [then.setup.settings.arrowSpeed, now.setup.settings.arrowSpeed];
  if (changed.has('settings.arrowSpeed') && before !== null && after !== null) {
    const ratio = after / before;
    return { value: ratio, low: ratio * (1 - MEASURED_AGAIN), high: ratio * (1 + MEASURED_AGAIN) };
  }
  const [byMass, byDraw] = [massRatio(since, masses.then, masses.now), drawRatio(since, masses.then)];
  const value = byMass * byDraw;
  const string = [...changed].some(isString) ? STRING : 0;
  const hand = ['form.hook', 'form.fingerCover', 'settings.nockFit'].some((key) => changed.has(key)) ? HAND : 0;
  const doubts = [(byMass - 1) / 2, (byDraw - 1) / 2, string, hand, BOLT_TURN * unreadTurns(since)];
  const by = Math.min(0.5, Math.hypot(...doubts));
  return { value, low: value * (1 - by), high: value * (1 + by) };
}
