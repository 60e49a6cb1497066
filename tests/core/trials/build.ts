import { unmeasured } from '../../../core/model/unmeasured.ts';
import {
  exampleBare,
  exampleBundle,
  exampleFletched,
  type ArrowSet,
  type Archer,
  type Bow,
  type Bundle,
  type Context,
  type Form,
  type Settings,
  type ShotGroup,
} from '../../../core/model/index.ts';

/** Arrows evenly round a centre, in millimetres: a group whose centre and scatter are plain to see. */
export function ring(
  fletching: ShotGroup['fletching'],
  count: number,
  centreMm: readonly [number, number],
  radiusMm: number,
): ShotGroup {
  const base = fletching === 'fletched' ? exampleFletched : exampleBare;
  return {
    ...base,
    fletching,
    shots: Array.from({ length: count }, (_, index) => ({
      ...unmeasured.shot,
      id: index,
      x: (centreMm[0] + radiusMm * Math.cos((2 * Math.PI * index) / count)) / 1000,
      y: (centreMm[1] + radiusMm * Math.sin((2 * Math.PI * index) / count)) / 1000,
    })),
  };
}

export const withContext = (group: ShotGroup, context: Partial<Context>): ShotGroup => ({
  ...group,
  context: { ...group.context, ...context },
});

interface Parts {
  readonly archer?: Partial<Archer>;
  readonly bow?: Partial<Bow>;
  readonly arrowSet?: Partial<ArrowSet>;
  readonly settings?: Partial<Settings>;
  readonly form?: Partial<Form>;
}

/** The example's set-up with some of it changed. */
export function setUp({ archer, bow, arrowSet, settings, form }: Parts = {}): Bundle {
  const { setup } = exampleBundle;
  return {
    archer: { ...exampleBundle.archer, ...archer },
    bow: { ...exampleBundle.bow, ...bow },
    arrowSet: { ...exampleBundle.arrowSet, ...arrowSet },
    setup: { ...setup, settings: { ...setup.settings, ...settings }, form: { ...setup.form, ...form } },
  };
}

/** A group as it would have been shot with this set-up. */
export const shotWith = (bundle: Bundle, group: ShotGroup): ShotGroup =>
  withContext(group, { settings: bundle.setup.settings, form: bundle.setup.form, arrowSetId: bundle.arrowSet.id });

/** Seen in a mirror: every shot, the archer's hand and the bow's. */
export const mirroredGroup = (group: ShotGroup): ShotGroup => ({
  ...group,
  shots: group.shots.map((shot) => ({ ...shot, x: -shot.x })),
});
export const mirroredBundle = (bundle: Bundle): Bundle => ({
  ...bundle,
  archer: { ...bundle.archer, hand: bundle.archer.hand === 'right' ? 'left' : 'right' },
  bow: { ...bundle.bow, hand: bundle.bow.hand === 'right' ? 'left' : 'right' },
});
