import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { FigureProps } from '../../design/index.ts';
import { NockEndDetail, SectionDetail, TesterDetail } from '../../drawing/arrow/Details.tsx';
import { detailWidths, nockEnd } from '../../drawing/arrow/nockEnd.ts';
import type { ArrowPicture } from '../../drawing/arrow/picture.ts';
import { shaftSection } from '../../drawing/arrow/section.ts';
import { spineTester } from '../../drawing/arrow/tester.ts';
import { useUnits } from '../../state/useBench.ts';
import { ArrowName } from './ArrowForm.tsx';
import { Convention, Material } from './choices.tsx';
import type { ArrowField } from './useArrowFields.ts';

interface Props {
  arrowSet: ArrowSet;
  picture: ArrowPicture;
  fields: Readonly<Record<ArrowField, FigureProps>>;
  width: number;
  /** Whether a finding’s mark stands beside the deflection. */
  marked: boolean;
}

/** What is too small to stand on the arrow itself: the shaft on its tester, cut across, and its nock end. */
export function ShaftDetails({ arrowSet, picture, fields, width, marked }: Props) {
  const units = useUnits();
  const widths = detailWidths(width);
  const tester = spineTester(arrowSet, units, widths.spine, fields.deflection.assumed ?? null, marked);
  const section = shaftSection(arrowSet, picture, units, widths.section);
  const nock = nockEnd(arrowSet, picture, units, widths.nock);
  return (
    <div className="shaft-details">
      <div style={{ width: tester.width }}>
        <h3>The spine, on its tester</h3>
        <TesterDetail layout={tester} measured={arrowSet.deflection !== null} figure={fields.deflection} />
        <Convention arrowSet={arrowSet} />
      </div>
      <div style={{ width: section.width }}>
        <h3>Cut across, {section.ratio}</h3>
        <SectionDetail
          layout={section}
          known={{ diameter: arrowSet.diameter !== null, wall: arrowSet.wall !== null }}
          figures={fields}
        />
        <Material arrowSet={arrowSet} />
      </div>
      <div style={{ width: nock.width }}>
        <h3>The nock end, {nock.ratio}</h3>
        <NockEndDetail
          layout={nock}
          material={arrowSet.material}
          known={{ vaneFromThroat: arrowSet.vaneFromThroat !== null, vaneLength: arrowSet.vaneLength !== null }}
          figures={fields}
        />
        <ArrowName arrowSet={arrowSet} />
      </div>
    </div>
  );
}
