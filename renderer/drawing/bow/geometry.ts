import type { DrawnBow } from './figures.ts';
import { compound } from './compound.ts';
import { recurve } from './recurve.ts';
import type { BowShape } from './shape.ts';
import { stave } from './stave.ts';

/** The bow from its side, braced, as its record says. Pure: the same figures give the same places. */
export function bowShape(bow: DrawnBow): BowShape {
  switch (bow.kind) {
    case 'take-down recurve':
    case 'one-piece recurve':
      return recurve(bow);
    case 'compound':
      return compound(bow);
    case 'longbow':
    case 'flatbow':
    case 'self bow':
      return stave(bow);
  }
}
