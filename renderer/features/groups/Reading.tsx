import type { Bundle } from '../../../core/model/bundle.ts';
import { counted, type ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { showQuantity } from '../../../core/units/index.ts';
import { Fraction, WhyLink } from '../../design/index.ts';
import type { OneGroup } from './derive.ts';
import { NextChange } from './NextChange.tsx';
import { wholeText } from './wholeText.ts';
import type { readBareShaft, readTwoGroups } from '../../../core/trials/index.ts';

type PageReading =
  | ({ readonly kind: 'bare' } & ReturnType<typeof readBareShaft>)
  | ({ readonly kind: 'two' } & ReturnType<typeof readTwoGroups>);

interface Props {
  bundle: Bundle;
  first: OneGroup;
  second: OneGroup | null;
  reading: PageReading | null;
  groups: readonly ShotGroup[];
  units: UnitChoice;
}

/** The differences as a table, what the two groups do not share, and the one next change. */
export function Reading({ bundle, first, second, reading, groups, units }: Props) {
  const same = second !== null && first.group.fletching === second.group.fletching;
  // While an end is entered those before it are drawn paler.
  const hasEarlier = [first, second].some((one) => new Set(one?.group.shots.map(({ end }) => end)).size > 1);
  return (
    <>
      <DifferenceTable first={first} second={second} names={same ? ['first', 'second'] : null} reading={reading} units={units} />
      <p className="note faint">
        Circles, bars and ± are 95 %; the dotted oval holds half of many such shots.
        {second !== null && ' A difference in grey is within the noise.'}
        {hasEarlier && ' Paler shots are of earlier ends.'}
        {reading !== null && (
          <>
            {' '}
            <WhyLink why={reading.why} about="the reading" />
          </>
        )}
      </p>
      {reading !== null && reading.problem !== null && <p className="note">{reading.problem.sentence}</p>}
      {reading !== null && reading.differences.length > 0 && (
        <ul className="differences">
          {reading.differences.map((difference) => (
            <li key={difference.key}>
              <Fraction>{difference.sentence}</Fraction>
            </li>
          ))}
        </ul>
      )}
      {reading?.kind === 'bare' && <NextChange bundle={bundle} reading={reading} groups={groups} />}
    </>
  );
}

/** How many count, and of how many where somebody left some out. */
function arrowsOf({ group }: OneGroup): string {
  const count = counted(group).length;
  return count === group.shots.length ? wholeText(count) : `${wholeText(count)} of ${wholeText(group.shots.length)}`;
}

function DifferenceTable({
  first,
  second,
  names,
  reading,
  units,
}: {
  first: OneGroup;
  second: OneGroup | null;
  names: readonly [string, string] | null;
  reading: PageReading | null;
  units: UnitChoice;
}) {
  const whole = units.setting === 'mm' ? 0 : 1;
  const figure = (value: number | undefined, signed: boolean) =>
    value === undefined ? '–' : showQuantity(value, 'setting', units, { digits: whole, signed }).figure;
  const shift = reading?.shift ?? null;
  // The table shows second minus first, whichever of the two is the bare one.
  const turn = reading?.kind === 'bare' && first.group.fletching === 'bare' ? -1 : 1;
  const difference = (axis: 'x' | 'y') => {
    if (shift === null) return '–';
    const value = turn * (axis === 'x' ? shift.dx : shift.dy);
    // An interval wider than the face says one thing only.
    if (shift.half[axis] > (first.face.rings[0]?.radius ?? 1)) return `${figure(value, true)}, too few`;
    return `${figure(value, true)} ± ${figure(shift.half[axis], false)}`;
  };
  const real = (axis: 'x' | 'y') => shift?.axisReal[axis] === true;
  const rows: { key: string; name: string; of(one: OneGroup): string; difference: string; real: boolean }[] = [
    { key: 'n', name: 'arrows', of: arrowsOf, difference: '', real: false },
    {
      key: 'x',
      name: `across, ${units.setting}`,
      of: (one) => figure(one.measures?.centre.x, true),
      difference: difference('x'),
      real: real('x'),
    },
    {
      key: 'y',
      name: `up, ${units.setting}`,
      of: (one) => figure(one.measures?.centre.y, true),
      difference: difference('y'),
      real: real('y'),
    },
    {
      key: 'r',
      name: `mean radius, ${units.setting}`,
      of: (one) => figure(one.measures?.meanRadius, false),
      difference: '',
      real: false,
    },
    {
      key: 'e',
      name: `widest apart, ${units.setting}`,
      of: (one) => figure(one.measures?.extremeSpread, false),
      difference: '',
      real: false,
    },
    { key: 's', name: 'score', of: (one) => wholeText(one.score.total), difference: '', real: false },
  ];
  return (
    <table className="table">
      <thead>
        <tr>
          <td />
          <th scope="col">{names?.[0] ?? first.group.fletching}</th>
          {second !== null && <th scope="col">{names?.[1] ?? second.group.fletching}</th>}
          {second !== null && <th scope="col">difference</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key} className={row.real ? 'answer' : undefined}>
            <th scope="row">{row.name}</th>
            <td>{row.of(first)}</td>
            {second !== null && <td>{row.of(second)}</td>}
            {second !== null && <td className={row.real ? undefined : 'noise'}>{row.difference}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
