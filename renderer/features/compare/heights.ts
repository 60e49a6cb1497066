import { heightsApart, shortNames } from '../../../core/compare/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, refuse, type Result } from '../../../core/model/problem.ts';
import { factorOf, textQuantity, unitOf } from '../../../core/units/index.ts';
import type { HeightsData } from '../../plots/heights/marks.ts';

interface HeightsDrawn {
  readonly data: HeightsData;
  readonly sentence: string;
}

/** The distances of the trade where the marks stand, in the shown unit. */
const usual = { m: [18, 30, 40, 50, 60, 70], yd: [20, 30, 40, 50, 60, 80] } as const;

/** One arrow's height over the other's in the shown units, and the sentence for those who cannot see it. */
export function heightsDrawn(reference: Bundle, other: Bundle, units: UnitChoice): Result<HeightsDrawn> {
  const shown: readonly number[] = usual[units.distance];
  const [distance, height] = [factorOf('distance', units), factorOf('drop', units)];
  const apart = heightsApart(
    reference,
    other,
    shown.map((figure) => figure * distance),
  );
  if (!apart.ok) return apart;
  const last = apart.value.at(-1);
  if (apart.value.length < 2 || last === undefined)
    return refuse('short-flight', `One of the two does not reach ${shown[1]} ${unitOf('distance', units)} in a flat flight.`);
  const [name, otherName] = shortNames(reference.setup.name, other.setup.name);
  const text = (value: number) => textQuantity(value, 'drop', units);
  return ok({
    data: {
      reference: name,
      other: otherName,
      samples: apart.value.map((one) => ({
        distance: Math.round(one.distance / distance),
        value: one.value / height,
        low: one.low / height,
        high: one.high / height,
      })),
      distanceUnit: unitOf('distance', units),
      unit: unitOf('drop', units),
    },
    sentence: `With the sight mark of ${name}, ${otherName} strikes ${text(Math.abs(last.value))} ${last.value < 0 ? 'lower' : 'higher'} at ${textQuantity(last.distance, 'distance', units)}, between ${text(last.low)} and ${text(last.high)}.`,
  });
}
