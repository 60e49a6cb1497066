import { useEffect } from 'react';
import { Mark } from '../../design/index.ts';
import { DataSheet } from './DataSheet.tsx';
import { rowInHand } from './derive.ts';
import { FaceChoice } from './FaceChoice.tsx';
import { GoOn } from './GoOn.tsx';
import { NewHeight } from './NewHeight.tsx';
import { NotedTears, NotedTouches } from './Noted.tsx';
import { RowClearance } from './RowClearance.tsx';
import { RowPaper } from './RowPaper.tsx';
import { RowShots } from './RowShots.tsx';
import { RowSpeeds } from './RowSpeeds.tsx';
import { useBenchApi } from '../../state/useBench.ts';
import { wasChanged } from './changed.ts';
import { leaveRow } from './edits.ts';
import { standsEarly } from './standing.ts';
import type { PartProps } from './shared.ts';
import { standIn, useTrialPlace } from './store.ts';

interface Props extends PartProps {
  width: number;
  height: number;
}

/** The line of tools above a face, in one piece [px]. */
const TOOLS = 404;

/** The row in hand beside the sheet of all of them. */
export function ShootPart({ width, height, ...shared }: Props) {
  const { input, trial, rows, told, reading } = shared;
  const bench = useBenchApi();
  const { row: key } = useTrialPlace(trial.id);
  const row = rowInHand(rows, key);
  const onFace = row?.which === 'first' || row?.which === 'second';
  // An end stays in hand while it is shot, though its first arrow makes it one that is shot.
  useEffect(() => {
    if (key === null && onFace) standIn(trial.id, { row: row.key });
  }, [key, onFace, row, trial.id]);
  useEffect(() => () => leaveRow(bench, trial.id), [bench, trial.id]);
  if (row === null) return null;
  if (trial.cautionsRead === null)
    return (
      <p className="note">
        The cautions are read before the first arrow.{' '}
        <button type="button" className="link" onClick={() => standIn(trial.id, { part: 'plan' })}>
          Go to the plan
        </button>
      </p>
    );
  if (wasChanged(trial, reading))
    return (
      <>
        <p className="note">
          A change was noted, so this trial takes no more arrows: those from before it are never mixed with those after.{' '}
          <button type="button" className="link" onClick={() => standIn(trial.id, { part: 'change' })}>
            Shoot it again, or take the note off
          </button>
        </p>
        <DataSheet input={input} rows={rows} inHand={null} />
      </>
    );
  const group = row.group === null ? undefined : input.groups.get(row.group);
  const given = { ...shared, row };
  // A sheet of many ends asks for its width.
  const share = rows.rows.some(({ end }) => end > 4) ? 0.48 : 0.52;
  const size = Math.max(280, Math.floor(Math.min(width * share - 46, height - 220, 480)));
  return (
    <div className="shoot-part">
      {/* Beside a face its tools and its hint keep to the face's width, so that the sheet has the rest. */}
      <div className="shoot-row" style={onFace ? { width: Math.max(size + 60, TOOLS) } : undefined}>
        {row.which === 'tear' && <RowPaper {...given} size={Math.min(size, 340)} />}
        {row.which === 'clearance' && <RowClearance {...given} />}
        {row.which === 'speeds' && <RowSpeeds {...given} />}
        {onFace && <RowShots key={`${row.key} ${row.group ?? ''}`} {...given} stopped={told.stops.length > 0} size={size} />}
      </div>
      <div className="shoot-aside">
        <DataSheet input={input} rows={rows} inHand={row.key} />
        {trial.trial === 'brace height' && row.which === 'first' && <NewHeight row={row} />}
        {trial.trial === 'walk-back' && (
          <p className="note caution-line new-height">
            <Mark level="caution" /> Go on to the next distance only while every arrow stays well on the butt. Stop when they come
            near its foot or an edge.
          </p>
        )}
        <div className="row-foot">
          {(onFace || row.which === 'speeds' || rows.next === null) && (
            <GoOn
              input={input}
              rows={rows}
              row={row}
              full={rows.next === null || row.shot >= row.arrows}
              settled={standsEarly(trial, rows, reading)}
            />
          )}
          {group !== undefined && <FaceChoice group={group} />}
        </div>
        {row.which === 'tear' && <NotedTears trial={trial} row={row} />}
        {row.which === 'clearance' && <NotedTouches trial={trial} />}
      </div>
    </div>
  );
}
