import { braceHeightRange } from '../../../core/bow/index.ts';
import type { BowKind } from '../../../core/model/bow.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { inch } from '../../../core/units/exact.ts';
import type { DrawnBow, DrawnFigures } from './figures.ts';
import { staveRoot } from './stave.ts';

/** A bow is marked 3 in longer than its string is. */
const STRING_SHORTER = 3 * inch;

/** Lengths that bows of a kind usually have, to draw one in pencil. */
const usualLength: Readonly<Record<BowKind, number>> = {
  'take-down recurve': 68 * inch,
  'one-piece recurve': 62 * inch,
  longbow: 70 * inch,
  flatbow: 66 * inch,
  'self bow': 66 * inch,
  compound: 38 * inch,
};

/** A recurve's limb root stands so much nearer to the string than its grip does, in pencil. */
const ROOT_NEARER = 1.1 * inch;

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** What stands on the drawing of this set-up. A figure that cannot be drawn to scale is drawn at the nearest that can. */
export function drawnBow({ bow, arrowSet, setup }: Bundle): DrawnBow {
  const { settings } = setup;
  const kind = bow.bowKind;
  const range = braceHeightRange(bow);
  const length = bow.length ?? usualLength[kind];
  const string = clamp(settings.stringLength ?? length - STRING_SHORTER, 28 * inch, 82 * inch);
  const brace = settings.braceHeight ?? (range === null ? 7 * inch : (range.low + range.high) / 2);
  const recurved = kind === 'take-down recurve' || kind === 'one-piece recurve';
  const root = recurved ? brace - ROOT_NEARER : staveRoot({ kind, brace, string });
  const tiller = settings.tiller ?? 0;
  const [upper, lower] = limbs(settings.tillerUpper, settings.tillerLower, root, tiller);
  const marked = bow.braceLow !== null && bow.braceHigh !== null;
  return {
    kind,
    hand: bow.hand,
    pass: bow.arrowPass,
    datum: settings.centreShotDatum,
    length,
    string,
    brace,
    upper,
    lower,
    nocking: settings.nockingPoint ?? (bow.arrowPass === 'rest and button' ? 0.006 : 0.012),
    centre: settings.centreShot ?? (bow.arrowPass === 'hand' ? 0.01 : 0.0024),
    arrow: arrowSet.length ?? 29 * inch,
    shaft: arrowSet.diameter ?? (arrowSet.material === 'wood' ? 0.008 : 0.006),
    vane: arrowSet.vaneLength ?? 0.045,
    vaneFrom: arrowSet.vaneFromThroat ?? 0.03,
    braceRange: marked && range !== null ? [range.low, range.high] : null,
    measured: {
      length: bow.length !== null,
      string: settings.stringLength !== null,
      brace: settings.braceHeight !== null,
      upper: settings.tillerUpper !== null,
      lower: settings.tillerLower !== null,
      nocking: settings.nockingPoint !== null,
      centre: settings.centreShot !== null,
      arrow: arrowSet.length !== null,
    },
  };
}

/** Both limbs as measured; where one is known the other stands by the tiller, and where none is the tiller is shared between them. */
function limbs(upper: number | null, lower: number | null, root: number, tiller: number): readonly [number, number] {
  if (upper !== null && lower !== null) return [upper, lower];
  if (upper !== null) return [upper, upper - tiller];
  if (lower !== null) return [lower + tiller, lower];
  return [root + tiller / 2, root - tiller / 2];
}

const names = ['length', 'string', 'brace', 'upper', 'lower', 'nocking', 'centre', 'arrow', 'shaft', 'vane', 'vaneFrom'] as const;

/** Only the figures: what the drawing follows. */
export const figuresOf = (bow: DrawnFigures): Record<(typeof names)[number], number> =>
  Object.fromEntries(names.map((name) => [name, bow[name]])) as Record<(typeof names)[number], number>;
