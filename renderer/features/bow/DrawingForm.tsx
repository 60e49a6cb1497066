import { useMemo, useRef } from 'react';
import type { Finding } from '../../../core/findings/finding.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { BowDrawing } from '../../drawing/bow/BowDrawing.tsx';
import { drawnBow, figuresOf } from '../../drawing/bow/drawn.ts';
import { onDrawing, type BowTexts, type OnDrawing } from '../../drawing/bow/standing.ts';
import { useEased } from '../../drawing/useEased.ts';
import { Figure } from '../../design/index.ts';
import { Exportable } from '../../export/index.ts';
import { ForceDrawPlot } from '../../plots/forceDraw/ForceDrawPlot.tsx';
import { useUnits } from '../../state/useBench.ts';
import { Curves } from './Curves.tsx';
import { Details } from './Details.tsx';
import { drawnFigures, textOf } from './drawnFigures.ts';
import { NotDrawn } from './NotDrawn.tsx';
import type { BowFields } from './useBowFields.ts';

interface Props {
  bundle: Bundle;
  fields: BowFields;
  findings: readonly Finding[];
  width: number;
  height: number;
}

/** The right column keeps this width, and stands off by so much [px]. */
const COLUMN = 212;
const OFF = 28;
/** Lower than this a bow is too small to read; higher, its scale is no larger for it [px]. */
const LOWEST = 560;
const HIGHEST = 760;
/** The links that save the drawing stand under it, on the same page [px]. */
const LINKS = 28;

/** The drawing as the form: bow, details and curves; what is set and not drawn beside and below it. */
export function DrawingForm({ bundle, fields, findings, width, height }: Props) {
  const units = useUnits();
  const target = useMemo(() => drawnBow(bundle), [bundle]);
  const eased = useEased(figuresOf(target));
  const bow = useMemo(() => ({ ...target, ...eased }), [target, eased]);
  const figures = drawnFigures(fields, target, findings);
  const texts = JSON.stringify(onDrawing.map((which) => [which, textOf(figures[which], units)]));
  // The room that texts take changes less often than the page is drawn.
  const written = useMemo(
    (): BowTexts => ({
      figures: Object.fromEntries(JSON.parse(texts) as [OnDrawing, BowTexts['figures'][OnDrawing]][]) as BowTexts['figures'],
    }),
    [texts],
  );
  const details = useRef<HTMLDivElement>(null);
  const column = width < 640 ? 190 : COLUMN;
  const sheet = width - column - OFF;
  const half = Math.floor((width - 32) / 2);
  return (
    <div className="bow-page">
      <div className="bow-sheet" style={{ gridTemplateColumns: `${sheet}px ${column}px`, columnGap: OFF }}>
        <div>
          <Exportable
            of="bow"
            title={bundle.bow.name}
            note={`${bundle.setup.name}. Grey is drawn, not measured.`}
            sentence={`Scale drawing of ${bundle.bow.name}, a ${bundle.bow.bowKind}, from its side and from behind.`}
            beside={details}
          >
            <BowDrawing
              bow={bow}
              texts={written}
              figures={figures}
              width={sheet}
              height={Math.min(HIGHEST, Math.max(LOWEST, height - LINKS))}
              corner={<Corner bundle={bundle} fields={fields} />}
            />
          </Exportable>
        </div>
        <div>
          <ForceDrawPlot bundle={bundle} width={column} />
          <div ref={details}>
            <Details bundle={bundle} bow={bow} nocking={figures.nocking} centre={figures.centre} width={column} />
          </div>
        </div>
      </div>
      {bundle.bow.bowKind === 'compound' && (
        <p className="note">
          A compound is recorded here in outline. What the bench says of a finger’s loose does not hold for it.
        </p>
      )}
      <NotDrawn bundle={bundle} fields={fields} />
      <Curves bundle={bundle} findings={findings} width={half} />
    </div>
  );
}

/** What is set with a key or felt with a thumb, on the free ground of the drawing. */
function Corner({ bundle, fields: { settings } }: Pick<Props, 'bundle' | 'fields'>) {
  return (
    <div className="compact">
      <h2 className="plate">Set, not drawn</h2>
      <Figure {...settings.weightOnFingers} />
      {bundle.bow.arrowPass === 'rest and button' && <Figure {...settings.buttonTurns} />}
      {bundle.bow.bowKind === 'take-down recurve' && (
        <>
          <Figure {...settings.upperBolt} />
          <Figure {...settings.lowerBolt} />
        </>
      )}
    </div>
  );
}
