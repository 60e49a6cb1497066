import { arrowMass } from '../../arrow/index.ts';
import type { Bundle } from '../../model/bundle.ts';
import type { SightMark } from '../../model/sightMark.ts';
import { markContext } from './markContext.ts';

type Context = SightMark['context'];

/** The figures of the one, and of the other where the one is blank: what nobody noted is taken to have stayed. */
function filled<T extends object>(one: T, other: T): T {
  const keys = Object.keys(one) as (keyof T)[];
  return keys.reduce((whole, key) => ({ ...whole, [key]: one[key] ?? other[key] }), one);
}

function together(one: Context, other: Context): Context {
  const settings = filled(one.settings, other.settings);
  // A weight holds at the draw that it was read at, a speed for the arrow and brace height: they go together or not at all.
  const { weightOnFingers, weightDraw } = one.settings.weightOnFingers === null ? other.settings : one.settings;
  const { arrowSpeed, speedMass, speedBrace } = one.settings.arrowSpeed === null ? other.settings : one.settings;
  const arrow = filled(one.arrow, other.arrow);
  // Where its parts tell what the whole weighs, nobody needs what another whole weighed.
  const built = one.arrow.weighed === null && arrowMass({ ...arrow, weighed: null, wall: null }).ok;
  return {
    ...one,
    drawLength: one.drawLength ?? other.drawLength,
    settings: { ...settings, weightOnFingers, weightDraw, arrowSpeed, speedMass, speedBrace },
    form: filled(one.form, other.form),
    arrow: built ? { ...arrow, weighed: null } : arrow,
  };
}

const withContext = ({ archer, bow, arrowSet, setup }: Bundle, { drawLength, settings, form, arrow }: Context): Bundle => ({
  archer: { ...archer, drawLength },
  bow,
  arrowSet: { ...arrowSet, ...arrow },
  setup: { ...setup, settings, form },
});

/**
 * A set-up as it was when a mark was shot in, and as it is, so far as the two can be told apart.
 *
 * @equation each with its own figures, and the other's where its own are blank
 * @param context - what the mark was shot in with [record]
 * @param bundle - the set-up as it stands [record]
 * @returns the set-up then and now [record]
 * @validity bow and what was timed over the chronograph are as they stand: a mark keeps no copy of them
 * @source own derivation
 * @example thenAndNow(markContext(exampleBundle, exampleNow), exampleBundle).then.setup.form.eyeHeight // 0.11
 */
export function thenAndNow(context: Context, bundle: Bundle): { readonly then: Bundle; readonly now: Bundle } {
  const stands = markContext(bundle, context.shotAt);
  return { then: withContext(bundle, together(context, stands)), now: withContext(bundle, together(stands, context)) };
}
