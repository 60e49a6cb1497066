import type { Bundle } from '../model/bundle.ts';
import { stringFibreCheck } from '../safety/index.ts';
import type { Finding } from './finding.ts';
import { goTo, whyRule } from './parts.ts';

const words = {
  stop: [
    'on a bow not made for it',
    'The maker does not allow low-stretch fibre: it can break the bow. Shoot nothing from it with this string.',
  ],
  caution: [
    'does its maker allow it?',
    'All-wood and old bows want polyester: a low-stretch string can break them. Ask the maker before it is shot.',
  ],
  unknown: ['not known whether allowed', 'Note whether the bow\u2019s maker allows low-stretch fibre. Old bows want polyester.'],
  'in range': ['', ''],
} as const;

/**
 * The fibre of the string against what the bow's maker allows.
 *
 * @equation as stringFibreCheck of the safety room
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null for a compound, while the fibre is not on record, and where nothing is wrong with it [record]
 * @validity as stringFibreCheck
 * @source common practice
 * @example stringFibreFinding(exampleBundle) // null
 */
export function stringFibreFinding({ bow, setup }: Bundle): Finding | null {
  const { stringMaterial } = setup.settings;
  const level = stringFibreCheck(bow, setup.settings);
  if (level === 'in range' || stringMaterial === null || stringMaterial === 'other') return null;
  if (bow.bowKind === 'compound' && level !== 'stop') return null;
  const [title, detail] = words[level];
  return {
    id: 'stringFibre',
    level,
    title: `${stringMaterial} string${level === 'stop' ? ' ' : ': '}${title}`,
    detail,
    rule: null,
    short: { figure: stringMaterial.split(' ')[0] ?? stringMaterial, word: 'fibre' },
    why: whyRule(
      'Low-stretch string',
      'Fibres that hardly stretch stop the limbs with a jerk. Bows with reinforced tips are made for that; old and all-wood bows are not, and polyester is kind to them. The bow\u2019s maker says which may be used.',
      [
        ['', 'fibre', stringMaterial],
        ['', 'the bow\u2019s maker', bow.lowStretch ?? 'not on record'],
      ],
      bow.lowStretch === null ? 'common practice' : 'the bow maker\u2019s figures, as entered',
    ),
    action: level === 'stop' ? goTo('Fix', 'bow', 'settings.stringMaterial') : goTo('Enter', 'bow', 'bow.lowStretch'),
  };
}
