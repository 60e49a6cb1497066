import { useEffect, useMemo, useState } from 'react';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { refuse, type Result } from '../../../../core/model/problem.ts';
import { pages, pointCardSheet, rangeCardSheet, type Sheet, stripSheet } from '../../../print/index.ts';
import { now } from '../../../state/clock.ts';
import { useBench, useUnits } from '../../../state/useBench.ts';
import { distancesIn, holdsIn, paperHead, scaleText } from './head.ts';
import { madeOf, type Made, type Makers, type PaperKind, type Span } from './makers.ts';
import { usePrintChoice } from './store.ts';

const MOST = 200;

function problemOf({ from, to, step }: Span): Result<Made> | null {
  if (!(to >= from)) return refuse('distances', 'The nearer distance first, then the farther one, were expected.');
  if ((to - from) / step >= MOST) return refuse('distances', `At most ${MOST} distances were expected: choose a longer step.`);
  return null;
}

interface Answer {
  readonly kind: PaperKind;
  readonly made: Result<Made>;
  /** Of what was asked: an answer to anything else is old. */
  readonly key: unknown;
}

/** A paper's data for these distances; while another is worked out the last of its kind stays. */
function useMade(
  makers: Makers,
  kind: PaperKind,
  { from, to, step }: Span,
): { readonly made: Result<Made> | null; readonly working: boolean } {
  const make = makers[kind]?.make;
  const key = useMemo(() => ({ make, kind, span: { from, to, step } }), [make, kind, from, to, step]);
  const [answer, setAnswer] = useState<Answer | null>(null);
  useEffect(() => {
    let wanted = true;
    const problem = problemOf(key.span);
    void (problem === null ? madeOf(makers, key.kind, key.span) : Promise.resolve(problem)).then((made) => {
      if (wanted) setAnswer({ kind: key.kind, made, key });
    });
    return () => {
      wanted = false;
    };
    // The maker is in the key; whatever else the parent passes anew each time changes nothing.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [key]);
  return { made: answer?.kind === kind ? answer.made : null, working: answer?.key !== key };
}

export interface SheetState {
  readonly sheet: Result<Sheet> | null;
  /** Heads of a card's columns, for whoever chooses among them. */
  readonly columns: readonly string[];
  readonly working: boolean;
}

/** The sheet of a kind as it will be printed, with what was chosen for it. */
export function useSheet(bundle: Bundle, makers: Makers, kind: PaperKind, span: Span): SheetState {
  const units = useUnits();
  const checkLine = useBench((state) => state.preferences.checkLine);
  const { page, strip, card, points } = usePrintChoice();
  const { made, working } = useMade(makers, kind, span);
  const [today] = useState(now);
  const sheet = useMemo((): Result<Sheet> | null => {
    if (made === null || !made.ok) return made;
    const on = pages[page];
    const head = (unitsText: string) => paperHead(bundle, units, today, unitsText);
    const { value } = made;
    if (value.kind === 'strip') return stripSheet(value.paper, head(scaleText(value.paper, units)), on, strip, checkLine);
    if (value.kind === 'card') return rangeCardSheet(value.paper, head(distancesIn(units)), on, card, checkLine);
    return pointCardSheet(value.paper, head(holdsIn(units)), on, points, checkLine);
  }, [made, bundle, units, today, page, strip, card, points, checkLine]);
  const columns = made?.ok === true && made.value.kind === 'card' ? made.value.paper.head : [];
  return { sheet, columns, working };
}
