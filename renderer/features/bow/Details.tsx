import { useMemo } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { DrawnFigure } from '../../drawing/bow/BowDrawing.tsx';
import { CentreDetail } from '../../drawing/bow/CentreDetail.tsx';
import { centreDetail, nockingDetail } from '../../drawing/bow/details.ts';
import type { DrawnBow } from '../../drawing/bow/figures.ts';
import { bowShape } from '../../drawing/bow/geometry.ts';
import { NockingDetail } from '../../drawing/bow/NockingDetail.tsx';
import { useUnits } from '../../state/useBench.ts';
import { Datum, datumText } from './choices.tsx';
import { textOf } from './drawnFigures.ts';

interface Props {
  bundle: Bundle;
  bow: DrawnBow;
  nocking: DrawnFigure;
  centre: DrawnFigure;
  width: number;
}

/** The two places that a bow drawn whole is too small to show: where the nock stands, and where the shaft stands beside the string. */
export function Details({ bundle, bow, nocking, centre, width }: Props) {
  const units = useUnits();
  const rest = useMemo(() => bowShape(bow).rest[0], [bow]);
  const a = nockingDetail(bow, textOf(nocking, units), width);
  const b = centreDetail(bow, rest, textOf(centre, units), width);
  const readAt = `read at ${datumText[bundle.setup.settings.centreShotDatum]}`;
  return (
    <>
      <section className="bow-detail">
        <h3>
          <b data-export-text="">A</b> <i data-export-text="">nocking point, at the string</i>{' '}
          <span data-export-text="">{a.scale}</span>
        </h3>
        <NockingDetail marks={a} figure={nocking} measured={bow.measured.nocking} />
      </section>
      <section className="bow-detail">
        <h3>
          <b data-export-text="">B</b> <i data-export-text="">centre shot, from behind</i>{' '}
          <span data-export-text="">{b.scale}</span>
        </h3>
        <CentreDetail marks={b} figure={centre} bow={bow} />
        <div className="compact" data-export-text={readAt}>
          <Datum bundle={bundle} />
        </div>
      </section>
    </>
  );
}
