import { Steps } from '../../design/Steps.tsx';

const lanes = [
  { name: 'brace height', y: 51, path: 'M128 42H330V52H560' },
  { name: 'nocking point', y: 84, path: 'M128 84H430V74H560' },
  { name: 'button', y: 117, path: 'M128 107H250V117H560' },
];

/** What will stand here: the settings over time and a flag through them, in pencil. */
export function EmptyRecord({ drawn }: { drawn: boolean }) {
  return (
    <>
      {drawn && (
        <svg
          className="in-pencil"
          width="600"
          height="146"
          role="img"
          aria-label="Three settings over time in pencil, with a flag through all of them."
        >
          {lanes.map((lane) => (
            <g key={lane.name}>
              <path className="dotted" d={lane.path} />
              <text className="name" x="0" y={lane.y}>
                {lane.name}
              </text>
            </g>
          ))}
          <path d="M330 8V140M330 8h-9v10h9M128 140H560" />
          <text className="name" x="338" y="18">
            a snapshot
          </text>
        </svg>
      )}
      <Steps
        lines={[
          'Take a snapshot when it shoots well: settings, form, bow, arrows and groups, under a name.',
          'Change what you like. Each setting and the size of each group are drawn over time.',
          'Read here what differs from the snapshot, and put it back with one button.',
        ]}
      />
    </>
  );
}
