import { forceDrawOf, weightAgainstReadings, type ReadingFlag, type WeightContradiction } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import { fieldOf } from './fieldOf.ts';
import type { Finding } from './finding.ts';
import { goTo, whyRule } from './parts.ts';

/** Readings that cannot be right as they stand; two readings of one draw, or one beyond full draw, may both be. */
const wrong: readonly ReadingFlag['code'][] = ['not rising', 'below brace', 'let-down above draw'];

/** Nearer than a brace height is read again, the readings belong to this one [m]. */
const SAME_BRACE = 0.0015;

interface Judged {
  readonly level: Finding['level'];
  readonly title: string;
  readonly detail: string;
  readonly word: string;
  /** What it asks for, where that is not the table. */
  readonly asks?: Finding['action'];
}

/**
 * The readings off the bow scale: whether they contradict the weight on the fingers or each other, and whether they are of this brace height.
 *
 * @equation caution where weightAgainstReadings or a flag of forceDrawOf says so, or at another brace height; else in range
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null without readings [record]
 * @validity as forceDrawOf; unknown while the curve cannot be drawn
 * @source own derivation
 * @example forceReadingsFinding(exampleBundle, defaultPreferences.units) // null
 */
export function forceReadingsFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const { bow, setup } = bundle;
  const count = bow.forceDraw.length;
  if (count === 0) return null;
  const { level, title, detail, word, asks } = judged(bundle, units);
  const { braceHeight } = setup.settings;
  const length = (si: number | null) => (si === null ? 'not on record' : textQuantity(si, 'length', units));
  return {
    id: 'forceReadings',
    level,
    title,
    detail,
    rule: null,
    short: { figure: String(count), word },
    why: whyRule(
      'Force-draw readings',
      'Pairs of draw and force, read on a scale. Every inch of draw adds force on a bow without cams; letting down takes some away; the weight on the fingers lies on the curve. What does not fit is kept, flagged and read again, and nothing is left out unsaid.',
      [
        ['', 'readings', String(count)],
        ['', 'brace height when they were read', length(bow.forceDrawBrace)],
        ['', 'brace height now', length(braceHeight)],
      ],
      'own derivation',
    ),
    action: level === 'ok' ? null : (asks ?? goTo('Read again', 'bow', 'bow.forceDraw')),
  };
}

function judged({ bow, archer, setup }: Bundle, units: UnitChoice): Judged {
  const count = bow.forceDraw.length;
  const { settings } = setup;
  const against = weightAgainstReadings(bow, archer, settings);
  if (against !== null) return { level: 'caution', word: 'readings', ...contradiction(against, units) };
  const curve = forceDrawOf({ bow, archer, setup }, units);
  if (!curve.ok && archer.drawLength === null)
    return {
      level: 'unknown',
      title: `${count} force readings, and no draw length`,
      detail: 'Enter a draw length: it gives the weight and the energy at this archer\u2019s own draw.',
      word: 'readings',
      asks: goTo('Enter', ...fieldOf('drawLength', ['bow', 'bow.forceDraw'])),
    };
  if (!curve.ok)
    return { level: 'unknown', title: 'Force-draw curve: cannot be drawn', detail: curve.problem.sentence, word: 'readings' };
  const odd = curve.value.flags.filter(({ code }) => wrong.includes(code));
  const rows = [...new Set(odd.map(({ index }) => index + 1))];
  const [first] = odd;
  if (first !== undefined)
    return {
      level: 'caution',
      title: `${rows.length} of ${count} force readings ${rows.length === 1 ? 'does' : 'do'} not fit`,
      detail: `Row ${first.index + 1}: ${first.sentence}${rows.length > 1 ? ' The others are marked in the table.' : ''}`,
      word: 'unfit',
    };
  const { braceHeight } = settings;
  const moved = bow.forceDrawBrace !== null && braceHeight !== null && Math.abs(bow.forceDrawBrace - braceHeight) > SAME_BRACE;
  const [note] = curve.value.notes;
  if (moved)
    return {
      level: 'caution',
      title: `Force readings are from a brace of ${textQuantity(bow.forceDrawBrace ?? 0, 'length', units)}`,
      detail: `It is ${textQuantity(braceHeight ?? 0, 'length', units)} now: read the bow again.`,
      word: 'readings',
    };
  if (curve.value.from !== 'readings')
    return {
      level: 'unknown',
      title: `${count} force readings: too few for a curve`,
      detail: note ?? 'Read the bow up to full draw.',
      word: 'readings',
    };
  return {
    level: 'ok',
    title: `${count} force readings, none odd`,
    detail: note ?? 'They rise with every inch, and agree with the weight on the fingers where there is one.',
    word: 'readings',
  };
}

function contradiction({ draw, onFingers, onScale }: WeightContradiction, units: UnitChoice): Pick<Judged, 'title' | 'detail'> {
  const text = (si: number) => textQuantity(si, 'weight', units);
  return {
    title: `${text(onFingers.value)} on the fingers, ${text(onScale.value)} in the table`,
    detail: `Both at ${textQuantity(draw, 'length', units)}, so one is wrong: read both again, with one scale.`,
  };
}
