import tQuantile from '@stdlib/stats-base-dists-t-quantile';
import type { BenchRecord, ShotGroup, Stamp } from '../../core/model/index.ts';
import { demoRecords, plantedTruths } from '../../fixtures/demo/index.ts';

export const now: Stamp = { at: '2026-06-20T17:45:00.000Z', offsetMinutes: 60 };
export const records = demoRecords(now);

export const of = <K extends BenchRecord['kind']>(kind: K, from = records) =>
  from.filter((record): record is Extract<BenchRecord, { kind: K }> => record.kind === kind);
export const group = (id: string, from = records): ShotGroup => {
  const found = of('group', from).find((one) => one.id === id);
  if (found === undefined) throw new Error(`no group ${id}`);
  return found;
};

/** Computed independently of core: means and variances by the schoolbook formulas. */
export function summary({ shots }: ShotGroup) {
  const n = shots.length;
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / n;
  const [x, y] = [mean(shots.map((shot) => shot.x)), mean(shots.map((shot) => shot.y))];
  const variance = (values: number[], middle: number) => values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (n - 1);
  const [vx, vy] = [
    variance(
      shots.map((shot) => shot.x),
      x,
    ),
    variance(
      shots.map((shot) => shot.y),
      y,
    ),
  ];
  const meanRadius = mean(shots.map((shot) => Math.hypot(shot.x - x, shot.y - y)));
  return { n, x, y, vx, vy, meanRadius };
}

/** Circular Welch, whose upper tail has a closed form (statistics of shot groups, computed independently), and Welch's t on each axis. */
export function shiftBetween(a: ShotGroup, b: ShotGroup) {
  const [p, q] = [summary(a), summary(b)];
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const [v1, v2] = [(p.vx + p.vy) / 2 / p.n, (q.vx + q.vy) / 2 / q.n];
  const nu = (v1 + v2) ** 2 / (v1 ** 2 / (2 * (p.n - 1)) + v2 ** 2 / (2 * (q.n - 1)));
  const f = (dx ** 2 + dy ** 2) / (2 * (v1 + v2));
  const axis = (d: number, va: number, vb: number) => {
    const [wa, wb] = [va / p.n, vb / q.n];
    const df = (wa + wb) ** 2 / (wa ** 2 / (p.n - 1) + wb ** 2 / (q.n - 1));
    return Math.abs(d) > tQuantile(0.975, df) * Math.sqrt(wa + wb);
  };
  return { dx, dy, real: (1 + (2 * f) / nu) ** (-nu / 2) < 0.05, realX: axis(dx, p.vx, q.vx), realY: axis(dy, p.vy, q.vy) };
}

export const pairs = plantedTruths.readings.filter((reading) => reading.fletchedId !== null);
