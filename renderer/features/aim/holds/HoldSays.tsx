import type { HoldRow } from '../../../../core/aim/index.ts';
import { WhyLink } from '../../../design/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { holdSentence } from '../words.ts';
import type { Aimed } from './derive.ts';
import { holdWhy } from './why.ts';
import { crawlSentence, whereItLies } from './words.ts';

/** The hold in hand in words: how far off, where that lies, and what to do about it. */
export function HoldSays({ aimed, row, crawls }: { aimed: Aimed; row: HoldRow; crawls: boolean }) {
  const units = useUnits();
  const walked = crawls ? crawlSentence(row, units) : null;
  return (
    <>
      <h2 className="plate">{holdSentence(row.distance, row.hold, units)}</h2>
      <p>
        {walked ?? whereItLies(row, units)} <WhyLink why={holdWhy(aimed, row, units)} about="the point of aim" />
      </p>
    </>
  );
}
