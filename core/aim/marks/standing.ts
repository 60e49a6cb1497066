import { arrowMass } from '../../arrow/index.ts';
import { tillerOf } from '../../bow/index.ts';
import { arrowFields, formFields, settingFields, type Field } from '../../compare/fields.ts';
import type { Bundle } from '../../model/bundle.ts';
import { wallTime, type Stamp } from '../../model/common.ts';
import type { FlownArrow, SightMark } from '../../model/sightMark.ts';
import type { Use } from '../../units/uses.ts';
import { markContext } from './markContext.ts';

type Context = SightMark['context'];

/** A figure or a choice that is not as it was when a mark was shot in. A figure is in SI and has a use; a choice is a word. */
export interface ChangedSince {
  /** record.field, as everywhere. */
  readonly key: string;
  readonly name: string;
  readonly use: Use | null;
  readonly then: string | number;
  readonly now: string | number;
}

export interface MarkStanding {
  /** Nothing that bears on the height of the arrow is known to be otherwise. */
  readonly proven: boolean;
  readonly changes: readonly ChangedSince[];
}

/** What moves the arrows up or down. What only moves them sideways, how a figure was read, and the ends of the bar are left out. */
const settings = [
  'braceHeight',
  'tiller',
  'nockingPoint',
  'weightOnFingers',
  'arrowSpeed',
  'upperBolt',
  'lowerBolt',
  'nockFit',
  'stringMaterial',
  'strands',
  'stringLength',
  'stringMass',
  'twists',
  'sightUnit',
  'sightGrows',
  'sightRadius',
] as const;
const form = ['anchor', 'hook', 'fingerCover', 'eyeHeight'] as const;
const arrow = [
  'material',
  'length',
  'diameter',
  'linearDensity',
  'pointMass',
  'insertMass',
  'nockMass',
  'fletchingMass',
  'pinMass',
  'wrapMass',
  'weighed',
  'vaneCount',
  'vaneLength',
] as const;

/** What a careful hand reads a draw again to [m]: from memory. */
const DRAW_AGAIN = 0.003;
/** A figure typed in another unit may be a rounding away from its resolution. */
const HAIR = 1e-9;

type Figures = Readonly<Record<string, unknown>>;

function among(record: string, keys: readonly string[], fields: readonly Field[], then: Figures, now: Figures): ChangedSince[] {
  return fields
    .filter(({ key }) => keys.includes(key))
    .flatMap(({ key, name, use, resolution }) => {
      const [was, is] = [then[key], now[key]];
      const known = (value: unknown): value is string | number => typeof value === 'string' || typeof value === 'number';
      if (!known(was) || !known(is)) return [];
      const same = typeof was === 'number' && typeof is === 'number' ? Math.abs(is - was) <= resolution + HAIR : was === is;
      return same ? [] : [{ key: `${record}.${key}`, name, use, then: was, now: is }];
    });
}

const day = (stamp: Stamp): string => new Date(wallTime(stamp)).toISOString().slice(0, 10);

/** A string that was put on after the mark was shot in, or another than the one that was on. */
function fittedSince(then: Context, now: Context): ChangedSince[] {
  const [was, is] = [then.settings.stringFitted, now.settings.stringFitted];
  if (is === null || is === was || (was === null && is <= day(then.shotAt))) return [];
  return [
    { key: 'settings.stringFitted', name: 'String fitted on', use: null, then: was ?? `before ${day(then.shotAt)}`, now: is },
  ];
}

/** The parts of one arrow, and the other's where its own are blank: what nobody noted is taken to have stayed. Whether it was weighed is its own. */
function whole(one: FlownArrow, other: FlownArrow): number | null {
  const parts = arrow.reduce((all, key) => ({ ...all, [key]: one[key] ?? other[key] }), one);
  // The wall of a tube is in no mark's copy, so that its mass by geometry cannot be told.
  const mass = arrowMass({ ...parts, weighed: one.weighed, wall: null });
  return mass.ok ? mass.value.mass : null;
}

/** The whole arrow, where no part of it says already why it weighs otherwise: weighed once and built of its parts now, say. */
function massSince(then: FlownArrow, now: FlownArrow): ChangedSince[] {
  const field = arrowFields.find(({ key }) => key === 'weighed');
  const [was, is] = [whole(then, now), whole(now, then)];
  if (field === undefined || was === null || is === null) return [];
  return Math.abs(is - was) <= field.resolution + HAIR
    ? []
    : [{ key: 'arrowSet.mass', name: 'Arrow mass', use: field.use, then: was, now: is }];
}

const isOfMass = ({ key }: ChangedSince): boolean => /Mass$|\.weighed$|\.linearDensity$|\.length$/.test(key);

/**
 * What is not as it was when a mark was shot in, of all that moves the arrows up or down.
 *
 * @equation figures known both times that differ by more than can be read again, choices known both times that differ, another set of arrows, a whole arrow that weighs otherwise by arrowMass, a string fitted since
 * @param then - what the mark was shot in with [record]
 * @param now - what it is held against [record]
 * @returns each change, none when the mark holds [list]
 * @validity a figure that was blank then and noted since is no change; what only moves arrows sideways is none
 * @source common practice
 * @example changesSince(markContext(exampleBundle, exampleNow), markContext(exampleBundle, exampleNow)) // []
 */
export function changesSince(then: Context, now: Context): readonly ChangedSince[] {
  const read = (context: Context) => ({ ...context.settings, tiller: tillerOf(context.settings) });
  const draw: Field = { key: 'drawLength', name: 'Draw length', use: 'length', resolution: DRAW_AGAIN };
  const otherArrows: ChangedSince = {
    key: 'arrowSet.id',
    name: 'Arrows',
    use: null,
    then: 'another set',
    now: 'this set',
  };
  const ofArrow = among('arrowSet', arrow, arrowFields, then.arrow, now.arrow);
  const sameSet = then.arrowSetId === now.arrowSetId;
  return [
    ...among('settings', settings, settingFields, read(then), read(now)),
    ...fittedSince(then, now),
    ...among('form', form, formFields, then.form, now.form),
    ...among('archer', ['drawLength'], [draw], then, now),
    ...(sameSet ? [] : [otherArrows]),
    ...ofArrow,
    ...(sameSet && !ofArrow.some(isOfMass) ? massSince(then.arrow, now.arrow) : []),
  ];
}

/**
 * Whether a known mark still holds, and what speaks against it.
 *
 * @equation proven when `changesSince` finds nothing between what the mark was shot in with and the set-up as it stands
 * @param mark - the mark with its context [record]
 * @param bundle - the set-up as it stands [record]
 * @returns whether it is proven, and each change [record]
 * @validity as `changesSince`
 * @source common practice
 * @example markStanding({ context: markContext(exampleBundle, exampleNow) }, exampleBundle).proven // true
 */
export function markStanding(mark: Pick<SightMark, 'context'>, bundle: Bundle): MarkStanding {
  const changes = changesSince(mark.context, markContext(bundle, mark.context.shotAt)).map((change) =>
    change.key === 'arrowSet.id' ? { ...change, now: bundle.arrowSet.name } : change,
  );
  return { proven: changes.length === 0, changes };
}
