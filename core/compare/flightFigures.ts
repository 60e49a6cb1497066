import { flightBasis, pointOnDistance, setSight, type Launch } from '../aim/index.ts';
import { arrowMass, pointBeyondShaft } from '../arrow/index.ts';
import { setupSpeed, type ArrowSpeed } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Result } from '../model/problem.ts';
import { textQuantity } from '../units/index.ts';
import type { DoubtedFigure } from './figure.ts';
import { halfOf } from './figure.ts';

/** The sight is set at the one and the arrow read at the other [m]: distances that every bow here reaches. */
const SET_FOR = 30;
const READ_AT = 50;
/** From the arrow up to the eye where nobody measured it [m]: from memory; it moves the drop by little. */
const USUAL_EYE = 0.1;

const plans = [
  { key: 'speed', name: 'Arrow speed', use: 'speed', section: 'On the bow' },
  { key: 'drop', name: `At ${READ_AT} m with the ${SET_FOR} m mark`, use: 'drop', section: 'Far off' },
  { key: 'time', name: `Time to ${READ_AT} m`, use: 'time', section: 'Far off' },
  { key: 'pointOn', name: 'Point-on distance', use: 'distance', section: 'Far off' },
] as const;
type Key = (typeof plans)[number]['key'];

const speedNotes: Readonly<Record<ArrowSpeed['from'], string>> = {
  measured: 'measured',
  carried: 'measured before arrow or brace height were altered, and carried over',
  fitted: 'from arrows of other masses over the chronograph',
  estimated: 'estimated from the kind of bow',
};

/**
 * The figures of the flight: speed, drop below a sight mark, time, point-on distance.
 *
 * @equation the flight with drag; doubts: the speed's band, and the band of the drag, which is the same unknown for every arrow
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the notes [record]
 * @returns the figures with their doubts [list]
 * @validity level ground, still air of the standard atmosphere; a figure that cannot be had says what it waits for
 * @source miyazaki-2013
 * @example flightFigures(exampleBundle, defaultPreferences.units).map((figure) => figure.key) // ["speed", "drop", "time", "pointOn"]
 */
export function flightFigures(bundle: Bundle, units: UnitChoice): readonly DoubtedFigure[] {
  const { archer, bow, arrowSet, setup } = bundle;
  const speed = setupSpeed(bundle);
  const mass = arrowMass(arrowSet);
  const none = (sentence: string) =>
    plans.map((plan) => ({ ...plan, value: null, half: null, note: sentence, doubts: new Map() }));
  if (!speed.ok) return none(speed.problem.sentence);
  if (!mass.ok) return none(mass.problem.sentence);

  const { eyeHeight } = setup.form;
  const basis = flightBasis(bundle);
  const ownDrag = basis.ok && basis.value.dragFrom === 'speeds';
  const drag = basis.ok && (ownDrag || arrowSet.diameter !== null) ? basis.value.drag : null;
  const at = (v: number, k: number): Launch => ({ speed: v, k, eyeHeight: eyeHeight ?? USUAL_EYE });
  // An estimate errs alike for every arrow of one archer with one bow; a chronograph errs anew each time.
  const speedName =
    speed.value.from === 'estimated'
      ? `${bow.id} ${archer.id} estimated speed`
      : `${setup.id} ${arrowSet.id} measured speed ${speed.value.value}`;
  const notes: Readonly<Record<Key, string>> = {
    speed: speedNotes[speed.value.from],
    drop: eyeHeight === null ? `eye ${textQuantity(USUAL_EYE, 'setting', units)} over the arrow assumed` : '',
    time: '',
    pointOn: '',
  };
  const read = (key: Key, launch: Launch): number | string => {
    if (key === 'speed') return launch.speed;
    if (key === 'pointOn') return pointOn(bundle, launch);
    return setMark(key, launch);
  };
  return plans.map((plan) => {
    const fail = (sentence: string): DoubtedFigure => ({ ...plan, value: null, half: null, note: sentence, doubts: new Map() });
    if (plan.key !== 'speed' && drag === null) return fail('Waits for the shaft\u2019s diameter.');
    const [k, kHigh] = [drag?.value ?? 0, drag?.high ?? 0];
    const value = read(plan.key, at(speed.value.value, k));
    if (typeof value === 'string') return fail(value);
    const doubts = new Map<string, number>();
    const add = (name: string, moved: number | string) =>
      typeof moved === 'number' && moved !== value && doubts.set(name, moved - value);
    add(speedName, read(plan.key, at(speed.value.high, k)));
    // The coefficient of others is the same unknown for every arrow; a drag that was measured errs by itself.
    add(ownDrag ? `${setup.id} ${arrowSet.id} drag` : 'drag', read(plan.key, at(speed.value.value, kHigh)));
    return { ...plan, value, half: halfOf(doubts), note: notes[plan.key], doubts };
  });
}

function setMark(key: 'drop' | 'time', launch: Launch): number | string {
  const sight = setSight(launch, SET_FOR, READ_AT);
  if (!sight.ok) return sight.problem.sentence;
  const past = `The flight ends before ${READ_AT} m.`;
  if (key === 'drop') return sight.value.heightOverLine(READ_AT) ?? past;
  return sight.value.flight.at(READ_AT - sight.value.start.x)?.t ?? past;
}

function pointOn({ arrowSet, setup }: Bundle, launch: Launch): number | string {
  if (setup.form.eyeHeight === null || arrowSet.length === null) return 'Waits for the eye height and the arrow\u2019s length.';
  const found: Result<number> = pointOnDistance(launch, arrowSet.length + pointBeyondShaft);
  return found.ok ? found.value : found.problem.sentence;
}
