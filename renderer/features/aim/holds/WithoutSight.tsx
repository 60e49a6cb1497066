import { useMemo } from 'react';
import { standingEye, type HoldRow } from '../../../../core/aim/index.ts';
import { fieldOf } from '../../../../core/findings/index.ts';
import { face } from '../../../../core/group/index.ts';
import type { Problem } from '../../../../core/model/problem.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { groupsOf } from '../../../state/selectors.ts';
import { useBench, useUnits } from '../../../state/useBench.ts';
import { tableDistances } from '../distances.ts';
import { GoLink } from '../GoLink.tsx';
import type { PartProps } from '../part.ts';
import { PrintButton } from '../print/index.ts';
import { chooseInAim, useAimChoice } from '../store.ts';
import { depthRange, holdSentence } from '../words.ts';
import { AnchorChange } from './AnchorChange.tsx';
import { aimedBy, holdAt, holdDistances, holdLines, holdsOf, perMillimetre, type Aimed } from './derive.ts';
import { HeldBy } from './HeldBy.tsx';
import { HoldTable } from './HoldTable.tsx';
import { pointsMaker } from './paper.ts';
import { holdsTable } from './table.ts';
import { ViewOfHold } from './ViewOfHold.tsx';
import { about, whereItLies } from './words.ts';

/** Where to hold the tip of the arrow when there is no sight: the archer's view of one distance, and the table of them all. */
export function WithoutSight({ bundle, picture }: PartProps) {
  const { basis } = picture;
  const { eyeUp } = useAimChoice(bundle.setup.id);
  const aimed = useMemo(() => aimedBy(bundle, basis, eyeUp ?? standingEye), [bundle, basis, eyeUp]);
  return (
    <>
      <HeldBy bundle={bundle} aimAt={picture.withoutSight.distance} />
      {aimed.ok ? <Points bundle={bundle} picture={picture} aimed={aimed.value} /> : <Missing problem={aimed.problem} />}
    </>
  );
}

function Points({ bundle, picture, aimed }: PartProps & { aimed: Aimed }) {
  const units = useUnits();
  const records = useBench((state) => state.records);
  const faceId = groupsOf(records, bundle.setup.id).at(-1)?.context.face ?? '80';
  const chosen = picture.withoutSight.distance;
  const holds = useMemo(() => holdsOf(aimed), [aimed]);
  const distances = useMemo(() => holdDistances(holds.pointOn, chosen, units), [holds, chosen, units]);
  const lines = useMemo(() => holdLines(aimed, distances), [aimed, distances]);
  const moved = useMemo(() => {
    const usual = tableDistances(units, chosen);
    return lines.flatMap(({ distance, row }) => (row !== null && usual.includes(distance) ? [distance] : []));
  }, [lines, units, chosen]);
  const makers = useMemo(() => ({ points: pointsMaker(aimed, face(faceId), units) }), [aimed, faceId, units]);
  const row = useMemo(() => holdAt(aimed, chosen), [aimed, chosen]);
  const perMm = useMemo(() => perMillimetre(aimed, chosen), [aimed, chosen]);
  const { widest } = holds;
  return (
    <>
      <div className="holds-says">
        <div>{row.ok ? <HoldSays row={row.value} /> : <p>{row.problem.sentence}</p>}</div>
        <PrintButton bundle={bundle} label="Print card" makers={makers} />
      </div>
      <div className="holds-lower">
        {row.ok && (
          <ViewOfHold
            bundle={bundle}
            aimed={aimed}
            row={row.value}
            diameter={picture.basis.diameter.value}
            faceId={faceId}
            table={() => holdsTable(lines, units)}
          />
        )}
        <div>
          <HoldTable
            lines={lines}
            chosen={chosen}
            crawls={bundle.setup.form.hook === 'string walk'}
            onChoose={(aimAt) => chooseInAim(bundle.setup.id, { aimAt })}
          />
          <p className="note">
            {holds.pointOn.ok && 'Nearer than point on the tip is held below the centre, farther above it. '}
            Heights are in the plane of the target.{' '}
            {widest.ok &&
              `Held lowest, ${textQuantity(Math.abs(widest.value.hold.value), 'drop', units)} below (${depthRange(widest.value.hold, units)}), at about ${about(widest.value.distance, units)}. `}
            {perMm !== null &&
              `One millimetre more from the arrow up to the eye sends the arrow ${textQuantity(perMm, 'drop', units)} higher at ${textQuantity(chosen, 'distance', units)}: measure it at full draw, then shoot each point of aim in, the nearest first. `}
            {lines.some((line) => line.row === null) && 'Dash: farther than this bow should be raised for.'}
          </p>
        </div>
      </div>
      <AnchorChange bundle={bundle} aimed={aimed} distances={moved} />
    </>
  );
}

function HoldSays({ row }: { row: HoldRow }) {
  const units = useUnits();
  return (
    <>
      <h2 className="plate">{holdSentence(row.distance, row.hold, units)}</h2>
      <p>{whereItLies(row, units)}</p>
    </>
  );
}

function Missing({ problem }: { problem: Problem }) {
  return (
    <p>
      {problem.sentence}{' '}
      <GoLink to={problem.field === 'eyeHeight' ? ['aim', 'form.eyeHeight'] : fieldOf(problem.field, ['aim', 'aim.aimAt'])}>
        Enter it
      </GoLink>
    </p>
  );
}
