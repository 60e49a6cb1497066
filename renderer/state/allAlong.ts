import { markContext, markStanding } from '../../core/aim/index.ts';
import { tillerOf } from '../../core/bow/index.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import type { Id } from '../../core/model/common.ts';
import type { RecordEdit } from '../../core/model/records.ts';
import type { SightMark } from '../../core/model/sightMark.ts';
import { edited } from './bench.ts';
import { bundleOf, type Records } from './selectors.ts';

type Context = SightMark['context'];

/** A Change takes no more. */
const MOST_EDITS = 200;

/** A string has its date to tell whether it was on already; a tiller is read in two ways, and the one that the mark has governs. */
const aside = ({ settings }: Context): ReadonlySet<string> =>
  new Set(['stringFitted', ...(tillerOf(settings) === null ? [] : ['tiller', 'tillerUpper', 'tillerLower'])]);

/** The copy with what it has blank, of the figures that the Change touches: as it stood, or as it is typed now for the first time. */
function filled<T extends object>(copy: T, before: T, after: T, without: ReadonlySet<string> = new Set()): T {
  const keys = (Object.keys(copy) as (keyof T & string)[]).filter(
    (key) => copy[key] === null && before[key] !== after[key] && !without.has(key),
  );
  const known = keys.map((key) => [key, before[key] ?? after[key]] as const).filter(([, value]) => value !== null);
  return known.length === 0 ? copy : { ...copy, ...Object.fromEntries(known) };
}

const drawn = ({ drawLength }: Context) => ({ drawLength });

function better(copy: Context, before: Bundle, after: Bundle): Context | null {
  const [was, is] = [markContext(before, copy.shotAt), markContext(after, copy.shotAt)];
  const settings = filled(copy.settings, was.settings, is.settings, aside(copy));
  const form = filled(copy.form, was.form, is.form);
  const arrow = filled(copy.arrow, was.arrow, is.arrow);
  const { drawLength } = filled(drawn(copy), drawn(was), drawn(is));
  const stays = settings === copy.settings && form === copy.form && arrow === copy.arrow && drawLength === copy.drawLength;
  return stays ? null : { ...copy, settings, form, arrow, drawLength };
}

/**
 * A figure that is typed for the first time is taken to have been so all along: sight marks that held till then keep a copy of it, for else
 * the next change of it would go unnoticed. In the same Change, so that one undo takes back both.
 */
export function allAlong(records: Records, edits: readonly RecordEdit[]): readonly RecordEdit[] {
  const after = new Map(records);
  for (const { id, after: record } of edits) if (record !== null) after.set(id, record);
  const touched = new Set<Id>(edits.map(({ id }) => id));
  const marks: RecordEdit[] = [];
  for (const mark of records.values()) {
    if (mark.kind !== 'sightMark' || touched.has(mark.id)) continue;
    const [was, is] = [bundleOf(records, mark.setupId), bundleOf(after, mark.setupId)];
    if (was === null || is === null) continue;
    const concerns = [was.setup, was.archer, was.arrowSet].some(({ id }) => touched.has(id));
    // Other arrows, or another archer, are no better known ones.
    const same = was.archer.id === is.archer.id && was.arrowSet.id === is.arrowSet.id;
    if (!concerns || !same || !markStanding(mark, was).proven) continue;
    const context = better(mark.context, was, is);
    if (context !== null) marks.push(edited(mark, { context }));
  }
  return [...edits, ...marks.slice(0, Math.max(0, MOST_EDITS - edits.length))];
}
