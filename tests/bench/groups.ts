import { groupMeasures, shiftOfGroups, type Point } from '../../core/group/index.ts';
import { timed, type Row } from './row.ts';
import { pointsOf } from './shots.ts';
import { medians } from './timing.ts';

const SIZES = [10, 100, 1_000, 10_000, 100_000] as const;

/** What cannot be done with less: one pass over the places that adds them up. */
function bareSum(points: readonly Point[]): number {
  let [x, y] = [0, 0];
  for (const point of points) {
    x += point.x;
    y += point.y;
  }
  return x + y;
}

/** The figures of a group beside the bare sum of its places; several groups take turns, so that none is learnt by heart. */
function measures(size: number): Row {
  const groups = Array.from({ length: size > 1000 ? 2 : 8 }, (_, seed) => pointsOf(size, seed + 1));
  const turn = (index: number) => groups[index % groups.length] as Point[];
  const { figures, sum } = medians({
    figures: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) {
        const found = groupMeasures(turn(i));
        if (found.ok) last += found.value.meanRadius;
      }
      return last;
    },
    sum: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += bareSum(turn(i));
      return last;
    },
  });
  return timed(`group.measures.${size}`, figures, sum);
}

/** Eight pairs of groups whose centres are so many spreads apart. */
function pairs(count: number, spreadsApart: number) {
  return Array.from({ length: 8 }, (_, seed) => ({
    first: pointsOf(count, 2 * seed + 1),
    second: pointsOf(count, 2 * seed + 2, 0.04 * spreadsApart),
  }));
}

/** A plain shift is told at once; one that cannot be told yet also costs the count of arrows still needed. */
function shift(count: number): Row[] {
  const [clear, unclear] = [pairs(count, 5), pairs(count, 0.5)];
  const run = (made: ReturnType<typeof pairs>) => (times: number) => {
    let last = 0;
    for (let i = 0; i < times; i++) {
      const { first, second } = made[i % made.length] as (typeof made)[number];
      const found = shiftOfGroups(first, second);
      if (found.ok) last += found.value.radius;
    }
    return last;
  };
  const { real, cannotTell, sum } = medians({
    real: run(clear),
    cannotTell: run(unclear),
    sum: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) {
        const { first, second } = clear[i % clear.length] as (typeof clear)[number];
        last += bareSum(first) + bareSum(second);
      }
      return last;
    },
  });
  return [
    timed(`group.shift.${count}+${count}.real`, real, sum),
    timed(`group.shift.${count}+${count}.cannot-tell`, cannotTell, sum),
  ];
}

export const groupRows = (): Row[] => [...SIZES.map(measures), ...shift(6), ...shift(12)];
