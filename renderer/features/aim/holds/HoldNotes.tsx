import { useMemo } from 'react';
import { textQuantity } from '../../../../core/units/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { depthRange } from '../words.ts';
import { strikesHigher, type Aimed, type HoldLine, type Holds } from './derive.ts';
import { aLittle, about } from './words.ts';

interface Props {
  aimed: Aimed;
  holds: Holds;
  lines: readonly HoldLine[];
  chosen: number;
  crawls: boolean;
}

/** How the table is to be read, and how far it is to be trusted. */
export function HoldNotes({ aimed, holds: { pointOn, widest }, lines, chosen, crawls }: Props) {
  const units = useUnits();
  const { size, name } = aLittle(units);
  const higher = useMemo(() => strikesHigher(aimed, chosen, size), [aimed, chosen, size]);
  const drop = (height: number) => textQuantity(Math.abs(height), 'drop', units);
  const said = [
    pointOn.ok && 'Nearer than point on the tip is held below the centre, farther above it.',
    'Heights are in the plane of the target.',
    widest.ok &&
      `Held lowest, ${drop(widest.value.hold.value)} below (${depthRange(widest.value.hold, units)}), at about ${about(widest.value.distance, units)}.`,
    higher !== null &&
      `${name} more from the arrow up to the eye sends the arrow ${drop(higher)} higher at ${textQuantity(chosen, 'distance', units)}: measure it at full draw, then shoot each point of aim in, the nearest first.`,
    crawls && 'What a crawl does to speed and to the balance of the limbs is not in it.',
    lines.some((line) => line.row === null) && 'Dash: farther than this bow should be raised for.',
  ];
  return <p className="note">{said.filter((one) => one !== false).join(' ')}</p>;
}
