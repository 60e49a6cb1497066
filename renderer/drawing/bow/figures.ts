import type { Hand } from '../../../core/model/archer.ts';
import type { ArrowPass, BowKind } from '../../../core/model/bow.ts';
import type { CentreShotDatum } from '../../../core/model/setup.ts';

/** The figures that the drawing is built from, all of them lengths [m]. Where nothing has been measured, what the pencil assumes. */
export interface DrawnFigures {
  /** As marked: the string's length and 3 in. */
  readonly length: number;
  readonly string: number;
  readonly brace: number;
  readonly upper: number;
  readonly lower: number;
  readonly nocking: number;
  readonly centre: number;
  readonly arrow: number;
  readonly shaft: number;
  readonly vane: number;
  readonly vaneFrom: number;
}

export interface DrawnBow extends DrawnFigures {
  readonly kind: BowKind;
  readonly hand: Hand;
  readonly pass: ArrowPass;
  readonly datum: CentreShotDatum;
  readonly braceRange: readonly [number, number] | null;
  /** Which figures somebody has measured: they are drawn in ink, the rest in pencil. */
  readonly measured: Readonly<
    Record<'length' | 'string' | 'brace' | 'upper' | 'lower' | 'nocking' | 'centre' | 'arrow', boolean>
  >;
}
