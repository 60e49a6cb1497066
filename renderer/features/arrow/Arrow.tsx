import { useMemo } from 'react';
import { dependentsStopped } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { DimensionFigure } from '../../drawing/dimension/DimensionFigure.tsx';
import { Fraction, useSize } from '../../design/index.ts';
import { ArrowDrawing } from '../../drawing/arrow/ArrowDrawing.tsx';
import { arrowLayout } from '../../drawing/arrow/layout.ts';
import { Exportable } from '../../export/index.ts';
import { Bends } from '../../plots/modes/Bends.tsx';
import { useBundle, useUnits } from '../../state/useBench.ts';
import { HeadWithSwitch } from '../frame/FormSwitch.tsx';
import { useFormKind } from '../frame/formKind.ts';
import { useSayDrawn } from '../frame/drawnAt.ts';
import { Headline } from '../frame/Headline.tsx';
import { useFindings } from '../frame/useFindings.ts';
import { ArrowForm } from './ArrowForm.tsx';
import { assumedFigures } from './assumed.ts';
import {
  arrowFollows,
  bendsOf,
  bendsTitle,
  drawnSentence,
  nothingEntered,
  spineFacts,
  suitabilityOf,
  suitsSentence,
} from './derive.ts';
import { Dozen } from './dozen/Dozen.tsx';
import { Facts } from './Facts.tsx';
import { ShaftDetails } from './ShaftDetails.tsx';
import { fieldLevels, useArrowFields } from './useArrowFields.ts';
import { useDrawnSet } from './useDrawnSet.ts';
import { Wants } from './Wants.tsx';
import './arrow.css';

/** The arrow on its own length: dimensions, masses and bends; below it what this bow wants, and the numbered set. */
export function Arrow() {
  const bundle = useBundle();
  return bundle === null ? null : <ArrowPage bundle={bundle} />;
}

function ArrowPage({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const [place, room] = useSize();
  const { arrowSet } = bundle;
  const plain = useFormKind() === 'plain form';
  const answer = useMemo(() => suitabilityOf(bundle), [bundle]);
  const width = room?.width ?? null;
  const blank = nothingEntered(arrowSet);
  const findings = useFindings();
  const levels = useMemo(() => fieldLevels(findings), [findings]);
  const drawn = useDrawnSet(arrowSet);
  const layout = useMemo(
    () => (width === null ? null : arrowLayout(arrowSet, units, width, new Set(Object.keys(levels)), drawn)),
    [arrowSet, units, width, levels, drawn],
  );
  useSayDrawn(plain || layout === null ? null : layout.scale.ratio);
  return (
    <>
      <HeadWithSwitch>
        <Headline
          screen="arrow"
          clear={suitsSentence(answer, units)}
          blank={blank}
          note={
            blank
              ? 'Length, spine and point first. Grey is drawn, not measured.'
              : plain || layout === null
                ? 'A spine is a deflection with its span and its load; a bare number such as 500 says neither.'
                : drawnSentence(layout.scale)
          }
        />
      </HeadWithSwitch>
      <div className="body">
        <div ref={place}>
          {layout !== null && (
            <ArrowBody
              bundle={bundle}
              answer={answer}
              layout={layout}
              levels={levels}
              plain={plain}
              stopped={dependentsStopped(findings)}
            />
          )}
        </div>
      </div>
    </>
  );
}

interface BodyProps {
  bundle: Bundle;
  answer: ReturnType<typeof suitabilityOf>;
  layout: ReturnType<typeof arrowLayout>;
  levels: ReturnType<typeof fieldLevels>;
  plain: boolean;
  stopped: boolean;
}

function ArrowBody({ bundle, answer, layout, levels, plain, stopped }: BodyProps) {
  const units = useUnits();
  const { arrowSet } = bundle;
  const { picture, measured, scale } = layout;
  const { width } = scale;
  const assumed = useMemo(() => assumedFigures(arrowSet, measured), [arrowSet, measured]);
  const fields = useArrowFields(arrowSet, assumed, levels);
  const follows = useMemo(() => arrowFollows(bundle, units), [bundle, units]);
  const bends = useMemo(() => bendsOf(arrowSet, units), [arrowSet, units]);
  // What it does on this bow's string is not told while a stop stands.
  const bendsHeading = bends.ok ? bendsTitle(bends.value, stopped ? null : answer) : 'How it bends';
  const spine = useMemo(() => spineFacts(arrowSet, units), [arrowSet, units]);
  return (
    <>
      {plain ? (
        <ArrowForm arrowSet={arrowSet} fields={fields} />
      ) : (
        <Exportable
          of="arrow"
          title={arrowSet.name}
          note="Grey is drawn, not measured."
          sentence={`Scale drawing of an arrow of ${arrowSet.name}, with its masses where they stand along it.`}
        >
          <ArrowDrawing
            layout={layout}
            figures={{
              length: fields.length,
              balance: fields.balance,
              nock: fields.nockMass,
              pin: fields.pinMass,
              wrap: fields.wrapMass,
              fletching: fields.fletchingMass,
              shaft: fields.linearDensity,
              insert: fields.insertMass,
              point: fields.pointMass,
            }}
          />
        </Exportable>
      )}
      <Facts facts={follows.facts}>
        {!plain && (
          <div className="fact-field">
            <DimensionFigure {...fields.weighed} box={{ left: 0, top: 0, right: 112, bottom: 0 }} anchor="start" />
          </div>
        )}
      </Facts>
      {follows.missing !== null && (
        <p className="note faint">
          <Fraction>{follows.missing}</Fraction>
        </p>
      )}
      <section className="bends-section">
        <h2 className="plate">{bendsHeading}</h2>
        {bends.ok ? (
          <Exportable
            of="bends"
            title={bendsHeading}
            note={arrowSet.name}
            sentence={`The first three bends of an arrow of ${arrowSet.name}, with their nodes.`}
          >
            <Bends bends={bends.value} along={{ throat: scale.throat, perMetre: scale.perMetre, width }} />
          </Exportable>
        ) : (
          <p className="note">
            <Fraction>{bends.problem.sentence}</Fraction>
          </p>
        )}
      </section>
      {!plain && (
        <ShaftDetails
          arrowSet={arrowSet}
          picture={picture}
          fields={fields}
          width={width}
          marked={levels.deflection !== undefined}
        />
      )}
      <Facts facts={spine.facts} />
      {spine.missing !== null && (
        <p className="note faint">
          <Fraction>{spine.missing}</Fraction>
        </p>
      )}
      <Wants bundle={bundle} answer={answer} width={width} />
      <Dozen bundle={bundle} width={width} />
    </>
  );
}
