import { groupMeasures, sameDistance, shiftOfGroups } from '../group/index.ts';
import type { ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { DoubtedFigure } from './figure.ts';

/** The groups that a comparison rests on: the newest fletched one, and the newest bare one with fletched arrows at its distance. */
export interface ChosenGroups {
  readonly fletched: ShotGroup | null;
  readonly trial: { readonly fletched: ShotGroup; readonly bare: ShotGroup } | null;
}

const shotAt = (group: ShotGroup): number => Date.parse(group.context.shotAt.at);

/**
 * The groups that can be compared, newest first: fletched ones, and bare ones each with the fletched group nearest in time at its distance.
 *
 * @equation groups with a spread; a bare group counts with the fletched one of its distance that was shot nearest in time
 * @param groups - the groups of a set-up, oldest first [list]
 * @returns fletched groups and trials, newest first [record]
 * @validity a group that has no spread (no shots, one shot, one hole) is left out
 * @source own derivation
 * @example comparableGroups(exampleBundle.groups).trials.length // 1
 */
export function comparableGroups(groups: readonly ShotGroup[]): {
  readonly fletched: readonly ShotGroup[];
  readonly trials: readonly NonNullable<ChosenGroups['trial']>[];
} {
  const told = [...groups].reverse().filter((group) => groupMeasures(group.shots).ok);
  const fletched = told.filter((group) => group.fletching === 'fletched');
  const trials = told
    .filter((group) => group.fletching === 'bare')
    .flatMap((bare) => {
      const apart = (group: ShotGroup) => Math.abs(shotAt(group) - shotAt(bare));
      const [near] = fletched.filter((group) => sameDistance(group, bare)).sort((a, b) => apart(a) - apart(b));
      return near === undefined ? [] : [{ fletched: near, bare }];
    });
  return { fletched, trials };
}

/**
 * The figures of a set-up's groups: the bare shafts off the fletched centre, and how tight the fletched arrows are.
 *
 * @equation shift of bare from fletched with its 95 % half widths; mean radius of many with half the width of its 95 % interval
 * @param chosen - the groups to take [record]
 * @param units - the person's choice of units, for the notes [record]
 * @returns the figures with their doubts [list]
 * @validity as shiftOfGroups and groupMeasures; without groups the note says what to shoot
 * @source own derivation
 * @example groupFigures({ fletched: exampleFletched, trial: null }, defaultPreferences.units)[3].note // "6 arrows at 18 m"
 */
export function groupFigures(chosen: ChosenGroups, units: UnitChoice): readonly DoubtedFigure[] {
  const { fletched, trial } = chosen;
  const at = (group: ShotGroup) => textQuantity(group.context.distance, 'distance', units);
  const base = { use: 'setting', section: 'On the face' } as const;
  const none = (key: string, name: string, note: string): DoubtedFigure => ({
    ...base,
    key,
    name,
    value: null,
    half: null,
    note,
    doubts: new Map(),
  });
  const shift = trial === null ? null : shiftOfGroups(trial.fletched.shots, trial.bare.shots);
  const places = [
    ['bareOff', 'Bare off fletched'],
    ['bareSide', 'Bare off fletched, right'],
    ['bareHeight', 'Bare off fletched, up'],
  ] as const;
  const measured = fletched === null ? null : groupMeasures(fletched.shots);
  return [
    ...places.map(([key, name]): DoubtedFigure => {
      if (trial === null || shift === null) return none(key, name, 'Waits for fletched and bare groups at one distance.');
      if (!shift.ok) return none(key, name, shift.problem.sentence);
      const { size, radius, dx, dy, half } = shift.value;
      const [value, width] = { bareOff: [size, radius], bareSide: [dx, half.x], bareHeight: [dy, half.y] }[key] as [
        number,
        number,
      ];
      const note = `${trial.fletched.shots.length} and ${trial.bare.shots.length} arrows at ${at(trial.bare)}`;
      return {
        ...base,
        key,
        name,
        value,
        half: width,
        note,
        doubts: new Map([[`${trial.bare.id} ${trial.fletched.id}`, width]]),
      };
    }),
    fletched === null || measured === null || !measured.ok
      ? none('meanRadius', 'Mean radius, fletched', 'Waits for a fletched group of two arrows or more.')
      : {
          ...base,
          key: 'meanRadius',
          name: 'Mean radius, fletched',
          value: measured.value.meanRadiusOfMany,
          half: (measured.value.meanRadiusInterval[1] - measured.value.meanRadiusInterval[0]) / 2,
          note: `${fletched.shots.length} arrows at ${at(fletched)}`,
          doubts: new Map([[fletched.id, (measured.value.meanRadiusInterval[1] - measured.value.meanRadiusInterval[0]) / 2]]),
        },
  ];
}
