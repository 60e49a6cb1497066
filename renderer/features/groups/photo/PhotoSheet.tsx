import { useMemo, useState } from 'react';
import { face as faceOf } from '../../../../core/group/index.ts';
import type { ShotGroup } from '../../../../core/model/group.ts';
import type { PicturePoint } from '../../../../core/model/picture.ts';
import { toPicture, upright } from '../../../../core/photo/index.ts';
import { EntrySheet } from '../../../design/entry/index.ts';
import { useBenchApi, useBundle, useUnits } from '../../../state/useBench.ts';
import { usualShaft } from '../derive.ts';
import { endOfNext, nextText, shotName } from '../entry/ends.ts';
import { useEntry } from '../entry/store.ts';
import { ChoosePicture } from './ChoosePicture.tsx';
import { cropOf, homographyIn } from './crop.ts';
import { FitTold } from './FitTold.tsx';
import { FlatFace } from './FlatFace.tsx';
import { HoleList } from './HoleList.tsx';
import { placed, shotsOf, type Hole } from './holes.ts';
import { keepPhoto } from './keepPhoto.ts';
import { MarkRings } from './MarkRings.tsx';
import { changed, nextId, without } from './points.ts';
import { fitOf, radiusOf, shortOf, toolOf, toolsFor, type RingPoint, type Tool } from './ringMarks.ts';
import { RawPhoto } from './RawPhoto.tsx';
import { usePhoto } from './usePhoto.ts';
import { useStageSize } from './useStageSize.ts';
import { WorkTold } from './WorkTold.tsx';
import './photo.css';

const WOULD_LOSE = 'Another picture would lose what is marked here: keep the shots, or take the marks out first.';
const NOT_SMALL = 'The picture could not be made small enough to be kept. Choose it again.';

/** Shots read off a photo of the target: a picture, its rings, the straightened face, and a click a hole. Kept as one Change, with the picture made small. */
export function PhotoSheet({ group, onClose }: { group: ShotGroup; onClose(): void }) {
  const units = useUnits();
  const bench = useBenchApi();
  const ends = useEntry(group.id);
  const shaftRadius = (useBundle()?.arrowSet.diameter ?? usualShaft) / 2;
  const face = useMemo(() => faceOf(group.context.face), [group.context.face]);
  const tools = useMemo(() => toolsFor(face), [face]);
  const { photo, work, found, wrong, open, find, stop, flat, small } = usePhoto(group.context.face);
  const [holes, setHoles] = useState<readonly Hole[]>([]);
  const [marks, setMarks] = useState<readonly RingPoint[]>([]);
  const [up, setUp] = useState<PicturePoint | null>(null);
  const [side, setSide] = useState<'flat' | 'photo' | null>(null);
  const [tool, setTool] = useState<Tool>(tools[0]?.value ?? toolOf(0));
  const [told, setTold] = useState<string | null>(null);
  const size = useStageSize();

  const byHand = useMemo(() => fitOf(marks), [marks]);
  const fit = useMemo(() => {
    const base = byHand?.ok === true ? byHand.value : (found?.fit ?? null);
    return base === null || up === null ? base : upright(base, { above: up });
  }, [byHand, found, up]);
  const isFlat = fit !== null && (side ?? (found === null ? 'photo' : 'flat')) === 'flat';
  const places = useMemo(() => (fit === null ? [] : placed(holes, fit)), [holes, fit]);
  const shots = useMemo(() => shotsOf(group.shots, places, ends), [group.shots, places, ends]);
  const all = [...group.shots, ...shots];
  const read = holes.flatMap(({ id }, i) => {
    const shot = shots[i];
    return shot === undefined ? [] : [{ id, place: { x: shot.x, y: shot.y }, arrow: shot.arrow, name: shotName(shot, all) }];
  });

  const begin = async (file: Blob): Promise<void> => {
    setTold(null);
    if (holes.length + marks.length > 0) return setTold(WOULD_LOSE);
    if (!(await open(file))) return;
    setUp(null);
    setSide(null);
    await find(null);
  };
  const number = (id: number, arrow: number | null) => setHoles(changed(holes, id, { arrow: arrow ?? 'none' }));
  const addMark = (at: PicturePoint): number | null => {
    const radius = radiusOf(tool);
    if (radius !== null) {
      const id = nextId(marks);
      setMarks([...marks, { id, radius, picture: at }]);
      return id;
    }
    if (tool === 'up') setUp(at);
    else {
      setMarks([]);
      setUp(null);
      void find(at);
    }
    return null;
  };
  const keep = async (): Promise<boolean> => {
    if (fit === null || photo === null) return false;
    const crop = cropOf(fit.homography, group.context.face, shots, photo);
    const kept = await small(crop);
    if (kept === null) {
      setTold(NOT_SMALL);
      return false;
    }
    const picture = { ...kept, homography: [...homographyIn(fit.homography, crop, photo)], residual: fit.residual };
    return keepPhoto(bench, group.id, places, picture);
  };

  // What was not found is no news once it is marked.
  const sentence = told ?? (byHand?.ok === true ? null : wrong);
  const count = `${holes.length} ${holes.length === 1 ? 'shot' : 'shots'}`;
  return (
    <EntrySheet
      title="Shots from a photo"
      wide
      keep={holes.length === 0 ? 'Keep the shots' : `Keep ${count}`}
      changed={holes.length + marks.length > 0}
      nothing={read.length === 0}
      wrong={null}
      held={group.shots}
      onKeep={keep}
      onClose={onClose}
    >
      <div className="photo-sheet">
        <div className="photo-left" style={{ width: size, minHeight: size + 28 }}>
          {work !== null && <WorkTold work={work} onStop={() => void stop()} />}
          {photo === null && work === null && (
            <div className="photo-none" style={{ height: size }}>
              <ChoosePicture again={false} onChoose={(file) => void begin(file)} />
              <p className="note">or drop one here, or paste it.</p>
              <p className="note faint">
                Stand in front of the target with the whole face in view. The picture stays on this computer.
              </p>
            </div>
          )}
          {photo !== null && work === null && isFlat && (
            <FlatFace
              face={face}
              homography={fit.homography}
              size={size}
              holes={read}
              shaftRadius={shaftRadius}
              next={nextText(all, endOfNext(all, ends))}
              units={units}
              flat={flat}
              onAdd={(at) => {
                const id = nextId(holes);
                setHoles([...holes, { id, picture: toPicture(fit.homography, at), arrow: null }]);
                return id;
              }}
              onMove={(id, at) => setHoles(changed(holes, id, { picture: toPicture(fit.homography, at) }))}
              onTake={(id) => setHoles(without(holes, id))}
              onNumber={number}
            />
          )}
          {photo !== null && !isFlat && (
            <RawPhoto
              face={face}
              photo={photo}
              homography={fit?.homography ?? null}
              size={size}
              marks={marks}
              up={up}
              tool={shortOf(tool, face)}
              onAdd={addMark}
              onMove={(id, picture) => setMarks(changed(marks, id, { picture }))}
              onTake={(id) => setMarks(without(marks, id))}
            />
          )}
        </div>
        <div className="photo-right">
          <p className="note">
            Read as the group’s face: <strong>{face.name}</strong>.
            {group.shots.length > 0 &&
              ` The ${group.shots.length === 1 ? 'shot' : `${group.shots.length} shots`} that the group has ${group.shots.length === 1 ? 'stays' : 'stay'}.`}
          </p>
          {sentence !== null && (
            <p className="note caution-text" role="alert">
              {sentence}
            </p>
          )}
          {photo !== null && work === null && (
            <>
              {fit !== null && (
                <FitTold
                  face={face}
                  fit={fit}
                  byHand={byHand?.ok === true}
                  isUp={up !== null}
                  notes={found !== null && byHand?.ok !== true && up === null ? found.notes : []}
                  units={units}
                />
              )}
              {isFlat ? (
                <>
                  <HoleList holes={read} units={units} onNumber={number} onTake={(id) => setHoles(without(holes, id))} />
                  <div className="acts">
                    <button type="button" className="link" onClick={() => setSide('photo')}>
                      Mark the rings or the way up
                    </button>
                    <ChoosePicture again onChoose={(file) => void begin(file)} />
                  </div>
                </>
              ) : (
                <MarkRings
                  tools={tools}
                  tool={tool}
                  marks={marks}
                  wants={byHand?.ok === false ? byHand.problem.sentence : null}
                  canFlatten={fit !== null}
                  onTool={setTool}
                  onClear={() => setMarks([])}
                  onFlatten={() => setSide('flat')}
                >
                  <ChoosePicture again onChoose={(file) => void begin(file)} />
                </MarkRings>
              )}
            </>
          )}
        </div>
      </div>
    </EntrySheet>
  );
}
