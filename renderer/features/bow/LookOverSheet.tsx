import { useState } from 'react';
import { dayText } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { BowLookOver, Condition } from '../../../core/model/lookOver.ts';
import { bowPartsOf, type BowPart } from '../../../core/safety/index.ts';
import { Choice, Words } from '../../design/index.ts';
import { EntrySheet } from '../../design/entry/index.ts';
import { now } from '../../state/clock.ts';
import { useEdits } from '../../state/useEdits.ts';
import { lookOverText } from './lookOverText.ts';

/** What there is to see on each part, so that "looked at" means the same to everybody. Common practice. */
const looksFor: Readonly<Record<BowPart, string>> = {
  limbs: 'cracks, twist, lifted laminations, both sides',
  tips: 'splits, worn string grooves',
  bolts: 'seated, both alike, not loose',
  string: 'cut or worn strands, both loops',
  serving: 'worn, slipped, under the nock and at the loops',
};

type Seen = Readonly<Record<BowPart, Condition>>;

/** A flaw stays until somebody has looked again; all else begins as not looked at. */
function beginning(last: BowLookOver | null): Seen {
  const left = (part: BowPart): Condition => (last?.[part] === 'flaw' ? 'flaw' : 'not looked at');
  return { limbs: left('limbs'), tips: left('tips'), bolts: left('bolts'), string: left('string'), serving: left('serving') };
}

/** One press says of every part that it is sound, but a flaw is taken back on its own row only. */
const restSound = (seen: Seen, parts: readonly BowPart[]): Seen => ({
  ...seen,
  ...Object.fromEntries(parts.map((part) => [part, seen[part] === 'flaw' ? 'flaw' : 'sound'])),
});

/** The bow looked over, part by part, by somebody, today. */
export function LookOverSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  const edit = useEdits();
  const { bow } = bundle;
  const parts = bowPartsOf(bow.bowKind);
  const [start] = useState(() => beginning(bow.lookOver));
  const [seen, setSeen] = useState<Seen>(start);
  const [by, setBy] = useState('');
  const [note, setNote] = useState('');
  const [fired, setFired] = useState<'no' | 'yes'>('no');

  const looked = seen !== start;
  const some = parts.some((part) => seen[part] !== 'not looked at');
  const wrong =
    (looked && some) || fired === 'yes'
      ? null
      : 'Say of one part at least whether it is sound, or note that it was loosed without an arrow.';
  const write = () => {
    const at = now();
    const lookOver = { by: by.trim(), ...seen, note: note.trim() };
    return edit.bow(`${bow.name} looked over`, {
      ...(looked && some ? { lookedOver: at, lookOver } : {}),
      ...(fired === 'yes' ? { dryFired: at } : {}),
    });
  };
  return (
    <EntrySheet
      title={`Look over ${bow.name}`}
      keep="Note what was seen"
      changed={looked || by !== '' || note !== '' || fired === 'yes'}
      wrong={wrong}
      held={[bow.lookOver, bow.lookedOver, bow.dryFired]}
      onKeep={write}
      onClose={onClose}
    >
      <p className="note care">
        Unstrung first, then strung by the method that its maker names, nobody’s face in line with a limb tip.
      </p>
      {bow.lookedOver !== null && (
        <p className="note">
          Last: {lookOverText(bow, now())}
          {bow.lookOver?.by ? `, by ${bow.lookOver.by}` : ''}.
        </p>
      )}
      <div className="acts look-over-all">
        <button type="button" className="btn" onClick={() => setSeen(restSound(seen, parts))}>
          {parts.some((part) => seen[part] === 'flaw') ? 'All the others looked at and sound' : 'All looked at and sound'}
        </button>
      </div>
      {parts.map((part) => (
        <Choice<Condition>
          key={part}
          name={part}
          value={seen[part]}
          options={[
            { value: 'not looked at', text: 'not looked at' },
            { value: 'sound', text: 'sound' },
            { value: 'flaw', text: 'a flaw' },
          ]}
          onKeep={(condition) => setSeen({ ...seen, [part]: condition })}
          hint={looksFor[part]}
        />
      ))}
      <Words name="looked over by" value={by} onKeep={setBy} />
      <Words name="note" value={note} onKeep={setNote} long most={400} />
      <Choice<'no' | 'yes'>
        name="loosed without an arrow"
        value={fired}
        options={[
          {
            value: 'no',
            text: bow.dryFired === null ? 'never, as far as is known' : `last ${dayText(bow.dryFired, now())}; not since`,
          },
          { value: 'yes', text: 'yes, and nobody has looked it over since' },
        ]}
        onKeep={setFired}
        hint="A bow loosed dry is put away until a technician has looked over its limbs, tips and string."
      />
    </EntrySheet>
  );
}
