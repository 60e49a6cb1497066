import { useEffect } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import {
  type FittedMarks,
  movedMarks,
  onBar,
  readingsNow,
  type MarksPicture,
  type StripRow,
  withMove,
} from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf } from '../../../../core/units/index.ts';
import type { MarksView } from './derive.ts';
import { spanDistances } from './derive.ts';
import { askStrip } from './stripDesk.ts';
import type { Span } from './store.ts';

/** As many as tell 95 % to a few hundredths of its width. */
const DRAWS = 2000;
const nearest = 1;

/** From the nearest to the farthest distance of the table, by one of the unit. */
export function stripSpan({ rows }: Pick<MarksView, 'rows'>, units: UnitChoice): Span | null {
  const step = factorOf('distance', units);
  const reached = rows.filter(({ reading }) => reading !== null).map(({ distance }) => distance);
  if (reached.length === 0) return null;
  const from = Math.max(Math.ceil(nearest / step), Math.floor(Math.min(...reached) / step + 1e-6)) * step;
  return { from, to: Math.max(...reached), step };
}

/** What may have moved the marks since, on top of a strip of what was shot in. */
function movedRows(rows: readonly StripRow[], { fit, change, scale }: MarksPicture): readonly StripRow[] {
  if (fit?.ok !== true || change === null) return rows;
  const moved = new Map(
    movedMarks(
      fit.value,
      change,
      rows.map(({ distance }) => distance),
    ).map((one) => [one.distance, one.moved]),
  );
  return rows.map((row) => {
    const by = moved.get(row.distance);
    if (row.reading === null || by === undefined) return { ...row, reading: null, bar: 'off' as const };
    const reading = withMove(row.reading, by);
    return { ...row, reading, bar: onBar(reading, scale) };
  });
}

/** A strip with the intervals of the worker, for paper or screen; null when a newer one was asked for meanwhile. */
export async function stripOf(picture: MarksPicture, fit: FittedMarks, span: Span, lane: 'screen' | 'paper') {
  const answer = await askStrip(lane, { fit, ...span, draws: DRAWS });
  return answer?.ok === true ? { ok: true as const, value: movedRows(answer.value, picture) } : answer;
}

interface Strip {
  readonly fit: FittedMarks;
  readonly span: string;
}

/** One strip for the page, whoever of it asks: its head and its body would overtake one another. */
const found = createStore<(Strip & { readonly rows: readonly StripRow[] }) | { readonly fit: null }>(() => ({ fit: null }));
let asked: Strip | null = null;

function ask(picture: MarksPicture, fit: FittedMarks, span: string): void {
  if (asked?.fit === fit && asked.span === span) return;
  asked = { fit, span };
  void stripOf(picture, fit, JSON.parse(span) as Span, 'screen').then((answer) => {
    if (answer?.ok === true && asked?.fit === fit && asked.span === span) found.setState({ fit, span, rows: answer.value }, true);
  });
}

/** The strip of a page with the bends of the model; null until the worker has it. */
export function useStrip(picture: MarksPicture, span: Span | null): readonly StripRow[] | null {
  const last = useStore(found);
  const fit = picture.fit?.ok === true ? picture.fit.value : null;
  const key = JSON.stringify(span);
  useEffect(() => {
    if (fit !== null && key !== 'null') ask(picture, fit, key);
  }, [picture, fit, key]);
  return fit !== null && last.fit === fit && last.span === key ? last.rows : null;
}

/** What the strip shows meanwhile: to first order. */
export function firstRows(picture: MarksPicture, span: Span | null): readonly StripRow[] {
  if (picture.fit?.ok !== true || span === null) return [];
  const distances = spanDistances(span);
  return readingsNow(picture, distances).map((reading, i) => ({
    distance: distances[i] ?? 0,
    reading,
    bar: reading === null ? 'off' : onBar(reading, picture.scale),
  }));
}
