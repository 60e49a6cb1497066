import type { Point } from '../../core/group/index.ts';

/** Beyond this many shots each is a dot of one path; the page stays quick [count]. */
export const MOST_DRAWN = 600;

/** Every place as a dot of one path: a stroke without length, round where the stylesheet caps it so. */
export const dotsPath = (places: readonly Point[]): string =>
  places.map(({ x, y }) => `M${x.toFixed(1)} ${y.toFixed(1)}h0`).join('');
