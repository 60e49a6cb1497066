import type { ArrowLookOver, ArrowSet, NumberedArrow } from '../model/index.ts';

const parts = ['nock', 'shaft', 'point', 'fletching'] as const satisfies readonly (keyof ArrowLookOver)[];

/** The numbers of a set that may not be shot, and those of which nobody knows. */
export interface ArrowsCondition {
  /** With a flaw that somebody saw, and not set aside. */
  readonly flawed: readonly number[];
  /** Not set aside, and never looked over, or with a part that was not looked at. */
  readonly unseen: readonly number[];
  /** How many are shot: those that are not set aside. */
  readonly shooting: number;
}

const has = (arrow: NumberedArrow, condition: 'flaw' | 'not looked at'): boolean =>
  arrow.lookOver !== null && parts.some((part) => arrow.lookOver?.[part] === condition);

/**
 * Which arrows of a numbered set have a flaw and are still among those that are shot.
 *
 * @equation flawed: any part with a flaw and not set aside; unseen: no look-over on record or a part not looked at, and not set aside
 * @param arrowSet - the numbered arrows [record]
 * @returns the numbers, lowest first, and how many are shot [record]
 * @validity an arrow with a flaw is a stop until it is set aside: a cracked nock or shaft can break into the hand
 * @source common practice
 * @example arrowsCondition({ arrows: [] }) // {"flawed":[],"unseen":[],"shooting":0}
 */
export function arrowsCondition({ arrows }: Pick<ArrowSet, 'arrows'>): ArrowsCondition {
  const shot = arrows.filter(({ setAside }) => !setAside);
  const numbers = (wanted: (arrow: NumberedArrow) => boolean) =>
    shot
      .filter(wanted)
      .map(({ number }) => number)
      .sort((a, b) => a - b);
  return {
    flawed: numbers((arrow) => has(arrow, 'flaw')),
    unseen: numbers((arrow) => arrow.lookOver === null || arrow.lookedOver === null || has(arrow, 'not looked at')),
    shooting: shot.length,
  };
}
