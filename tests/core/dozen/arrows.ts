import { exampleBundle, type ArrowSet, type NumberedArrow, type Result } from '../../../core/model/index.ts';

export const grain = 6.479891e-5;
export const inch = 0.0254;

export const blank: NumberedArrow = {
  number: 1,
  mass: null,
  spines: [],
  straightness: null,
  lookOver: null,
  lookedOver: null,
  setAside: false,
  note: '',
};

/** A carbon set whose arrows weigh so many grains and spine so many thousandths of an inch, numbered from 1. */
export const setOf = (
  rows: readonly (readonly [massGr: number, spineThou: number])[],
  material: ArrowSet['material'] = 'carbon',
): ArrowSet => ({
  ...exampleBundle.arrowSet,
  material,
  arrows: rows.map(([massGr, spineThou], index) => ({
    ...blank,
    number: index + 1,
    mass: massGr * grain,
    spines: [(spineThou / 1000) * inch],
  })),
});

/** The set with some arrows changed, by number. */
export const changed = (set: ArrowSet, changes: Readonly<Record<number, Partial<NumberedArrow>>>): ArrowSet => ({
  ...set,
  arrows: set.arrows.map((arrow) => ({ ...arrow, ...changes[arrow.number] })),
});

export const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};
