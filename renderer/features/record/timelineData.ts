import { radiusSeries, type RadiusSeries } from '../../../core/group/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { wallTime, type Id } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Trial } from '../../../core/model/trial.ts';
import type { Snapshot } from '../../../core/model/snapshot.ts';
import { factorOf, showQuantity, textQuantity, unitOf, type Use } from '../../../core/units/index.ts';
import type { TimelineData } from '../../plots/timeline/data.ts';
import { triedNames } from '../trials/groupNames.ts';
import { settingLanes, type Lane } from './lanes.ts';
import type { Compared } from './selectors.ts';

/** More dots than this would merge into a bar. */
const MOST_POINTS = 60;

/** The history of one set-up ready to draw, the sentence that tells it to those who cannot see it, and what has to be said beside it. */
interface History {
  readonly data: TimelineData | null;
  readonly sentence: string;
  readonly note: string;
}

export function historyOf(
  bundle: Bundle,
  groups: readonly ShotGroup[],
  snapshots: readonly Snapshot[],
  compared: Compared | null,
  units: UnitChoice,
  trials: readonly Trial[],
  trialsAway: readonly Trial[],
): History {
  const series = radiusSeries(groups);
  const names = triedNames([...trials, ...trialsAway], units);
  const lanes = settingLanes(bundle, groups, snapshots, [...trials, ...trialsAway]);
  const own = snapshots.filter((snapshot) => snapshot.setupId === bundle.setup.id);
  const factor = factorOf('setting', units);
  const points = series.points.slice(-MOST_POINTS);
  const distance = series.distance === null ? '' : textQuantity(series.distance, 'distance', units);
  const figure = (value: number, use: Use) => showQuantity(value, use, units).figure;
  const data: TimelineData = {
    sizes: {
      name: 'Mean radius',
      small: `${unitOf('setting', units)} at ${distance}`,
      points: points.map((point) => ({
        at: point.at,
        shots: point.shots,
        value: point.radius / factor,
        low: point.low / factor,
        high: point.high / factor,
        text: figure(point.radius, 'setting'),
        ...triedIn(names, point.id),
      })),
    },
    lanes: lanes.map((lane) => ({
      key: lane.key,
      name: lane.name,
      unit: unitOf(lane.use, units),
      steps: lane.steps.map((step) => ({ ...step, text: figure(step.value, lane.use) })),
      tried: lane.tried.map((mark) => ({ ...mark, text: figure(mark.value, lane.use) })),
      now: lane.now === null ? null : { value: lane.now, text: figure(lane.now, lane.use) },
    })),
    flags: [
      ...own.map((snapshot) => ({
        id: snapshot.id,
        at: wallTime(snapshot.taken),
        name: snapshot.name,
        chosen: compared !== null && (snapshot.id === compared.from.id || snapshot.id === compared.to?.id),
      })),
      ...trials.map(({ id, born, name }) => ({ id, at: wallTime(born), name, chosen: false, trial: true })),
    ],
  };
  const dated =
    points.length > 1 ||
    data.flags.length > 0 ||
    data.lanes.some((lane) => lane.steps.length > 0 || (lane.tried?.length ?? 0) > 0);
  return { data: dated ? data : null, sentence: sentenceOf(data, lanes, distance, units), note: noteOf(data, series, distance) };
}

const triedIn = (names: ReadonlyMap<Id, string>, id: Id) => {
  const tried = names.get(id);
  return tried === undefined ? {} : { tried };
};

function sentenceOf(data: TimelineData, lanes: readonly Lane[], distance: string, units: UnitChoice): string {
  const unit = unitOf('setting', units);
  const [first, last] = [data.sizes.points[0], data.sizes.points.at(-1)];
  const sizes =
    first === undefined || last === undefined || data.sizes.points.length < 2
      ? ''
      : `Mean radius of ${data.sizes.points.length} fletched groups at ${distance}: ${first.text} ${unit} in the first, ${last.text} ${unit} in the last. `;
  const steps = lanes.map((lane) => {
    const values = [...lane.steps.map((step) => step.value), ...(lane.now === null ? [] : [lane.now])];
    const moves = values.filter((value, index) => index === 0 || value !== values[index - 1]);
    return `${lane.name} ${moves.map((value) => textQuantity(value, lane.use, units)).join(', then ')}`;
  });
  const trials = data.flags.filter(({ trial }) => trial === true).length;
  const flags = `${flagsText(data.flags.length - trials, 'snapshot')}${flagsText(trials, 'trial')}`;
  return `${sizes}Settings: ${steps.length === 0 ? 'none noted' : steps.join('; ')}.${triedText(data, unit)}${flags}`;
}

/** Each group that was shot to try a setting, by that setting. */
function triedText({ sizes }: TimelineData, unit: string): string {
  const tried = sizes.points.flatMap(({ tried: name, text }) => (name === undefined ? [] : [`${name}, ${text} ${unit}`]));
  return tried.length === 0 ? '' : ` Shot to try a setting: ${tried.join('; ')}.`;
}

const flagsText = (count: number, what: string): string =>
  count === 0 ? '' : count === 1 ? ` One ${what}.` : ` ${count} ${what}s.`;

/** "8 1/4, 8 3/8 and 8 1/2 in, brace-height trial": which settings the diamonds were shot to try, each once. */
function diamondText({ sizes, lanes }: TimelineData): string {
  const names = [...new Set(sizes.points.flatMap(({ tried }) => tried ?? []))];
  if (names.length === 0) return lanes.some(({ tried = [] }) => tried.length > 0) ? ' A diamond was shot to try a setting.' : '';
  return ` A diamond was shot to try a setting: ${names.slice(-MOST_NAMED).join('; ')}.`;
}

/** As many as are read beside the drawing; the table has them all. */
const MOST_NAMED = 6;

function noteOf(data: TimelineData, series: RadiusSeries, distance: string): string {
  const pennants = data.flags.some(({ trial }) => trial === true) ? ', a pennant a trial' : '';
  const diamonds = diamondText(data);
  const key = `A step is a setting changed, a flag a snapshot${pennants}.${diamonds}`;
  const shown = data.sizes.points.length;
  if (shown < 2) return `${key} Group size needs two fletched groups at one distance.`;
  const all = series.points.length > shown ? `The newest ${shown} of ${series.points.length} fletched groups` : 'Fletched groups';
  const untold =
    series.untold === 0 ? '' : ` ${series.untold} more ${series.untold === 1 ? 'has' : 'have'} too few holes to tell.`;
  return `${all} at ${distance}, with 95 % intervals.${untold} ${key}`;
}
