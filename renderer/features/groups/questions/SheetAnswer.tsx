import { useMemo } from 'react';
import type { FaceId } from '../../../../core/model/group.ts';
import type { ScoreSheet } from '../../../../core/model/scoreSheet.ts';
import { lengthText, sheetReading, sheetTables, sheetTotal, sheetWhy } from '../../../../core/questions/index.ts';
import { WhyLink } from '../../../design/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { AnswerTable } from './AnswerTable.tsx';

interface Props {
  ends: ScoreSheet['ends'];
  faceId: FaceId;
  distance: number;
  shaftRadius: number;
}

/** What the values add up to, how wide the arrows fell, and what such arrows score elsewhere. */
export function SheetAnswer({ ends, faceId, distance, shaftRadius }: Props) {
  const units = useUnits();
  const read = useMemo(() => sheetReading(ends, faceId, distance, shaftRadius), [ends, faceId, distance, shaftRadius]);
  const { arrows, total, tens, inner, misses } = sheetTotal(ends);
  return (
    <>
      <p role="status">
        {total} with {arrows}, {(total / arrows).toFixed(2)} an arrow: {tens} tens, {inner} of them X, {misses} missed.
      </p>
      {read.ok ? (
        <>
          <p>
            Mean radius of many such arrows {lengthText(read.value.meanRadius, units)}.{' '}
            <WhyLink why={sheetWhy(read.value, units)} about="the spread behind the scores" />
          </p>
          {read.value.apart !== null && (
            <p>
              {read.value.apart.points === 0 ? 'A miss' : `A ${read.value.apart.points}`} stands apart: arrows as wide as this
              bring one in fewer than 1 of 20 such sheets. It counts; without it the mean radius is{' '}
              {lengthText(read.value.apart.meanRadius, units)}.
            </p>
          )}
          {sheetTables(read.value, distance, units).map((table, i) => (
            <AnswerTable key={i} table={table} />
          ))}
          <p className="note">
            Rings alone tell the spread, not the aim: a group off the middle reads as a wider one. From about 12 arrows on.
          </p>
        </>
      ) : (
        <p className="note">{read.problem.sentence}</p>
      )}
    </>
  );
}
