import { useEffect } from 'react';
import { DataSheet } from './DataSheet.tsx';
import { countOf, rowInHand } from './derive.ts';
import { FaceChoice } from './FaceChoice.tsx';
import { GoOn } from './GoOn.tsx';
import { NotedTears, NotedTouches } from './Noted.tsx';
import { RowClearance } from './RowClearance.tsx';
import { RowPaper } from './RowPaper.tsx';
import { RowShots } from './RowShots.tsx';
import { RowSpeeds } from './RowSpeeds.tsx';
import type { PartProps } from './shared.ts';
import { standIn, useTrialPlace } from './store.ts';

interface Props extends PartProps {
  width: number;
  height: number;
}

/** The row in hand beside the sheet of all of them. */
export function ShootPart({ width, height, ...shared }: Props) {
  const { input, trial, rows, told } = shared;
  const { row: key } = useTrialPlace(trial.id);
  const row = rowInHand(rows, key);
  const onFace = row?.which === 'first' || row?.which === 'second';
  // An end stays in hand while it is shot, though its first arrow makes it one that is shot.
  useEffect(() => {
    if (key === null && onFace) standIn(trial.id, { row: row.key });
  }, [key, onFace, row, trial.id]);
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
  const group = row.group === null ? undefined : input.groups.get(row.group);
  const given = { ...shared, row };
  // A sheet of many ends asks for its width.
  const share = rows.rows.some(({ end }) => end > 4) ? 0.48 : 0.52;
  const size = Math.max(280, Math.floor(Math.min(width * share - 46, height - 220, 480)));
  return (
    <div className="shoot-part">
      <div className="shoot-row">
        {row.which === 'tear' && <RowPaper {...given} size={Math.min(size, 340)} />}
        {row.which === 'clearance' && <RowClearance {...given} />}
        {row.which === 'speeds' && <RowSpeeds {...given} />}
        {onFace && <RowShots key={`${row.key} ${row.group ?? ''}`} {...given} stopped={told.stops.length > 0} size={size} />}
      </div>
      <div className="shoot-aside">
        <DataSheet input={input} rows={rows} inHand={row.key} />
        <div className="row-foot">
          {(onFace || row.which === 'speeds' || rows.next === null) && (
            <GoOn input={input} rows={rows} row={row} full={rows.next === null || countOf(row, input) >= row.arrows} />
          )}
          {group !== undefined && <FaceChoice group={group} />}
        </div>
        {row.which === 'tear' && <NotedTears trial={trial} row={row} />}
        {row.which === 'clearance' && <NotedTouches trial={trial} />}
      </div>
    </div>
  );
}
