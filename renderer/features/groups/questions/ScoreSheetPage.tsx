import { useId, useState } from 'react';
import { face } from '../../../../core/group/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { FaceId } from '../../../../core/model/group.ts';
import type { ScoreSheet } from '../../../../core/model/scoreSheet.ts';
import { readScores, scoreLines } from '../../../../core/questions/index.ts';
import { Choice, Dialog, Figure } from '../../../design/index.ts';
import { born, edited } from '../../../state/bench.ts';
import { newScoreSheet } from '../../../state/births.ts';
import { now } from '../../../state/clock.ts';
import { useBenchApi } from '../../../state/useBench.ts';
import { SheetAnswer } from './SheetAnswer.tsx';

interface Props {
  bundle: Bundle;
  /** Null for a new one. */
  sheet: ScoreSheet | null;
  usual: Pick<ScoreSheet, 'distance' | 'face'>;
  shaftRadius: number;
  onClose(): void;
}

const faces = FaceId.options.map((value) => ({ value, text: face(value).name }));

/** A score sheet: a line of values for each end, and what they tell as they are typed. Nothing is kept before it is said so. */
export function ScoreSheetPage({ bundle, sheet, usual, shaftRadius, onClose }: Props) {
  const bench = useBenchApi();
  const id = useId();
  const [distance, setDistance] = useState(usual.distance);
  const [faceId, setFaceId] = useState(usual.face);
  const [text, setText] = useState(sheet === null ? '' : scoreLines(sheet.ends));
  const empty = text.trim() === '';
  const read = readScores(text, faceId);

  const keep = async () => {
    if (!read.ok) return;
    const typed = { distance, face: faceId, ends: read.value };
    const done = await (sheet === null
      ? bench.getState().change('A score sheet noted', () => [born(newScoreSheet(bundle.setup.id, typed))])
      : lay('A score sheet changed', typed));
    if (done) onClose();
  };
  const lay = (label: string, patch: Partial<ScoreSheet>) =>
    bench.getState().change(label, (records) => {
      const known = records.get(sheet?.id ?? '');
      return known?.kind === 'scoreSheet' ? [edited(known, patch)] : [];
    });
  const away = async () => {
    if (await lay('A score sheet put away', { archivedAt: now() })) onClose();
  };

  return (
    <Dialog
      title={sheet === null ? 'A new score sheet' : 'Score sheet'}
      onClose={onClose}
      size="tall"
      foot={
        <>
          <button type="button" className="btn go" disabled={!read.ok} onClick={() => void keep()}>
            Keep this sheet
          </button>
          <button type="button" className="btn" onClick={onClose}>
            Close without keeping
          </button>
          {sheet !== null && (
            <button type="button" className="link" onClick={() => void away()}>
              Put this sheet away
            </button>
          )}
        </>
      }
    >
      <div className="sheet-scroll question-page">
        <Figure
          measure="shootingDistance"
          name="distance"
          value={distance}
          required
          onKeep={(value) => value !== null && setDistance(value)}
        />
        <Choice name="face" value={faceId} options={faces} onKeep={(value) => setFaceId(value)} />
        <div className="row">
          <label htmlFor={id}>values, a line an end</label>
          <div className="row-value">
            <textarea
              id={id}
              className="words score-lines"
              rows={6}
              value={text}
              placeholder={'X 10 9 9 8 7\n10 10 9 8 8 M'}
              spellCheck={false}
              aria-invalid={!empty && !read.ok}
              aria-describedby={`${id}-hint`}
              onChange={(event) => setText(event.currentTarget.value)}
            />
            <p id={`${id}-hint`} className={empty || read.ok ? 'hint' : 'wrong'} role={empty || read.ok ? undefined : 'alert'}>
              {empty || read.ok ? 'X for an inner ten, M for a miss; blanks or commas between.' : read.problem.sentence}
            </p>
          </div>
        </div>
        {read.ok && <SheetAnswer ends={read.value} faceId={faceId} distance={distance} shaftRadius={shaftRadius} />}
      </div>
    </Dialog>
  );
}
