import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../../../../core/model/common.ts';
import { stripWidths, type CardOptions, type PageName, type PointOptions, type StripOptions } from '../../../print/index.ts';
import type { PaperKind, Span } from './makers.ts';

/** What was last chosen for printing; it is kept while the bench is open. */
export interface PrintChoice {
  readonly page: PageName;
  readonly strip: StripOptions;
  readonly card: CardOptions;
  readonly points: PointOptions;
  /** The distances of each set-up's papers. */
  readonly spans: Readonly<Record<string, Span>>;
}

const store = createStore<PrintChoice>(() => ({
  page: 'A4',
  strip: { widths: stripWidths.map(({ width }) => width), list: true },
  card: { without: [], copies: 'one' },
  points: { pictures: true, ground: true, copies: 'one' },
  spans: {},
}));

export const usePrintChoice = (): PrintChoice => useStore(store);

export const chooseInPrint = (patch: Partial<Omit<PrintChoice, 'spans'>>): void => store.setState(patch);

export const spanKey = (setupId: Id, kind: PaperKind): string => `${setupId} ${kind}`;

export const chooseSpan = (setupId: Id, kind: PaperKind, span: Span): void =>
  store.setState(({ spans }) => ({ spans: { ...spans, [spanKey(setupId, kind)]: span } }));
