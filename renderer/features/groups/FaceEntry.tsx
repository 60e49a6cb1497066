import { memo, useMemo } from 'react';
import type { ShotGroup } from '../../../core/model/group.ts';
import { together } from '../../../core/model/sentence.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { Exportable } from '../../export/index.ts';
import { scaleOf, toPixel, type FaceView } from '../../plots/face/geometry.ts';
import { FacePlot } from '../../plots/face/FacePlot.tsx';
import { MOST_DRAWN } from '../../plots/dots.ts';
import { shotRadius, type DrawnGroup } from '../../plots/face/marks.ts';
import { shotsTable } from '../../plots/face/table.ts';
import { Margins } from '../../plots/margins/Margins.tsx';
import { useUnits } from '../../state/useBench.ts';
import { nameOfGroup, type OneGroup } from './derive.ts';
import { endInHand, endOfNext, nextText, shotName } from './entry/ends.ts';
import { PulledShot } from './entry/PulledShot.tsx';
import { useEntry } from './entry/store.ts';
import { Loupe } from './Loupe.tsx';
import { useFaceEntry } from './useFaceEntry.ts';

interface Props {
  first: OneGroup;
  second: OneGroup | null;
  entering: ShotGroup;
  /** Half the side of what is seen of the face [m]. */
  half: number;
  shaftRadius: number;
  size: number;
  /** What the groups are called where fletched and bare do not tell them apart. */
  names?: readonly [first: string, second: string];
}

const nameIn = (one: OneGroup, other: OneGroup | null, place: string) =>
  other !== null && one.group.fletching === other.group.fletching ? place : nameOfGroup(one.group);

/** What a click on a dot does. */
const onDot = (name: string, inHand: boolean): string => (inHand ? `${name} is in hand` : `takes ${name} in hand`);

/** The face that takes the shots: one click or one Enter each, with the loupe at the pointer and the figures in the margins. */
export const FaceEntry = memo(function FaceEntry({ first, second, entering, half, shaftRadius, size, names }: Props) {
  const units = useUnits();
  const both = useMemo(() => (second === null ? [first] : [first, second]), [first, second]);
  const view: FaceView = useMemo(() => ({ middle: { x: 0, y: 0 }, half, size }), [half, size]);
  const ends = useEntry(entering.id);
  const end = endInHand(entering.shots, ends);
  const nextEnd = endOfNext(entering.shots, ends);
  const drawn: DrawnGroup[] = useMemo(
    () =>
      both.map((one, i) => ({
        name: names?.[i] ?? nameIn(one, i === 0 ? second : first, i === 0 ? 'first' : 'second'),
        shots: one.group.shots,
        measures: one.measures,
        oval: second === null || one.group.id === entering.id ? one.oval : null,
        ...(one.group.id === entering.id && end !== null ? { endInHand: end } : {}),
      })),
    [both, first, second, entering.id, end, names],
  );
  // The loupe keeps off the shots; a hundred of each say where they lie.
  const few = useMemo(() => drawn.flatMap((group) => group.shots.slice(0, 100)), [drawn]);
  const dot = shotRadius(
    view,
    both.map(({ group }) => group.shots.length),
    shaftRadius,
  );
  const entry = useFaceEntry(view, entering, dot);
  const over = entering.shots.find(({ id }) => id === entry.over);
  const at = entry.cross ?? entry.pointer;
  const place = (value: number) => textQuantity(value, 'setting', units, { signed: true });
  const chosenShot = entering.shots.find((shot) => shot.id === entry.chosen);
  const said =
    chosenShot !== undefined
      ? `In hand: ${shotName(chosenShot, entering.shots)}, at ${place(chosenShot.x)} across, ${place(chosenShot.y)} up`
      : entry.cross !== null
        ? `Cross at ${place(entry.cross.x)} across, ${place(entry.cross.y)} up`
        : '';
  const inGroup = (shot: number | null) => (shot === null ? null : { group: entering.id === first.group.id ? 0 : 1, shot });
  const shown = together(drawn.map(({ name, shots }) => `${shots.length} ${name}`));

  return (
    <figure className="face-entry">
      <Exportable
        of="face"
        title={`${first.face.name} face at ${textQuantity(first.group.context.distance, 'distance', units)}`}
        note={shown}
        sentence={`${shown}, each shot where it struck.`}
        table={() => shotsTable(drawn, units)}
      >
        <svg width={size + 46} height={size + 56 + both.length * 20 - 16} className="face-sheet">
          <g
            className={over === undefined ? 'face-target' : 'face-target on-dot'}
            role="application"
            aria-label={`${first.face.name} face. ${entering.shots.length} shots in the ${nameOfGroup(entering)} group that is being entered. Arrow keys move the cross, Enter sets a shot, digits number it, Backspace removes it, N begins the next end, L leaves a shot out.`}
            tabIndex={0}
            data-half={view.half}
            data-taken={entry.taken ?? undefined}
            {...entry.handlers}
          >
            <FacePlot
              face={first.face}
              view={view}
              groups={drawn}
              shaftRadius={shaftRadius}
              showShift
              chosen={inGroup(entry.chosen)}
              pointed={inGroup(entry.over)}
            >
              <g data-export="no">
                {entry.cross !== null && (
                  <g
                    className="key-cross"
                    transform={`translate(${toPixel(view, entry.cross).x} ${toPixel(view, entry.cross).y})`}
                  >
                    <path className="case" d="M-14 0H-3M3 0H14M0 -14V-3M0 3V14" />
                    <path d="M-14 0H-3M3 0H14M0 -14V-3M0 3V14" />
                  </g>
                )}
                {chosenShot !== undefined && entering.shots.length > MOST_DRAWN && (
                  // Among thousands of dots the one in hand is a dot too: it is ringed here.
                  <circle
                    className="shot-chosen pulled-shot"
                    cx={toPixel(view, chosenShot).x}
                    cy={toPixel(view, chosenShot).y}
                    r={shaftRadius * scaleOf(view) + 6}
                  />
                )}
                {entry.pulled !== null && (
                  <PulledShot
                    at={toPixel(view, entry.pulled.at)}
                    radius={shaftRadius * scaleOf(view)}
                    second={entering.id === second?.group.id}
                  />
                )}
                {at !== null && (
                  <Loupe
                    face={first.face}
                    view={view}
                    at={at}
                    shaftRadius={shaftRadius}
                    next={`${nextEnd !== null && nextEnd !== end ? `end ${nextEnd}, ` : ''}${nextText(entering.shots, nextEnd)}`}
                    on={
                      over === undefined
                        ? null
                        : onDot(shotName(over, entering.shots).replace(/ of end .*/, ''), over === chosenShot)
                    }
                    units={units}
                    shots={few}
                  />
                )}
              </g>
            </FacePlot>
          </g>
          <Margins view={view} groups={drawn} units={units} />
        </svg>
      </Exportable>
      <p className="heard" role="status">
        {said}
      </p>
    </figure>
  );
});
