import { useMemo } from 'react';
import { face as faceOf } from '../../../../core/group/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { FaceId } from '../../../../core/model/group.ts';
import { Choice, useSize } from '../../../design/index.ts';
import { WhyLink } from '../../../design/WhyLink.tsx';
import { Exportable } from '../../../export/index.ts';
import { Landing } from '../../../plots/landing/Landing.tsx';
import type { LandingData } from '../../../plots/landing/marks.ts';
import { landingTable } from '../../../plots/landing/table.ts';
import { useUnits } from '../../../state/useBench.ts';
import type { Given } from './given.ts';
import { allowOf, type Lands } from './lands.ts';
import { chooseConditions } from './store.ts';
import { allowText, facePicture, missText, saidText, scoreWhy } from './landsWords.ts';
import { useSightReading } from './useSightReading.ts';
import { far, placeTexts } from './words.ts';

const faces = FaceId.options.map((value) => ({ value, text: faceOf(value).name }));
const MOST = 316;

/** The face this archer shoots, with where the group will land for everything that is chosen to go wrong. */
export function LandsOnFace({ bundle, given, lands }: { bundle: Bundle; given: Given; lands: Lands }) {
  const units = useUnits();
  const [place, room] = useSize();
  const { landing, spread } = lands;
  const data: LandingData = useMemo(
    () => ({
      face: given.face,
      centre: landing.place.value,
      low: { x: landing.across.low, y: landing.up.low },
      high: { x: landing.across.high, y: landing.up.high },
      spread,
      names: placeTexts(landing.place.value, units),
    }),
    [given.face, landing, spread, units],
  );
  const size = Math.min(MOST, Math.floor(room?.width ?? MOST));
  const title = 'Where the group will land';
  const note = `${given.face.name} at ${far(given.distance, units)}, to scale. Oval: 95 % of arrows. Bars: the centre’s band over speed and drag.`;
  const reads = useSightReading(bundle);
  const allow = allowOf(given);
  const allowed = allow.ok ? allowText(given, allow.value, reads, units) : null;
  const misses = missText(lands);
  return (
    <section ref={place} className="cond-lands">
      <h2 className="plate">{title}</h2>
      <Exportable
        of="landing"
        title={title}
        note={note}
        sentence={facePicture(given, lands, units)}
        table={() => landingTable(data, units)}
        beneath={
          <div className="cond-beneath">
            <p className="note">{note}</p>
            <Choice
              name="face"
              value={given.face.id}
              options={faces}
              onKeep={(face) => chooseConditions(bundle.setup.id, { face })}
              field="conditions.face"
            />
          </div>
        }
      >
        <Landing data={data} size={size} sentence={facePicture(given, lands, units)} />
      </Exportable>
      <p className="cond-said">
        {saidText(lands, units)} <WhyLink why={scoreWhy(given, lands, units)} about="points" />
      </p>
      {allowed !== null && <p className="cond-said cond-strong">{allowed}</p>}
      {misses !== null && <p className="cond-said">{misses}</p>}
    </section>
  );
}
