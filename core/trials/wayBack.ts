import type { Bundle } from '../model/bundle.ts';
import { outwardSide, type Side } from './outward.ts';

/**
 * The way in which the bare shafts should move when a stiff or weak reading is mended.
 *
 * @equation stiff: inward, weak: outward
 * @param bundle - the set-up with its records [record]
 * @param lateral - the reading [choice]
 * @returns left or right as the archer sees it [choice]
 * @validity finger release
 * @source common practice
 * @example wayBack(exampleBundle, 'weak') // "left"
 */
export function wayBack(bundle: Bundle, lateral: 'stiff' | 'weak'): Side {
  const outward = outwardSide(bundle.archer.hand);
  return lateral === 'weak' ? outward : outward === 'left' ? 'right' : 'left';
}
