import { useMemo } from 'react';
import type { TrialInput, TrialPlot, TrialReading } from '../../../core/trials/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { useSize } from '../../design/index.ts';
import { Exportable } from '../../export/index.ts';
import { Along } from '../../plots/trial/Along.tsx';
import { Shifts } from '../../plots/trial/Shifts.tsx';
import { Tears } from '../../plots/trial/Tears.tsx';
import { Touches } from '../../plots/trial/Touches.tsx';
import { WalkBack } from '../../plots/trial/WalkBack.tsx';
import { usualShaft } from '../groups/derive.ts';
import { heightsData, sizesData, unitFor } from './pictureData.ts';
import { pictureTable } from './pictureTable.ts';
import { pictureNote, pictureSentence } from './pictureWords.ts';
import { turnText } from './touched.ts';

interface Props {
  plot: TrialPlot;
  input: TrialInput;
  reading: TrialReading;
}

/** The picture of what was read, by the kind of numbers it draws; it can be saved like any other. */
export function TrialPicture({ plot, input, reading }: Props) {
  const [place, room] = useSize();
  const note = pictureNote(plot, input.trial.trial === 'a against b');
  return (
    <div className="trial-picture" ref={place}>
      <Exportable
        of={`${input.trial.name} trial`}
        title={reading.headline}
        note={`${input.bundle.setup.name}. ${note}`}
        sentence={pictureSentence(reading)}
        table={() => pictureTable(plot, input.units)}
        beneath={<p className="note faint">{note}</p>}
      >
        {room !== null && <Drawn plot={plot} input={input} sentence={pictureSentence(reading)} width={room.width} />}
      </Exportable>
    </div>
  );
}

function Drawn({ plot, input, sentence, width }: { plot: TrialPlot; input: TrialInput; sentence: string; width: number }) {
  const { units, trial } = input;
  const setting = useMemo(() => unitFor('setting', units), [units]);
  const distance = useMemo(() => unitFor('distance', units), [units]);
  const along = useMemo(
    () => (plot.kind === 'sizes' ? sizesData(plot, units) : plot.kind === 'heights' ? heightsData(plot, units) : null),
    [plot, units],
  );
  const titles = useMemo(
    () => (plot.kind === 'shifts' ? plot.points.map((point) => textQuantity(point.distance, 'distance', units)) : []),
    [plot, units],
  );
  if (along !== null) return <Along data={along} width={width} sentence={sentence} />;
  switch (plot.kind) {
    case 'shifts':
      return (
        <Shifts
          points={plot.points}
          names={trial.trial === 'a against b' ? betweenNames : bareNames}
          titles={titles}
          width={width}
          unit={setting}
          sentence={sentence}
        />
      );
    case 'walk-back':
      return <WalkBack data={plot} width={width} across={setting} down={distance} sentence={sentence} />;
    case 'tears': {
      const length = units.setting === 'in' ? 0.0254 : 0.02;
      return (
        <Tears
          data={plot}
          size={Math.min(340, width)}
          shaftRadius={(input.bundle.arrowSet.diameter ?? usualShaft) / 2}
          scale={{ length, text: textQuantity(length, 'setting', units) }}
          sentence={sentence}
        />
      );
    }
    case 'clearance':
      return (
        <Touches
          shots={plot.shots}
          turns={plot.shots.map(({ nockTurn }) => (nockTurn === 0 ? '–' : turnText(nockTurn).replace(' of a turn', '')))}
          sentence={sentence}
        />
      );
    default:
      return null;
  }
}

const bareNames = ['fletched', 'bare'] as const;
const betweenNames = ['A', 'B'] as const;
