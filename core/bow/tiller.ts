import type { Settings } from '../model/index.ts';

/**
 * The tiller of a set-up: from the two distances when both were measured, else as it was read alone.
 *
 * @equation t = upper − lower when both are there, else t as noted
 * @param settings - tillerUpper and tillerLower, limb to string [m], and tiller [m] [record]
 * @returns t, top less bottom; null when nobody measured it [m]
 * @validity both distances read at equal distances from the ends of the riser; where both ways are on record the two distances govern
 * @source common practice
 * @example tillerOf({ tiller: 0.004, tillerUpper: 0.125, tillerLower: 0.125 }) // 0
 */
export function tillerOf(settings: Pick<Settings, 'tiller' | 'tillerUpper' | 'tillerLower'>): number | null {
  const { tiller, tillerUpper, tillerLower } = settings;
  return tillerUpper !== null && tillerLower !== null ? tillerUpper - tillerLower : tiller;
}

/**
 * What to note when the tiller is set anew: the two distances of before no longer hold.
 *
 * @equation tiller = t, both distances blank
 * @param tiller - t, top less bottom; null to forget it [m]
 * @returns the change of the settings [record]
 * @validity any tiller
 * @source own derivation
 * @example withTiller(0.003) // {"tiller":0.003,"tillerUpper":null,"tillerLower":null}
 */
export function withTiller(tiller: number | null): Pick<Settings, 'tiller' | 'tillerUpper' | 'tillerLower'> {
  return { tiller, tillerUpper: null, tillerLower: null };
}
