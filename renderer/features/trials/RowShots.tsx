import { useEffect, useMemo, useState, type KeyboardEvent } from 'react';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { Trial } from '../../../core/model/trial.ts';
import type { TrialRow } from '../../../core/trials/index.ts';
import { Mark } from '../../design/index.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { oneGroup, usualShaft } from '../groups/derive.ts';
import { FaceHint } from '../groups/entry/FaceHint.tsx';
import { FrameButton } from '../groups/entry/FrameButton.tsx';
import { LeaveOut } from '../groups/entry/LeaveOut.tsx';
import { ShotTools } from '../groups/entry/ShotTools.tsx';
import { ShotsSheet } from '../groups/entry/ShotsSheet.tsx';
import { setEntry } from '../groups/entry/store.ts';
import { TypedShot } from '../groups/entry/TypedShot.tsx';
import { useFrame } from '../groups/entry/useFrame.ts';
import { fromPlumb } from './acrossPlace.ts';
import { FaceEntry } from '../groups/FaceEntry.tsx';
import { FromPhoto } from '../groups/photo/FromPhoto.tsx';
import { Plumb } from '../../plots/face/plumb.ts';
import { placeOf } from './derive.ts';
import { isBarred, takeUp } from './edits.ts';
import { faceFor } from './faceFor.ts';
import { goOn } from './goOn.ts';
import { RowHead } from './RowHead.tsx';
import type { PartProps } from './shared.ts';

interface Props extends PartProps {
  row: TrialRow;
  stopped: boolean;
  size: number;
}

/** An end on the face: the shots of the row in hand go into its own group and end. */
export function RowShots({ input, trial, rows, row, stopped, size }: Props) {
  const bench = useBenchApi();
  const group = row.group === null ? undefined : input.groups.get(row.group);
  // What was shot there may still be corrected; nothing more is begun.
  if (isBarred(trial, input.bundle, row) && (group === undefined || group.shots.length === 0))
    return (
      <>
        <RowHead row={row} count={null} />
        <p className="note stop-text">
          <Mark level="stop" /> Outside the bow’s range: this height is not shot. Take it out of the plan.
        </p>
      </>
    );
  if (group !== undefined) return <OnFace input={input} rows={rows} row={row} group={group} trial={trial} size={size} />;
  return (
    <>
      <RowHead row={row} count={null} />
      {!stopped && (
        <button type="button" className="btn go" onClick={() => void takeUp(bench, trial.id, row, faceFor(input, row))}>
          Put this end on the face
        </button>
      )}
    </>
  );
}

interface OnFaceProps extends Pick<Props, 'input' | 'trial' | 'rows' | 'row' | 'size'> {
  group: ShotGroup;
}

function OnFace({ input, trial, rows, row, group, size }: OnFaceProps) {
  const bench = useBenchApi();
  const [sheet, setSheet] = useState(false);
  // Where a new group will strike nobody knows yet: bare shafts fly wide of what was shot before.
  const [whole, setWhole] = useState(group.shots.length === 0);
  const shaftRadius = (input.bundle.arrowSet.diameter ?? usualShaft) / 2;
  const walkBack = trial.trial === 'walk-back';
  const at = placeOf(trial, row);
  const otherId = row.which === 'first' ? at?.second : at?.first;
  const other = otherId == null ? undefined : input.groups.get(otherId);
  const [a, b] = useMemo(() => {
    const [one, two] = [group, other].map((each) => (each === undefined ? null : oneGroup(each, shaftRadius)));
    return row.which === 'second' && two !== null ? [two, one] : [one, two];
  }, [group, other, shaftRadius, row.which]);
  // The sheet says which end the shots go into, for as long as it stands.
  useEffect(() => {
    setEntry(group.id, { pinned: row.end, shotInHand: null });
    return () => setEntry(group.id, { pinned: null });
  }, [group.id, row.end]);
  const count = row.shot;
  const frame = useFrame([a ?? null, b ?? null], group, whole, setWhole);
  const onKeyDown = (event: KeyboardEvent) => {
    const { target } = event;
    const typing = target instanceof HTMLInputElement && target.value !== '';
    if (event.key.toLowerCase() !== 'n' || typing || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    void goOn(bench, input, rows, row.key);
  };
  if (a == null) return null;
  return (
    <div onKeyDownCapture={onKeyDown}>
      <RowHead row={row} count={count} />
      <div className="face-tools">
        <TypedShot entering={group} {...(walkBack ? { place: fromPlumb } : {})} />
        <ShotTools group={group}>
          <FrameButton frame={frame} />
          <button type="button" className="link" onClick={() => setSheet(true)}>
            Table
          </button>
          <FromPhoto group={group} />
        </ShotTools>
      </div>
      <Plumb value={walkBack}>
        <FaceEntry
          first={a}
          second={b ?? null}
          entering={group}
          half={frame.half}
          shaftRadius={shaftRadius}
          size={size}
          {...named(trial, a.group === group && row.which === 'second')}
        />
      </Plumb>
      {walkBack && (
        <p className="note faint">The line is the plumb line: how far right or left of it counts, the height does not.</p>
      )}
      <LeaveOut group={group} />
      <FaceHint />
      {sheet && <ShotsSheet group={group} onClose={() => setSheet(false)} />}
    </div>
  );
}

const between = { names: ['A', 'B'] } as const;
const onlyB = { names: ['B', 'A'] } as const;

/** A and B are both fletched: their letters tell them apart. */
const named = ({ trial }: Trial, second: boolean) => (trial !== 'a against b' ? {} : second ? onlyB : between);
