import { useState, type KeyboardEvent, type PointerEvent } from 'react';
import type { Tear } from '../../../core/model/trial.ts';
import type { TrialRow } from '../../../core/trials/index.ts';
import { fromPad, padView } from '../../plots/trial/pad.ts';
import { Pad } from '../../plots/trial/Pad.tsx';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { usualShaft } from '../groups/derive.ts';
import { tearsOf } from './derive.ts';
import { dropTear, putTear } from './edits.ts';
import { afterRow } from './goOn.ts';
import { RowHead } from './RowHead.tsx';
import type { PartProps } from './shared.ts';
import { TypedTear } from './TypedTear.tsx';
import { tearText } from './words.ts';

type Place = Pick<Tear, 'across' | 'up'>;

const coarse = 0.005;
const fine = 0.001;
const directions: Record<string, readonly [across: number, up: number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const rounded = (metres: number): number => Math.round(metres * 2000) / 2000 + 0;

/** A tear on the paper: the point's hole is the middle, one click or Enter says where the nock went through. */
export function RowPaper({ input, trial, rows, row, size }: PartProps & { row: TrialRow; size: number }) {
  const bench = useBenchApi();
  const units = useUnits();
  const [cross, setCross] = useState<Place | null>(null);
  const here = tearsOf(trial.tears, row);
  const view = padView([...trial.tears, ...(cross === null ? [] : [cross])], size);
  const put = async ({ across, up }: Place) => {
    const tear: Tear = { distance: row.place?.distance ?? 2, across: rounded(across), up: rounded(up), fletching: row.fletching };
    setCross(null);
    if (await putTear(bench, trial.id, row, tear)) afterRow(trial.id, rows, row.key);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const by = directions[event.key];
    const last = here.at(-1);
    if (by !== undefined) {
      const from = cross ?? { across: 0, up: 0 };
      const step = event.shiftKey ? fine : coarse;
      const kept = (value: number) => Math.max(-0.3, Math.min(0.3, rounded(value)));
      setCross({ across: kept(from.across + step * by[0]), up: kept(from.up + step * by[1]) });
    } else if (event.key === 'Enter' || event.key === ' ') {
      if (!event.repeat) void put(cross ?? { across: 0, up: 0 });
    } else if (event.key === 'Backspace' && last !== undefined) {
      void dropTear(bench, trial.id, last.index);
    } else if (event.key === 'Escape') setCross(null);
    else return;
    event.preventDefault();
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0) return;
    const corner = event.currentTarget.getBoundingClientRect();
    void put(fromPad(view, { x: event.clientX - corner.left, y: event.clientY - corner.top }));
  };
  return (
    <>
      <RowHead row={row} count={null} />
      <TypedTear onKeep={(place) => void put(place)} />
      <Pad
        view={view}
        shaftRadius={(input.bundle.arrowSet.diameter ?? usualShaft) / 2}
        tears={here.map(({ tear }) => tear)}
        inHand={row.done ? row.end - 1 : null}
        cross={cross}
        units={units}
        label={`Paper. The point's hole is the middle. ${here.length} ${here.length === 1 ? 'tear' : 'tears'} at this distance. Arrow keys move the cross, Enter sets the tear of the nock, Backspace takes the last one back.`}
        said={cross === null ? '' : tearText(cross, units)}
        onKeyDown={onKeyDown}
        onPointerUp={onPointerUp}
      />
      <p className="tick-note">
        The middle is the hole of the point. Click where the nock went through, or type how far right and up, {units.setting}.
      </p>
    </>
  );
}
