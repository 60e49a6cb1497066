import { unmeasured } from '../../core/model/unmeasured.ts';
import type { Point } from '../../core/group/index.ts';
import type { Shot, ShotGroup } from '../../core/model/index.ts';
import { exampleFletched } from '../../core/model/index.ts';
import { idFor, normalPair, randomFrom } from '../../fixtures/random.ts';

/** Seeded shots about a place, 40 mm of spread on each axis. */
export function pointsOf(count: number, seed: number, x = 0, y = 0): Point[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const [across, up] = normalPair(random);
    return { x: x + 0.04 * across, y: y + 0.04 * up };
  });
}

/** A group record with that many seeded shots, places kept to the tenth of a millimetre as a click on the face keeps them. */
export function groupOf(count: number, seed: number): ShotGroup {
  const places = pointsOf(count, seed);
  const tenth = (metres: number) => Math.round(metres * 1e4) / 1e4;
  const shots: Shot[] = places.map(({ x, y }, id) => ({
    ...unmeasured.shot,
    id,
    x: tenth(x),
    y: tenth(y),
    arrow: (id % 12) + 1,
  }));
  return { ...exampleFletched, id: idFor(`bench group ${count} ${seed}`), shots };
}
