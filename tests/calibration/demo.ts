import { defaultPreferences, type BenchRecord, type RecordKind, type Stamp } from '../../core/model/index.ts';
import { readBareShaft } from '../../core/trials/index.ts';
import { demoRecords, plantedTruths, type PlantedReading, type PlantedTrial } from '../../fixtures/demo/index.ts';
import { namedFirst as trialNamesFirst, trialBench } from '../core/demoTrialBench.ts';
import { share, shares, type Figure } from './row.ts';

const now: Stamp = { at: '2026-06-20T17:45:00.000Z', offsetMinutes: 60 };
const { units } = defaultPreferences;
const DEMO_TRIALS = 'Demo trials, what was planted is named first';

/** Whether the demo shot anew, from the same truths, is told the change that was planted first; without one, to shoot more or to leave it. */
function namedFirst({ setupId, fletchedId, bareId, expected }: PlantedReading, seed: string): boolean {
  const records = demoRecords(now, seed);
  const get = <K extends RecordKind>(kind: K, id: string | null): Extract<BenchRecord, { kind: K }> => {
    const found = records.find((record) => record.kind === kind && record.id === id);
    if (found === undefined) throw new Error(`The demo has no ${kind} ${id ?? 'without a name'}.`);
    return found as Extract<BenchRecord, { kind: K }>;
  };
  const setup = get('setup', setupId);
  const bundle = {
    setup,
    archer: get('archer', setup.archerId),
    bow: get('bow', setup.bowId),
    arrowSet: get('arrowSet', setup.arrowSetId),
  };
  const { next } = readBareShaft(bundle, get('group', fletchedId), get('group', bareId), units);
  const changed = Object.keys(next.patch ?? {});
  return expected.next === null ? next.kind === 'shoot' || next.kind === 'leave' : changed[0] === expected.next;
}

const pairFigures: readonly Figure[] = plantedTruths.readings
  .filter(({ fletchedId, bareId }) => fletchedId !== null && bareId !== null)
  .map((reading) =>
    share(`Demo, what was planted is named first: ${reading.planted.replaceAll(': ', ', ')}`, 300, null, (random) =>
      namedFirst(reading, `calibration ${Math.floor(1e9 * random())}`),
    ),
  );

const rowOf = ({ kind, planted }: PlantedTrial): string => `${DEMO_TRIALS}: ${kind}, ${planted.replaceAll(': ', ', ')}`;

/** The demo's trials shot anew: whether each names first the cause and the change that were planted, or where nothing was, says so. */
const trialFigure: Figure = shares(
  DEMO_TRIALS,
  300,
  Object.fromEntries(plantedTruths.trials.map((trial) => [rowOf(trial), null])),
  (random) => {
    const { read, bundle } = trialBench(demoRecords(now, `calibration ${Math.floor(1e9 * random())}`), now);
    return Object.fromEntries(
      plantedTruths.trials.map((trial) => [rowOf(trial), trialNamesFirst(trial, read(trial.trialId), bundle(trial.setupId))]),
    );
  },
);

export const demoFigures: readonly Figure[] = [...pairFigures, trialFigure];
