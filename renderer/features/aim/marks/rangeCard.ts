import { type FittedMarks, type Launch, misjudged, windDrift } from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { ok, type Result } from '../../../../core/model/problem.ts';
import { factorOf, showQuantity, unitOf } from '../../../../core/units/index.ts';
import type { CardPaper } from '../../../print/index.ts';
import { targetDrop } from '../plan.ts';
import { type MarksView, spanDistances } from './derive.ts';
import { knownAt, labelOf, noMarks, restsOn } from './paperWords.ts';
import { readingsOf } from './readings.ts';
import type { Span } from './store.ts';
import { halfText, readText } from './words.ts';

/** By how much a distance is wrong on the card, in the shown unit. */
const WRONG_BY = 5;
/** The wind from the side on the card, in the shown unit. */
const WIND = { m: 1, yd: 2 } as const;
const show = (height: number, units: UnitChoice): string => showQuantity(height, 'drop', units).figure;

/** The flight that the marks tell, with what changed since they were shot in. */
function launchNow({ change }: MarksView['picture'], { figures: { speed, k, eyeHeight } }: FittedMarks): Launch {
  return {
    speed: speed.value * (change?.speed?.value ?? 1),
    k: k.value * (change?.k?.value ?? 1),
    eyeHeight: eyeHeight.value + (change?.eyeHeight?.value ?? 0),
    targetDrop,
  };
}

/** The card for the quiver: each distance with its mark, what a wind does there, and what a wrong distance costs. */
export function rangeCard(view: MarksView, span: Span, units: UnitChoice): Result<CardPaper> {
  const { fit, scale } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const launch = launchNow(view.picture, fit.value);
  const distances = spanDistances(span);
  const readings = readingsOf(view, distances);
  const drop = (height: Result<number>) =>
    height.ok && Number.isFinite(height.value) ? show(Math.abs(height.value), units) : '–';
  const across = WIND[units.distance];
  const farther = WRONG_BY * factorOf('distance', units);
  const rows = distances.map((distance, i): readonly string[] => {
    const reading = readings[i] ?? null;
    const wind = windDrift(launch, distance, { x: 0, y: 0, z: across * factorOf('wind', units) });
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
    proven: view.picture.from === 'proven',
    note: restsOn(view, fit.value, units),
    head: [
      `distance, ${unitOf('distance', units)}`,
      'mark',
      '95 %',
      `drift in ${across} ${unitOf('wind', units)} across, ${height}`,
      `low if ${WRONG_BY} ${unitOf('distance', units)} farther, ${height}`,
    ],
    rows,
    strong: distances.map((distance) => knownAt(view, distance)),
  });
}
