import { shaftMass } from '../arrow/index.ts';
import type { ArrowSet } from '../model/arrowSet.ts';
import type { Bundle } from '../model/bundle.ts';
import type { Move } from './move.ts';

/** Each numbered arrow loses as much as the others. */
const lighter = (arrows: ArrowSet['arrows'], by: number): ArrowSet['arrows'] =>
  arrows.map((arrow) => ({ ...arrow, mass: less(arrow.mass, by) }));

const less = (figure: number | null, by: number): number | null => (figure === null ? null : figure - by);

/**
 * A set-up as one move would leave it.
 *
 * @equation point: point, weighed mass and numbered masses by the difference; length: shaft, those masses and measured reach by what is cut off; weight: as read on the fingers at this draw; shaft: another deflection on the standard tester
 * @param bundle - the set-up with its records [record]
 * @param move - what is changed, and the figure it is changed to [SI] [record]
 * @returns the set-up after it; a measured balance point holds no longer and is left out [record]
 * @validity another shaft is taken to have this one's mass and length
 * @source own derivation
 * @example movedBundle(exampleBundle, { what: 'weight', to: 150 }).setup.settings.weightOnFingers // 150
 */
export function movedBundle(bundle: Bundle, { what, to }: Pick<Move, 'what' | 'to'>): Bundle {
  const { archer, arrowSet, setup } = bundle;
  const { settings } = setup;
  switch (what) {
    case 'point': {
      const by = (arrowSet.pointMass ?? to) - to;
      return {
        ...bundle,
        arrowSet: {
          ...arrowSet,
          pointMass: to,
          weighed: less(arrowSet.weighed, by),
          balance: null,
          arrows: lighter(arrowSet.arrows, by),
        },
      };
    }
    case 'length': {
      const { length } = arrowSet;
      const by = (length ?? to) - to;
      const shaft = shaftMass(arrowSet);
      const cutOff = shaft.ok && length !== null ? (shaft.value.mass / length) * by : 0;
      return {
        ...bundle,
        arrowSet: {
          ...arrowSet,
          length: to,
          weighed: less(arrowSet.weighed, cutOff),
          balance: null,
          arrows: lighter(arrowSet.arrows, cutOff),
        },
        setup: { ...setup, settings: { ...settings, pointAhead: less(settings.pointAhead, by) } },
      };
    }
    case 'weight':
      return {
        ...bundle,
        setup: { ...setup, settings: { ...settings, weightOnFingers: to, weightDraw: archer.drawLength } },
      };
    case 'shaft':
      return { ...bundle, arrowSet: { ...arrowSet, deflection: to, convention: '28 in, 880 g' } };
  }
}
