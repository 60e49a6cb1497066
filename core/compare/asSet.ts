import { tillerOf } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import { arrowFields, settingFields, type Field } from './fields.ts';
import { halfOf, type DoubtedFigure, type Section } from './figure.ts';

/** One figure as it is on record, of what, and what has to be said with it. */
type OnRecord = readonly [section: Section, owner: string, field: Field, value: number | null, note: string];

const named = <K extends string>(fields: readonly Field<K>[], key: K): Field => {
  const field = fields.find((one) => one.key === key);
  if (field === undefined) throw new RangeError(`No field ${key}.`);
  return field;
};

function onRecord({ bow, arrowSet, setup }: Bundle): readonly OnRecord[] {
  const { settings } = setup;
  const set = (
    key: 'braceHeight' | 'tiller' | 'strands' | 'stringLength' | 'stringMass',
    value: number | null,
    note = '',
  ): OnRecord => ['On the bow', bow.id, named(settingFields, key), value, note];
  return [
    ['Build', arrowSet.id, named(arrowFields, 'diameter'), arrowSet.diameter, ''],
    ['Build', arrowSet.id, named(arrowFields, 'wall'), arrowSet.wall, 'of the tube'],
    set('braceHeight', settings.braceHeight),
    set('tiller', tillerOf(settings)),
    set('strands', settings.strands, settings.stringMaterial ?? 'material not noted'),
    set('stringLength', settings.stringLength),
    set('stringMass', settings.stringMass),
  ];
}

/**
 * What was set or measured on a set-up and not worked out, beside another one: the tube of the shaft, brace height, tiller and string.
 *
 * @equation each figure that either has on record, in doubt by what can be read again
 * @param bundle - the set-up with its records [record]
 * @param beside - the set-up that it is compared with [record]
 * @returns the figures of the first with their doubts, the same ones in the same order when the two change places [list]
 * @validity a figure that only the other has is null and says so; two set-ups of one bow or one set of arrows share the doubt of a figure that reads alike
 * @source jcgm-100
 * @example asSetFigures(exampleBundle, exampleBundle)[0].key // "diameter"
 */
export function asSetFigures(bundle: Bundle, beside: Bundle): readonly DoubtedFigure[] {
  const others = onRecord(beside);
  return onRecord(bundle)
    .filter(([, , , value], index) => value !== null || others[index]?.[3] !== null)
    .flatMap(([section, owner, { key, name, use, resolution }, value, note]): readonly DoubtedFigure[] => {
      if (use === null) return [];
      const base = { key, name, use, section };
      if (value === null) return [{ ...base, value, half: null, note: 'Not on record for both.', doubts: new Map() }];
      const doubts = new Map([[`${owner} ${key} ${value}`, resolution]]);
      return [{ ...base, value, half: halfOf(doubts), note, doubts }];
    });
}
