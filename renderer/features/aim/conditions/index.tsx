import { useDeferredValue } from 'react';
import { useUnits } from '../../../state/useBench.ts';
import type { Head, Part, PartProps } from '../part.ts';
import { DistanceBlock } from './DistanceBlock.tsx';
import { HillBlock } from './Hill.tsx';
import { LandsOnFace } from './Lands.tsx';
import { landsOf, wrongHere } from './lands.ts';
import { useGiven } from './useGiven.ts';
import { WindBlock } from './WindBlock.tsx';
import { landsTitle, scoredText } from './landsWords.ts';
import { refusedTitle } from './words.ts';
import { WrongTable } from './WrongTable.tsx';
import './conditions.css';

function useHead(props: PartProps): Head {
  const units = useUnits();
  // The sliders go first; what follows from them may come a frame later.
  const given = useDeferredValue(useGiven(props));
  const lands = landsOf(given);
  if (!lands.ok) return { title: refusedTitle(lands.problem.code), note: lands.problem.sentence };
  return { title: landsTitle(given, lands.value, wrongHere(given), units), note: scoredText(given, units) };
}

function Body(props: PartProps) {
  const { bundle } = props;
  const given = useGiven(props);
  const later = useDeferredValue(given);
  const lands = landsOf(later);
  return (
    <div className="cond">
      <div className="cond-left">
        {lands.ok ? (
          <LandsOnFace bundle={bundle} given={later} lands={lands.value} />
        ) : (
          <p className="cond-said">{lands.problem.sentence}</p>
        )}
      </div>
      <div className="cond-right">
        <HillBlock bundle={bundle} given={given} later={later} />
        <WindBlock bundle={bundle} given={given} later={later} />
        <DistanceBlock bundle={bundle} given={given} later={later} row={wrongHere(later)} />
        <WrongTable given={later} />
      </div>
    </div>
  );
}

/** What a hill, a wind or a wrong distance does to where the arrows land, what it costs, and what to allow for it. */
export const conditionsPart: Part = { name: 'Hill, wind, wrong distance', useHead, Body };
