import type { Result } from '../../../../core/model/problem.ts';
import type { CardPaper, PointPaper, StripPaper } from '../../../print/papers.ts';

/** Which distances a paper shows [m]. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** Works out a paper for the distances chosen beside its preview: at once, or in its own time. */
export interface Maker<P> {
  readonly make: (span: Span) => Result<P> | Promise<Result<P>>;
  /** What it begins with. */
  readonly usual: Span;
}

/** The papers that a part of the page can give; those it leaves out are not offered. */
export interface Makers {
  readonly strip?: Maker<StripPaper>;
  readonly card?: Maker<CardPaper>;
  readonly points?: Maker<PointPaper>;
}

export type PaperKind = keyof Makers;
