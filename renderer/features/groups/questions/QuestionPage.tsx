import { useDeferredValue, useMemo } from 'react';
import { face } from '../../../../core/group/index.ts';
import type { Question, QuestionInput, QuestionPlot } from '../../../../core/questions/index.ts';
import { factorOf, unitOf } from '../../../../core/units/index.ts';
import { Dialog, Fraction, useSize, WhyLink } from '../../../design/index.ts';
import { IntervalRows } from '../../../plots/intervalRows/IntervalRows.tsx';
import { Places } from '../../../plots/places/Places.tsx';
import { useUnits } from '../../../state/useBench.ts';
import { AnswerTable } from './AnswerTable.tsx';
import { SizeOnFace } from './SizeOnFace.tsx';

interface Props {
  question: Question;
  input: QuestionInput;
  onClose(): void;
}

/** One question with its table, its picture and its Why: worked out once the sheet is open, so that opening it waits for nothing. */
export function QuestionPage({ question, input, onClose }: Props) {
  const later = useDeferredValue<Question | null>(question, null);
  const page = useMemo(() => later?.page() ?? null, [later]);
  const [room, size] = useSize();
  return (
    <Dialog
      title={question.ask}
      onClose={onClose}
      size="tall"
      foot={
        <>
          <button type="button" className="btn" onClick={onClose}>
            Close
          </button>
          {page !== null && <WhyLink why={page.why} about={question.ask} />}
        </>
      }
    >
      <div className="sheet-scroll question-page" ref={room} role="region" aria-label="Answer" tabIndex={0}>
        <p>
          <Fraction>{question.answer}</Fraction>
        </p>
        {question.tells !== null && (
          <p className="note">
            <Fraction>{question.tells}</Fraction>
          </p>
        )}
        {page === null && <p className="note">Working it out …</p>}
        {page !== null && page.plot !== null && size !== null && (
          <Picture plot={page.plot} input={input} width={Math.max(280, size.width - 16)} />
        )}
        {page?.tables.map((table, i) => (
          <AnswerTable key={i} table={table} />
        ))}
        {page?.notes.map((note) => (
          <p key={note} className="note">
            <Fraction>{note}</Fraction>
          </p>
        ))}
      </div>
    </Dialog>
  );
}

function Picture({ plot, input, width }: { plot: QuestionPlot; input: QuestionInput; width: number }) {
  const units = useUnits();
  const length = useMemo(() => ({ factor: factorOf('setting', units), symbol: unitOf('setting', units) }), [units]);
  switch (plot.kind) {
    case 'rows':
      return (
        <IntervalRows panels={plot.panels} width={width} unit={plot.of === 'length' ? length : bare} sentence={plot.sentence} />
      );
    case 'places':
      return <Places places={plot.places} origin={plot.origin} width={width} unit={length} sentence={plot.sentence} />;
    case 'face':
      return (
        <SizeOnFace
          plot={plot}
          target={face(input.group.context.face)}
          group={input.group}
          shaftRadius={input.shaftRadius}
          width={width}
        />
      );
  }
}

/** Points and ratios carry no unit. */
const bare = { factor: 1, symbol: '' } as const;
