import { shotLayouts, type ShotLayout, type ShotsAsked } from '../../../../core/tables/index.ts';
import { Choice } from '../../../design/index.ts';
import type { originsOn } from './origins.ts';

export interface Asked {
  readonly layout: ShotLayout | null;
  readonly unit: string;
  readonly origin: string;
  readonly yGrows: ShotsAsked['yGrows'];
}

const FOUND = 'as found';
const layoutText: Readonly<Record<ShotLayout, string>> = {
  'x y': 'across, up',
  'arrow x y': 'arrow, across, up',
  'arrow x y end': 'arrow, across, up, end',
  'arrow end x y': 'arrow, end, across, up',
};

interface Props {
  asked: Asked;
  /** The order that was found; null where heads say it. */
  found: ShotLayout | null;
  ownUnit: string;
  origins: ReturnType<typeof originsOn>;
  onChange(asked: Asked): void;
}

/** How a table of shots is to be taken: its columns, its unit, its nought and its direction. */
export function ReadingAsked({ asked, found, ownUnit, origins, onChange }: Props) {
  const orders = shotLayouts.map((value) => ({ value: value as string, text: layoutText[value] }));
  return (
    <div className="reading-asked">
      <Choice
        name="columns, without heads"
        value={asked.layout ?? FOUND}
        options={[{ value: FOUND, text: found === null ? 'as the heads say' : `found: ${layoutText[found]}` }, ...orders]}
        onKeep={(value) => onChange({ ...asked, layout: shotLayouts.find((one) => one === value) ?? null })}
      />
      <Choice
        name="bare numbers are"
        value={asked.unit}
        options={[
          { value: '', text: `${ownUnit}, or as the heads say` },
          ...['mm', 'cm', 'in'].filter((unit) => unit !== ownUnit).map((value) => ({ value, text: value })),
        ]}
        onKeep={(unit) => onChange({ ...asked, unit })}
      />
      <Choice
        name="measured from"
        value={asked.origin}
        options={origins}
        onKeep={(value) =>
          onChange({ ...asked, origin: value, yGrows: origins.find((one) => one.value === value)?.yGrows ?? asked.yGrows })
        }
      />
      <Choice
        name="the second grows"
        value={asked.yGrows}
        options={[
          { value: 'up', text: 'upward' },
          { value: 'down', text: 'downward' },
        ]}
        onKeep={(yGrows) => onChange({ ...asked, yGrows })}
      />
    </div>
  );
}
