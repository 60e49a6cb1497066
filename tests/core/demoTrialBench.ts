import {
  counted,
  defaultPreferences,
  type BenchRecord,
  type Bundle,
  type RecordKind,
  type Shot,
  type ShotGroup,
  type Stamp,
} from '../../core/model/index.ts';
import { groupQuestions, type Question } from '../../core/questions/index.ts';
import { archerSpread, readTrial, type TrialInput, type TrialReading } from '../../core/trials/index.ts';
import { plantedTruths, type PlantedTrial } from '../../fixtures/demo/index.ts';

const { units } = defaultPreferences;

type Of<K extends RecordKind> = Extract<BenchRecord, { kind: K }>;

/** The demo's records by id, and its set-ups with what they rest on. */
export function trialBench(records: readonly BenchRecord[], now: Stamp) {
  const byId = new Map(records.map((record) => [record.id, record]));
  const get = <K extends RecordKind>(kind: K, id: string): Of<K> => {
    const found = byId.get(id);
    if (found?.kind !== kind) throw new Error(`The demo has no ${kind} ${id}.`);
    return found as Of<K>;
  };
  const bundle = (setupId: string): Bundle => {
    const setup = get('setup', setupId);
    return {
      setup,
      archer: get('archer', setup.archerId),
      bow: get('bow', setup.bowId),
      arrowSet: get('arrowSet', setup.arrowSetId),
    };
  };
  const groupsOf = (setupId: string) =>
    records.filter((record): record is Of<'group'> => record.kind === 'group' && record.setupId === setupId);
  /** As the bench asks: the archer's spread is told by the groups that are not the trial's own. */
  const input = (trialId: string): TrialInput => {
    const trial = get('trial', trialId);
    const set = bundle(trial.setupId);
    const own = trial.groups.flatMap(({ first, second }) => [first, second]).filter((id) => id !== null);
    const groups = new Map(own.map((id) => [id, get('group', id)]));
    const others = groupsOf(trial.setupId).filter(({ id, context }) => !groups.has(id) && context.arrowSetId === set.arrowSet.id);
    const spread = archerSpread(others, trial.plan.distances.at(-1) ?? 18, units);
    return { trial, bundle: set, groups, units, now, spread };
  };
  return { get, bundle, groupsOf, input, read: (trialId: string): TrialReading => readTrial(input(trialId)) };
}

/** Whether a reading has the planted verdict and puts first what was planted: its cause and the change that mends it; where nothing was, the step that says so. */
export function namedFirst({ expected }: PlantedTrial, { verdict, causes, next }: TrialReading, { setup }: Bundle): boolean {
  if (verdict !== expected.verdict) return false;
  const first = (causes[0]?.cause ?? '').toLowerCase();
  if (expected.cause !== null && !first.includes(expected.cause)) return false;
  if (expected.setting === null) return next.kind === expected.next;
  const [before, after] = [setup.settings[expected.setting], next.patch?.[expected.setting]];
  if (before === null || before === undefined || after === null || after === undefined) return false;
  return Math.sign(after - before) === (expected.direction === 'up' ? 1 : -1);
}

/** The shots that count, end by end. */
export function byEnd(group: ShotGroup): readonly (readonly Shot[])[] {
  const last = Math.max(...group.shots.map(({ end }) => end ?? 0));
  return Array.from({ length: last }, (_, i) => counted(group).filter(({ end }) => end === i + 1));
}

/** What is asked of the numbered dozen, with the answers. */
export function askedOfEnds(records: readonly BenchRecord[], now: Stamp): readonly Question[] {
  const { groupId, setupId } = plantedTruths.ends;
  const { get, bundle, groupsOf } = trialBench(records, now);
  const set = bundle(setupId);
  const shaftRadius = (set.arrowSet.diameter ?? 0.0055) / 2;
  return groupQuestions({
    group: get('group', groupId),
    beside: null,
    others: groupsOf(setupId),
    bundle: set,
    shaftRadius,
    units,
  });
}
