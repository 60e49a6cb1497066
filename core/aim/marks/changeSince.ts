import { tillerOf } from '../../bow/index.ts';
import type { Band } from '../../model/band.ts';
import type { Bundle } from '../../model/bundle.ts';
import { ok, refuse, type Result } from '../../model/problem.ts';
import type { SightMark } from '../../model/sightMark.ts';
import { diameterOf, eyeHeightOf } from '../assumed.ts';
import type { MarksChange } from './movedMarks.ts';
import { massesSince, type Since, speedChange } from './speedChange.ts';
import { changesSince } from './standing.ts';
import { markContext } from './markContext.ts';
import { thenAndNow } from './thenAndNow.ts';

/** An eye height or a sight radius measured twice, each to 5 mm [m]: from memory. */
const MEASURED_AGAIN = Math.SQRT2 * 0.005;
/** How far the eye may stand otherwise where nobody measured it again, 95 % [m]: another anchor, another hook, another cover. From memory. */
const ANCHOR = 0.035;
const HOOK = 0.02;
const COVER = 0.003;
/** Another shaft, material or fletching: how far the drag itself may differ, 95 % [-]. From memory. */
const OTHER_DRAG = 0.15;
/** A new string's nocking point is tied in again to about this [m]: from memory. */
const TIED_AGAIN = 0.001;
/** Between the limbs' roots, where the tiller is read [m]; a brace height and a draw that nobody measured [m]: from memory. */
const ROOTS_APART = 0.65;
const usualBrace = 0.21;
const usualDraw = 0.71;

const about = (value: number, by: number): Band => ({ value, low: value - Math.abs(by), high: value + Math.abs(by) });

function dragChange({ then, now, changed }: Since, masses: { readonly then: number; readonly now: number }): Band {
  const [before, after] = [diameterOf(then.arrowSet).value, diameterOf(now.arrowSet).value];
  const value = (after / before) ** 2 * (masses.then / masses.now);
  const shaped = ['id', 'diameter', 'material', 'vaneCount', 'vaneLength'].some((key) => changed.has(`arrowSet.${key}`));
  // As a share: of a drag three times as great a half width in plain numbers would reach below nought.
  const by = Math.exp(Math.hypot(Math.log(value) / 2, shaped ? Math.log(1 + OTHER_DRAG) : 0));
  return { value, low: value / by, high: value * by };
}

function eyeChange({ then, now, changed }: Since): Band {
  const [before, after] = [then.setup.form, now.setup.form];
  if (changed.has('form.eyeHeight')) return about((after.eyeHeight ?? 0) - (before.eyeHeight ?? 0), MEASURED_AGAIN);
  const usual = (form: typeof before) => eyeHeightOf({ eyeHeight: null, anchor: form.anchor }).value;
  const anchored = changed.has('form.anchor');
  const doubts = [anchored ? ANCHOR : 0, changed.has('form.hook') ? HOOK : 0, changed.has('form.fingerCover') ? COVER : 0];
  return about(anchored ? usual(after) - usual(before) : 0, Math.hypot(...doubts));
}

function radiusChange({ then, now, changed }: Since): Band {
  const by = (before: number | null, after: number | null) => (after ?? 0) - (before ?? 0);
  if (changed.has('settings.sightRadius'))
    return about(by(then.setup.settings.sightRadius, now.setup.settings.sightRadius), MEASURED_AGAIN);
  // The eye goes back with the string, the pin stays on the bow.
  const drawn = changed.has('archer.drawLength') ? by(then.archer.drawLength, now.archer.drawLength) : 0;
  return about(drawn, drawn / 2);
}

/** How far nocking point, tiller and a string tied in anew may turn the arrow up or down [rad]: which way it goes nobody can say. */
function launchTurn({ then, now, changed }: Since): number {
  const [before, after] = [then.setup.settings, now.setup.settings];
  const nock = (after.nockingPoint ?? 0) - (before.nockingPoint ?? 0);
  // As the bow leans with its tiller, the string at the nock comes to stand higher or lower against the arrow's rest.
  const lean = ((tillerOf(after) ?? 0) - (tillerOf(before) ?? 0)) / ROOTS_APART;
  const string = changed.has('settings.stringFitted') && !changed.has('settings.nockingPoint') ? TIED_AGAIN : 0;
  const moved = Math.hypot(nock, lean * (after.braceHeight ?? usualBrace), string);
  return moved / (now.archer.drawLength ?? usualDraw);
}

/** Nothing but rounding is left of a change. */
const stays = (band: Band, at: number): boolean => [band.value, band.low, band.high].every((end) => Math.abs(end - at) < 1e-9);

/**
 * What changed for the model of the marks since they were shot in, as far as it can be told.
 *
 * @equation v'/v of speedChange; k'/k = (D'/D)² m/m' times or over its root, and 1.15 times or over for another shaft or fletching, their logarithms in quadrature; e' − e ± 7 mm, or of the usual heights by anchor; r' − r ± 7 mm, or with the draw; launch about nought ± √(Δ nocking point² + (Δ tiller × brace / 0.65 m)²)/draw
 * @param context - what the marks were shot in with [record]
 * @param bundle - the set-up as it stands [record]
 * @returns each change with its 95 % band, those that stayed left out; or the refusal that says what is missing [record]
 * @validity as `changesSince`; another scale of the sight is refused, since nothing it read before says what it reads now
 * @source own derivation; from memory
 * @example changeSince(markContext(exampleBundle, exampleNow), exampleBundle).value // {}
 */
export function changeSince(context: SightMark['context'], bundle: Bundle): Result<MarksChange> {
  const changed = new Set(changesSince(context, markContext(bundle, context.shotAt)).map(({ key }) => key));
  if (changed.has('settings.sightUnit') || changed.has('settings.sightGrows'))
    return refuse(
      'another-scale',
      'The sight has another scale since: what it read before says nothing of what it reads now. Shoot the marks in again.',
      'sightUnit',
    );
  const since: Since = { ...thenAndNow(context, bundle), changed };
  const masses = massesSince(since);
  if (!masses.ok) return masses;
  const speed = speedChange(since, masses.value);
  const k = dragChange(since, masses.value);
  const [eyeHeight, sightRadius, launchAngle] = [eyeChange(since), radiusChange(since), about(0, launchTurn(since))];
  return ok({
    ...(stays(speed, 1) ? {} : { speed }),
    ...(stays(k, 1) ? {} : { k }),
    ...(stays(eyeHeight, 0) ? {} : { eyeHeight }),
    ...(stays(sightRadius, 0) ? {} : { sightRadius }),
    ...(stays(launchAngle, 0) ? {} : { launchAngle }),
  });
}
