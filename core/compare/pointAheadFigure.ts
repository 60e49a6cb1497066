import type { Bundle } from '../model/bundle.ts';
import { pointAheadOfRest } from '../safety/index.ts';
import { archerFields, arrowFields, settingFields } from './fields.ts';
import type { DoubtedFigure } from './figure.ts';
import { halfOf } from './figure.ts';

const resolution = (fields: readonly { readonly key: string; readonly resolution: number }[], key: string): number =>
  fields.find((field) => field.key === key)?.resolution ?? 0;

/**
 * How far the end of the shaft stands ahead of the rest, as a figure of a set-up.
 *
 * @equation as pointAheadOfRest of the safety room, with what can be read again
 * @param bundle - the set-up with its records [record]
 * @returns the figure with its doubts [record]
 * @validity as pointAheadOfRest
 * @source astm-f1880
 * @example pointAheadFigure(exampleBundle).value // 0.0508
 */
export function pointAheadFigure(bundle: Bundle): DoubtedFigure {
  const { archer, arrowSet, setup } = bundle;
  const base = { key: 'pointAhead', name: 'Shaft ahead of the rest', use: 'length', section: 'On the bow' } as const;
  const found = pointAheadOfRest({
    arrowLength: arrowSet.length,
    drawLength: archer.drawLength,
    measured: setup.settings.pointAhead,
  });
  if (!found.ok) return { ...base, value: null, half: null, note: found.problem.sentence, doubts: new Map() };
  const doubts =
    found.value.from === 'measured'
      ? new Map([[`${setup.id} pointAhead ${found.value.value}`, resolution(settingFields, 'pointAhead')]])
      : new Map([
          [`${archer.id} drawLength ${archer.drawLength}`, resolution(archerFields, 'drawLength')],
          [`${arrowSet.id} length ${arrowSet.length}`, resolution(arrowFields, 'length')],
        ]);
  return { ...base, value: found.value.value, half: halfOf(doubts), note: found.value.from, doubts };
}
