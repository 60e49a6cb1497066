import { median } from './row.ts';

/** Does its work so many times and hands back something that depends on it, so that none of it can be left out. */
export type Contestant = (times: number) => unknown;

const WARM_UP_MS = 200;
/**
 * A function is compiled for speed once it has run some hundreds of times. Without as many runs, what takes milliseconds is timed while
 * the compiler is still at it, and its threads' time with it: one edit of a set-up then read three times what it takes. How long the
 * first edits take a person is told by frames.mjs.
 */
const WARM_UP_RUNS = 500;
const MOST_WARM_UP_MS = 2000;
const BATCH_MS = 5;
const ROUNDS = 31;

/** Where results end, so that the compiler must make them. */
export const sink: { last: unknown } = { last: null };

/**
 * Median seconds of processor time for one run of each contestant. Every round runs each of them once, in an order that turns from round
 * to round, so that a slow moment of the machine falls on all of them.
 */
export function medians<K extends string>(contestants: Readonly<Record<K, Contestant>>): Record<K, number> {
  const names = Object.keys(contestants) as K[];
  const batches = new Map(names.map((name) => [name, batchOf(contestants[name])]));
  const seconds = new Map(names.map((name) => [name, [] as number[]]));
  for (let round = 0; round < ROUNDS; round++)
    for (let turn = 0; turn < names.length; turn++) {
      const name = names[(round + turn) % names.length] as K;
      const times = batches.get(name) ?? 1;
      seconds.get(name)?.push(processorMs(contestants[name], times) / times / 1000);
    }
  return Object.fromEntries(names.map((name) => [name, median(seconds.get(name) ?? [])])) as Record<K, number>;
}

/** The processor's time, the collector's included, and not the wall's: whatever else the machine is doing then does not count. */
function processorMs(contestant: Contestant, times: number): number {
  const began = process.cpuUsage();
  sink.last = contestant(times);
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1000;
}

/** Warms up, and finds how many runs fill a batch that the clock can tell. */
function batchOf(contestant: Contestant): number {
  let [times, took, spent, runs] = [1, 0, 0, 0];
  const cold = () => spent < WARM_UP_MS || (runs < WARM_UP_RUNS && spent < MOST_WARM_UP_MS);
  while (cold() || took < BATCH_MS / 2) {
    took = processorMs(contestant, times);
    spent += took;
    runs += times;
    if (took < BATCH_MS) times = Math.max(times + 1, Math.min(10 * times, Math.ceil((times * BATCH_MS) / Math.max(took, 0.01))));
  }
  return Math.max(1, Math.round((times * BATCH_MS) / took));
}
