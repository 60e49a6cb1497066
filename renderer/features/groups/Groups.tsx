import { useDeferredValue, useMemo } from 'react';
import { shootingStops } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { readBareShaft, readTwoGroups } from '../../../core/trials/index.ts';
import { Fraction, Mark, useSize } from '../../design/index.ts';
import { groupsOf } from '../../state/selectors.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { aloneSentence } from './alone.ts';
import { oneGroup, pairOf, usualShaft } from './derive.ts';
import { FaceWork } from './FaceWork.tsx';
import { GroupDetails } from './GroupDetails.tsx';
import { GroupsAway } from './GroupsAway.tsx';
import { NewGroup } from './NewGroup.tsx';
import { Questions } from './questions/Questions.tsx';
import { MANY_SHOTS } from './questions/useQuestions.ts';
import { ScoreSheets } from './questions/ScoreSheets.tsx';
import { Reading } from './Reading.tsx';
import { usePage } from './store.ts';
import './groups.css';

/** Before anything was shot: the usual indoor round. */
const firstSheet = { distance: 18, face: '40' } as const;

export function Groups() {
  const bundle = useBundle();
  return bundle === null ? null : <GroupsPage bundle={bundle} />;
}

function GroupsPage({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const groups = useBench((state) => groupsOf(state.records, state.setupId));
  const page = usePage(bundle.setup.id);
  const [body, room] = useSize();
  const [column, tall] = useSize();
  const pair = pairOf(groups, page);
  const shaftRadius = (bundle.arrowSet.diameter ?? usualShaft) / 2;
  const first = useMemo(() => (pair.first === null ? null : oneGroup(pair.first, shaftRadius)), [pair.first, shaftRadius]);
  const second = useMemo(() => (pair.second === null ? null : oneGroup(pair.second, shaftRadius)), [pair.second, shaftRadius]);
  const many = (first?.group.shots.length ?? 0) + (second?.group.shots.length ?? 0) > MANY_SHOTS;
  // Of very many shots the face is drawn first, and what is said of them follows. Coming to the page, both follow the headline.
  const [laterFirst, laterSecond] = [useDeferredValue(first), useDeferredValue(second)];
  const [told, beside] = many && laterFirst !== null ? [laterFirst, laterSecond] : [first, second];
  const ready = useDeferredValue(true, !many);
  const reading = useMemo(() => {
    if (told === null || beside === null) return null;
    const [a, b] = [told.group, beside.group];
    if (a.fletching === b.fletching) return { kind: 'two' as const, ...readTwoGroups(a, b, units) };
    const [fletched, bare] = a.fletching === 'fletched' ? [a, b] : [b, a];
    return { kind: 'bare' as const, ...readBareShaft(bundle, fletched, bare, units) };
  }, [bundle, told, beside, units]);

  if (first === null || told === null) {
    return (
      <>
        <div className="head">
          <h1>Put the first group on the face</h1>
          <p>Six fletched arrows and a few bare shafts of the same build are enough to begin. One click is one shot.</p>
        </div>
        <div className="body">
          <NewGroup bundle={bundle} groups={groups} />
          <ScoreSheets bundle={bundle} shaftRadius={shaftRadius} usual={firstSheet} />
          <GroupsAway setupId={bundle.setup.id} />
        </div>
      </>
    );
  }

  const [stop] = shootingStops(bundle, units);
  const entering = second !== null && page.enteringId === second.group.id ? second : first;
  const alone = aloneSentence(told, units);
  const size =
    room === null
      ? null
      : Math.max(280, Math.floor(Math.min(room.width * 0.56 - 46, room.height - (second === null ? 162 : 190), 620)));
  return (
    <>
      <div className="head groups-head">
        <h1>
          <Fraction>{reading?.headline ?? alone.headline}</Fraction>
        </h1>
        <p>
          <Fraction>{reading?.subline ?? alone.subline}</Fraction>
        </p>
        {stop !== undefined && (
          <p className="groups-stop">
            <Mark level="stop" />{' '}
            <Fraction>{`${stop.title}. Shots already shot may be noted; no more are shot until it is mended.`}</Fraction>
          </p>
        )}
      </div>
      <div className="body groups-body" ref={body}>
        {ready && size !== null && (
          <div
            className="groups-left"
            ref={column}
            style={{ width: size + 46, top: Math.min(6, (room?.height ?? 0) - (tall?.height ?? 0) - 8) }}
          >
            <FaceWork bundle={bundle} first={first} second={second} entering={entering} shaftRadius={shaftRadius} size={size} />
          </div>
        )}
        {ready && (
          <div className="groups-right">
            <Reading bundle={bundle} first={told} second={beside} reading={reading} groups={groups} units={units} />
            <Questions bundle={bundle} first={first} second={second} entering={entering} shaftRadius={shaftRadius} />
            <GroupDetails bundle={bundle} first={first.group} second={second?.group ?? null} groups={groups} />
            <ScoreSheets bundle={bundle} shaftRadius={shaftRadius} usual={first.group.context} />
            <GroupsAway setupId={bundle.setup.id} />
          </div>
        )}
      </div>
    </>
  );
}
