import { useState } from 'react';
import { face as faceOf } from '../../../../core/group/index.ts';
import type { ShotGroup } from '../../../../core/model/group.ts';
import type { Picture } from '../../../../core/model/picture.ts';
import { toPicture } from '../../../../core/photo/index.ts';
import { Dialog } from '../../../design/index.ts';
import { now } from '../../../state/clock.ts';
import { edited } from '../../../state/bench.ts';
import { recordsOf } from '../../../state/selectors.ts';
import { useBench, useBenchApi, useUnits } from '../../../state/useBench.ts';
import { shelfText } from '../shelfText.ts';
import { lengthText } from './fineText.ts';
import { HoleMarks } from './HoleMarks.tsx';
import { RingLines } from './RingLines.tsx';
import { useStageSize } from './useStageSize.ts';
import './photo.css';

/** The photos that a group's shots were read off: to be looked at again with the shots as they are now. */
export function KeptPhoto({ group, text }: { group: ShotGroup; text: string }) {
  const pictures = useBench((state) => recordsOf(state.records, 'picture'));
  const [open, setOpen] = useState<Picture['id'] | null>(null);
  const own = pictures.filter(({ groupId }) => groupId === group.id);
  const shown = own.find(({ id }) => id === open);
  return (
    <>
      {own.map(({ id }, i) => (
        <button key={id} type="button" className="link" onClick={() => setOpen(id)}>
          {own.length === 1 ? text : `${text}, ${i + 1} of ${own.length}`}
        </button>
      ))}
      {shown !== undefined && <PhotoPage group={group} picture={shown} onClose={() => setOpen(null)} />}
    </>
  );
}

function PhotoPage({ group, picture, onClose }: { group: ShotGroup; picture: Picture; onClose(): void }) {
  const units = useUnits();
  const bench = useBenchApi();
  const size = useStageSize();
  const face = faceOf(group.context.face);
  const scale = size / Math.max(picture.width, picture.height);
  const [width, height] = [Math.round(picture.width * scale), Math.round(picture.height * scale)];
  const holes = group.shots.map((shot) => {
    const { x, y } = toPicture(picture.homography, shot);
    return { id: shot.id, arrow: shot.arrow, at: { x: x * width, y: y * width } };
  });
  const away = async () => {
    const done = await bench.getState().change('A photo put away', (records) => {
      const record = records.get(picture.id);
      return record?.kind === 'picture' ? [edited(record, { archivedAt: now() })] : [];
    });
    if (done) onClose();
  };
  const count = group.shots.length === 1 ? '1 shot' : `${group.shots.length} shots`;
  return (
    <Dialog
      title={`Photo of the group: ${shelfText(group, units)}`}
      size="tall"
      onClose={onClose}
      foot={
        <>
          <button type="button" className="btn" onClick={onClose}>
            Close
          </button>
          <button type="button" className="link" onClick={() => void away()}>
            Put this photo away
          </button>
        </>
      }
    >
      <div className="sheet-scroll">
        <div className="photo-stage" style={{ width, height }}>
          <img src={`data:image/jpeg;base64,${picture.jpeg}`} width={width} height={height} alt="" />
          <svg
            width={width}
            height={height}
            role="img"
            aria-label={`Photo of the ${face.name} face, with its rings and the ${count} of the group as they are now.`}
          >
            <RingLines face={face} homography={picture.homography} width={width} />
            <HoleMarks holes={holes} radius={6} width={width} height={height} chosen={null} />
          </svg>
        </div>
        <p className="note photo-under">
          The shots as they are now; the rings of the photo lie {lengthText(picture.residual, units)} off the face’s, root mean
          square.
        </p>
      </div>
    </Dialog>
  );
}
