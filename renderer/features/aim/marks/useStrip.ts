import { useEffect, useState } from 'react';
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

/** The strip of a page: at once to first order, and with the bends of the model as soon as the worker has them. */
export function useStrip({ picture }: MarksView, span: Span | null): readonly StripRow[] {
  const { fit } = picture;
  const [found, setFound] = useState<{ fit: FittedMarks; span: string; rows: readonly StripRow[] } | null>(null);
  const told = fit?.ok === true ? fit.value : null;
  const key = JSON.stringify(span);
  useEffect(() => {
    const wanted = JSON.parse(key) as Span | null;
    if (told === null || wanted === null) return undefined;
    let here = true;
    void stripOf(picture, told, wanted, 'screen').then((answer) => {
      if (here && answer?.ok === true) setFound({ fit: told, span: key, rows: answer.value });
    });
    return () => {
      here = false;
    };
  }, [picture, told, key]);
  if (told === null || span === null) return [];
  if (found !== null && found.fit === told && found.span === key) return found.rows;
  const distances = spanDistances(span);
  return readingsNow(picture, distances).map((reading, i) => ({
    distance: distances[i] ?? 0,
    reading,
    bar: reading === null ? 'off' : onBar(reading, picture.scale),
  }));
}
