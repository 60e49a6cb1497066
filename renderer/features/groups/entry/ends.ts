import type { Shot } from '../../../../core/model/group.ts';

/** What the person said of the ends of a group that is being entered; the shots themselves say the rest. */
export interface EndsBegun {
  /** The end that was begun and has no shot yet; null when the latest with shots is still in hand. */
  readonly begun: number | null;
  /** How many arrows make an end, where somebody noted it. */
  readonly size: number | null;
  /** The end that a trial's sheet has in hand: shots go into no other. */
  readonly pinned?: number | null;
}

const MOST_ENDS = 9999;
const MOST_ARROWS = 999;

/** The shots of one end, in the order in which they were set; null for those whose end nobody noted. */
const inEnd = (shots: readonly Shot[], end: number | null): readonly Shot[] => shots.filter((shot) => shot.end === end);

/** The end in hand: the one just begun, else the latest; the first of a group without shots; null where shots stand and nobody noted their ends. */
export function endInHand(shots: readonly Shot[], { begun, pinned = null }: EndsBegun): number | null {
  if (pinned !== null) return pinned;
  const latest = shots.reduce((most, { end }) => Math.max(most, end ?? 0), 0);
  if (begun !== null && begun > latest) return begun;
  return latest > 0 ? latest : shots.length === 0 ? 1 : null;
}

/** The end that the next shot goes into: a full end begins the next by itself. */
export function endOfNext(shots: readonly Shot[], ends: EndsBegun): number | null {
  const end = endInHand(shots, ends);
  const full = (ends.pinned ?? null) === null && ends.size !== null && end !== null && inEnd(shots, end).length >= ends.size;
  return full ? Math.min(MOST_ENDS, end + 1) : end;
}

/** The end that is begun by asking for one; null when the one in hand is still empty. */
export function newEnd(shots: readonly Shot[], ends: EndsBegun): number | null {
  const end = endInHand(shots, ends);
  return inEnd(shots, end).length === 0 || end === MOST_ENDS ? null : (end ?? 0) + 1;
}

/**
 * The number that the next arrow carries, where somebody numbers them; null else, as an order of shooting is no arrow's number. It counts on
 * from the shot before in the same end, past the numbers which that end has; another end begins again at the lowest of the group. A last shot
 * without a number ends the counting.
 */
export function nextArrow(shots: readonly Shot[], end: number | null): number | null {
  const own = inEnd(shots, end);
  const before = (own.length === 0 ? shots : own).at(-1)?.arrow ?? null;
  if (before === null) return null;
  if (own.length === 0) return shots.reduce((least, { arrow }) => Math.min(least, arrow ?? MOST_ARROWS), before);
  const used = new Set(own.map(({ arrow }) => arrow));
  let next = before + 1;
  while (used.has(next)) next += 1;
  return next > MOST_ARROWS ? null : next;
}

/** What the next shot will be: "arrow 4 next", or "shot 4 next" where nobody numbers them. */
export function nextText(shots: readonly Shot[], end: number | null): string {
  const arrow = nextArrow(shots, end);
  return arrow === null ? `shot ${inEnd(shots, end).length + 1} next` : `arrow ${arrow} next`;
}

/** "end 2, 3 of 6"; what is said where nobody noted ends. */
export function endText(shots: readonly Shot[], ends: EndsBegun): string {
  const end = endInHand(shots, ends);
  if (end === null) return 'ends not noted';
  const count = inEnd(shots, end).length;
  return ends.size === null ? `end ${end}, ${count} ${count === 1 ? 'shot' : 'shots'}` : `end ${end}, ${count} of ${ends.size}`;
}

/** "arrow 3 of end 2", as it is spoken of; without a number by its order: "shot 3 of end 2". */
export function shotName({ id, arrow, end }: Pick<Shot, 'id' | 'arrow' | 'end'>, shots: readonly Shot[]): string {
  const order = () => inEnd(shots, end).findIndex((shot) => shot.id === id) + 1;
  return `${arrow === null ? `shot ${order()}` : `arrow ${arrow}`}${end === null ? '' : ` of end ${end}`}`;
}
