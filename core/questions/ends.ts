import type { EndPair, EndShot } from '../group/index.ts';
import type { Shot } from '../model/group.ts';

/** More looks than this, and looks at more shots than this in all, cost time and tell no more: ends are then taken together. */
const MOST_LOOKS = 60;
const MOST_LOOKED_AT = 15_000;

/**
 * The shots end by end.
 *
 * @equation ends in the order of their numbers; shots whose end nobody noted are left aside
 * @param shots - the shots that count [list]
 * @returns number and shots of each end [list]
 * @validity any shots
 * @source own derivation
 * @example endsOf(exampleFletched.shots) // []
 */
export function endsOf(shots: readonly Shot[]): readonly { readonly end: number; readonly shots: readonly Shot[] }[] {
  const ends = new Map<number, Shot[]>();
  for (const shot of shots) {
    if (shot.end === null) continue;
    const known = ends.get(shot.end);
    if (known === undefined) ends.set(shot.end, [shot]);
    else known.push(shot);
  }
  return [...ends].sort(([a], [b]) => a - b).map(([end, list]) => ({ end, shots: list }));
}

/**
 * The shots of numbered arrows whose end is known.
 *
 * @equation shots with an end
 * @param shots - the shots that count [list]
 * @returns the shots, the arrow's number null where none was noted [list]
 * @validity any shots
 * @source own derivation
 * @example endShots(exampleFletched.shots) // []
 */
export function endShots(shots: readonly Shot[]): readonly EndShot[] {
  return shots.flatMap(({ x, y, arrow, end }): EndShot[] => (end === null ? [] : [{ x, y, arrow, end }]));
}

/**
 * How many ends are taken together into one look.
 *
 * @equation so many that there are at most 60 looks, and at most 15 000 shots looked at in all
 * @param ends - ends of both groups by their numbers [-]
 * @param shots - shots of both groups [-]
 * @returns ends to a look, 1 or more for one end or more [-]
 * @validity whole numbers above nought
 * @source own derivation
 * @example endsTogether(240, 1440) // 24
 */
export function endsTogether(ends: number, shots: number): number {
  return Math.ceil(ends / Math.max(1, Math.min(MOST_LOOKS, Math.floor(MOST_LOOKED_AT / shots))));
}

/**
 * Two groups end by end, for a verdict that may be looked at after every end.
 *
 * @equation ends of one number stand together; one that only one group has is taken into the next that both have, the last ones into the pair before; without ends all shots are one look; at most 60 looks, fewer for thousands of shots
 * @param reference - shots of the one group [list]
 * @param moved - shots of the other group [list]
 * @returns the pairs in order [list]
 * @validity any shots; a group without shots gives one pair with an empty side
 * @source own derivation
 * @example endPairs(exampleFletched.shots, exampleBare.shots).length // 1
 */
export function endPairs(reference: readonly Shot[], moved: readonly Shot[]): readonly EndPair[] {
  if ([...reference, ...moved].some(({ end }) => end === null)) return [{ reference, moved }];
  const sides = [endsOf(reference), endsOf(moved)] as const;
  const numbers = [...new Set(sides.flatMap((side) => side.map(({ end }) => end)))].sort((a, b) => a - b);
  const byEnd = sides.map((side) => new Map(side.map(({ end, shots }) => [end, shots])));
  const together = endsTogether(numbers.length, reference.length + moved.length);
  const none = (): { reference: Shot[]; moved: Shot[]; ends: number } => ({ reference: [], moved: [], ends: 0 });
  const pairs: EndPair[] = [];
  let open = none();
  for (const number of numbers) {
    // One by one: laid together anew at every end, thousands of ends would be millions of shots.
    for (const shot of byEnd[0]?.get(number) ?? []) open.reference.push(shot);
    for (const shot of byEnd[1]?.get(number) ?? []) open.moved.push(shot);
    open.ends += 1;
    if (open.reference.length === 0 || open.moved.length === 0 || open.ends < together) continue;
    pairs.push({ reference: open.reference, moved: open.moved });
    open = none();
  }
  const last = pairs.pop();
  if (last === undefined) return [{ reference, moved }];
  return [...pairs, { reference: last.reference.concat(open.reference), moved: last.moved.concat(open.moved) }];
}
