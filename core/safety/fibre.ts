import { fibreOf } from '../bow/limbs/fibres.ts';
import type { Bow, Settings } from '../model/index.ts';
import type { SafetyLevel } from './level.ts';

/** Bows of wood alone, mostly: their makers seldom mean them for a string that hardly stretches. */
const allWood: readonly Bow['bowKind'][] = ['longbow', 'self bow'];

/**
 * Whether the string's fibre is one that the bow's maker allows: a low-stretch string can break a bow that is not made for it.
 *
 * @equation low-stretch fibre: stop where the maker does not allow it; where nobody has asked, caution on a longbow or self bow, else unknown; other fibres in range
 * @param bow - bowKind and lowStretch [record]
 * @param settings - stringMaterial [record]
 * @returns in range, caution, stop or unknown [choice]
 * @validity unknown while the fibre is not on record, or is none that the list names
 * @source common practice
 * @example stringFibreCheck({ bowKind: 'longbow', lowStretch: 'not allowed' }, { stringMaterial: 'HMPE' }) // "stop"
 */
export function stringFibreCheck(
  bow: Pick<Bow, 'bowKind' | 'lowStretch'>,
  { stringMaterial }: Pick<Settings, 'stringMaterial'>,
): SafetyLevel {
  const fibre = stringMaterial === null ? null : fibreOf(stringMaterial);
  if (fibre === null) return 'unknown';
  if (!fibre.lowStretch || bow.lowStretch === 'allowed') return 'in range';
  if (bow.lowStretch === 'not allowed') return 'stop';
  return allWood.includes(bow.bowKind) ? 'caution' : 'unknown';
}
