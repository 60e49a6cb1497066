import type { Result } from '../../../../core/model/problem.ts';
import type { CardPaper, PointPaper, StripPaper } from '../../../print/index.ts';

/** Which distances a paper shows [m]. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** Works out a paper for the distances chosen beside its preview: at once, or in its own time. A new function stands for new figures. */
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

/** A paper with its kind, so that each is drawn in its own way. */
export type Made =
  | { readonly kind: 'strip'; readonly paper: StripPaper }
  | { readonly kind: 'card'; readonly paper: CardPaper }
  | { readonly kind: 'points'; readonly paper: PointPaper };

/** What a kind of paper is called. */
export const paperNames: Readonly<Record<PaperKind, string>> = {
  strip: 'sight strip',
  card: 'range card',
  points: 'point-of-aim card',
};

export const kindsOf = (makers: Makers): readonly PaperKind[] =>
  (['strip', 'card', 'points'] as const).filter((kind) => makers[kind] !== undefined);

const known = <K extends PaperKind>(kind: K, paper: unknown): Made => ({ kind, paper }) as Made;

/** The paper of a kind for these distances. */
export async function madeOf(makers: Makers, kind: PaperKind, span: Span): Promise<Result<Made>> {
  const made = await makers[kind]?.make(span);
  if (made === undefined) throw new Error(`no maker of a ${paperNames[kind]}`);
  return made.ok ? { ok: true, value: known(kind, made.value) } : made;
}
