import {
  isWeak,
  launchBand,
  misjudged,
  type FittedMarks,
  readingsNow,
  type StripRow,
  windDrift,
} from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { countWord } from '../../../../core/model/sentence.ts';
import { ok, refuse, type Result } from '../../../../core/model/problem.ts';
import { factorOf, showQuantity, unitOf } from '../../../../core/units/index.ts';
import type { CardPaper, StripPaper } from '../../../print/index.ts';
import { targetDrop } from '../plan.ts';
import type { Makers } from '../print/index.ts';
import { type MarksView, spanDistances } from './derive.ts';
import type { Span } from './store.ts';
import { stripOf, stripSpan } from './useStrip.ts';
import { halfText, readText } from './words.ts';

/** By how much a distance is wrong on the card, in the shown unit. */
const WRONG_BY = 5;
/** The wind from the side on the card [m/s]. */
const WIND = 1;
/** Nearer than this two distances are one [m]. */
const SAME = 0.005;

const knownAt = ({ picture: { proven, from } }: MarksView, distance: number): boolean =>
  from === 'proven' && proven.some((mark) => mark.leftOut === null && Math.abs(mark.distance - distance) < SAME);

const labelOf = (distance: number, units: UnitChoice): string => showQuantity(distance, 'distance', units).figure;

/** What the marks rest on, as it is printed beside them. */
function restsOn({ picture }: MarksView, fit: FittedMarks): string {
  if (picture.from === 'moved') return 'From marks that are no longer proven, moved by what changed since: shoot them in again.';
  const count = fit.marks.length;
  return `From ${countWord(count)} mark${count === 1 ? '' : 's'} shot in; proven until archer, bow, arrows or form change. Intervals: 95 %.`;
}

/** The strip for the bar out of its rows. */
export function stripPaper(view: MarksView, rows: readonly StripRow[], units: UnitChoice): Result<StripPaper> {
  const { fit, scale } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const digits = readText(0, scale).split('.')[1]?.length ?? 0;
  return ok({
    title: 'Sight marks',
    note: restsOn(view, fit.value),
    unit: scale.unit,
    grows: scale.grows,
    distanceUnit: unitOf('distance', units),
    rows: rows.map(({ distance, reading }) => ({
      distance,
      label: labelOf(distance, units),
      reading,
      weak: reading !== null && isWeak(reading, fit.value),
      known: knownAt(view, distance),
    })),
    ...(scale.lowest === undefined ? {} : { lowest: scale.lowest }),
    ...(scale.highest === undefined ? {} : { highest: scale.highest }),
    digits,
  });
}

/** The same for distances, whose rows come from the worker. */
async function stripFor(view: MarksView, span: Span, units: UnitChoice): Promise<Result<StripPaper>> {
  const { fit } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const rows = await stripOf(view.picture, fit.value, span, 'paper');
  if (rows === null) return refuse('overtaken', 'Other distances were asked for meanwhile.');
  return rows.ok ? stripPaper(view, rows.value, units) : rows;
}

/** The card for the quiver: each distance with its mark, what a wind does there, and what a wrong distance costs. */
export function rangeCard(view: MarksView, span: Span, units: UnitChoice): Result<CardPaper> {
  const { fit, scale } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const { speed, k, eyeHeight } = fit.value.figures;
  const at = ({ value }: { value: number }) => ({ value, low: value, high: value });
  const launch = launchBand(at(speed), at(k), eyeHeight.value, targetDrop).value;
  const distances = spanDistances(span);
  const readings = readingsNow(view.picture, distances);
  const drop = (height: Result<number>) =>
    height.ok && Number.isFinite(height.value) ? show(Math.abs(height.value), units) : '–';
  const farther = WRONG_BY * factorOf('distance', units);
  const rows = distances.map((distance, i): readonly string[] => {
    const reading = readings[i] ?? null;
    const wind = windDrift(launch, distance, { x: 0, y: 0, z: WIND });
    return [
      labelOf(distance, units),
      reading === null ? '–' : readText(reading.value, scale),
      reading === null ? '' : halfText(reading, scale),
      drop(wind.ok ? ok(wind.value.across) : wind),
      drop(misjudged(launch, distance, distance + farther)),
    ];
  });
  const height = unitOf('drop', units);
  return ok({
    title: 'Range card',
    note: restsOn(view, fit.value),
    head: [
      `distance, ${unitOf('distance', units)}`,
      'mark',
      '95 %',
      `drift in ${WIND} m/s across, ${height}`,
      `low if ${WRONG_BY} ${unitOf('distance', units)} farther, ${height}`,
    ],
    rows,
    strong: distances.map((distance) => knownAt(view, distance)),
  });
}

const show = (height: number, units: UnitChoice): string => showQuantity(height, 'drop', units).figure;

const noMarks = ({ picture: { fit } }: MarksView): { ok: false; problem: { code: string; sentence: string } } =>
  fit !== null && !fit.ok
    ? { ok: false, problem: fit.problem }
    : refuse('no-marks', 'A sight mark or two are needed first: a distance, and what the sight reads there.');

/** The papers that the marks give. */
export function marksMakers(view: MarksView, units: UnitChoice): Makers {
  const span = stripSpan(view, units);
  if (span === null) return {};
  const factor = factorOf('distance', units);
  const wide = span.to - span.from > 60 * factor ? 10 : 5;
  return {
    strip: { make: (asked) => stripFor(view, asked, units), usual: span },
    card: { make: (asked) => rangeCard(view, asked, units), usual: { ...span, step: wide * factor } },
  };
}
