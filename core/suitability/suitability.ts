import { arrowMass, endMasses, shaftMass, spineOf, type LoadedShaft, type ShaftSpine } from '../arrow/index.ts';
import { drawWeight, strokeOf, type DrawWeight, type Stroke } from '../bow/index.ts';
import {
  ok,
  refuse,
  type Archer,
  type ArrowPass,
  type ArrowSet,
  type Bow,
  type Measure,
  type Result,
  type Settings,
} from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { given } from '../model/given.ts';
import { poundForce } from '../units/exact.ts';
import { columnBands, columnFigure, type FigureBand } from './column.ts';
import { cyclesOnString, type Cycles } from './cycles.ts';
import { spineDoubt, weightDoubt } from './doubt.ts';
import { inBothUnits } from './inBothUnits.ts';
import { ruleOfThumb, type DoesNotApply, type ThumbView } from './ruleOfThumb.ts';
import { fitOf, settled, type Needed, type Verdict } from './verdict.ts';
import { agreed, opposed, type View } from './views.ts';

/** The records that suitability rests on. */
export interface SuitabilityInput {
  readonly bow: Bow;
  readonly archer: Pick<Archer, 'drawLength'>;
  readonly arrowSet: ArrowSet;
  readonly settings: Pick<Settings, 'weightOnFingers' | 'weightDraw' | 'braceHeight'>;
}

/** The draw force against the load at which the shaft buckles. */
export interface ColumnView {
  readonly figure: number;
  /** The figure at the ends of what the draw weight and the spine may be. */
  readonly figureLow: number;
  readonly figureHigh: number;
  readonly band: FigureBand;
  /** Mass at the front over mass of shaft and front. */
  readonly frontShare: number;
  readonly needed: Needed;
  readonly verdict: Verdict;
}

/** The one line from too stiff to too weak, in deflection on the standard tester [m]. */
export interface Margin {
  /** As the shaft was measured, or as its tube lets expect, and the ends between which it is held to lie. */
  readonly measured: number;
  readonly low: number;
  readonly high: number;
  readonly needed: Needed & { readonly middle: number };
  /** Measured less the middle of what is needed: positive is weak, negative stiff. */
  readonly value: number;
  /** How far beyond the nearer end of what is needed, with the same sign: 0 inside. */
  readonly outside: number;
}

export interface Suitability {
  readonly verdict: Verdict;
  /** Why the verdict cannot be given, ready to read; null when it is given. */
  readonly why: string | null;
  readonly weight: DrawWeight;
  readonly spine: ShaftSpine;
  /** Every view that speaks, as a band on the one line with its verdict: what the screens draw. */
  readonly views: readonly View[];
  readonly column: ColumnView;
  readonly rule: ThumbView | DoesNotApply;
  readonly cycles: (Cycles & { readonly applies: true; readonly braceFrom: Stroke['braceFrom'] }) | DoesNotApply;
  readonly margin: Margin;
  /** Whether the views say the same; null when there is only one, or one of them cannot tell. */
  readonly viewsAgree: boolean | null;
}

/** The set-ups that the column bands were remembered from lie in here. */
export const columnWeightLb = { from: 14, to: 60 } as const;

/** Only an estimated weight or a spine from a tube can leave it open. */
const straddles = (from: DrawWeight['from']): string => {
  const differently = 'at its low and high end this shaft reads differently';
  if (from === 'marked weight') return `Only the marked weight is known, and ${differently}. ${WEIGH}`;
  if (from === 'at another draw') return `The weight was not read at this draw, and ${differently}. ${WEIGH}`;
  return `The spine was reckoned from the tube, and ${differently}. Put the shaft on a spine tester.`;
};
const WEIGH = 'Weigh the bow at full draw with a scale.';
const BEYOND = `The bands come from bows of ${inBothUnits(columnWeightLb, 'lb')} on the fingers; this one lies outside, so only the figure is given.`;
const OPPOSED =
  'The load on the shaft says one thing and the rule of thumb the opposite. Shoot a bare shaft with the fletched ones before buying any.';

const marginOf = ({ value: measured, low, high }: Band, needed: Needed): Margin => {
  const middle = (needed.low + needed.high) / 2;
  const fit = fitOf(measured, needed);
  const outside = fit === 'in range' ? 0 : measured - (fit === 'weak' ? needed.high : needed.low);
  return { measured, low, high, needed: { ...needed, middle }, value: measured - middle, outside };
};

const cyclesOf = (input: SuitabilityInput, weight: number, shaft: LoadedShaft): Suitability['cycles'] => {
  const { bow, archer, arrowSet, settings } = input;
  const stroke = strokeOf(bow, archer, settings);
  if (!stroke.ok) return { applies: false, why: stroke.problem.sentence };
  const arrow = arrowMass(arrowSet);
  if (!arrow.ok) return { applies: false, why: arrow.problem.sentence };
  const cycles = cyclesOnString(bow.bowKind, weight, stroke.value.stroke, arrow.value.mass, shaft);
  if (cycles === null) return { applies: false, why: 'The cycles are not reckoned for a compound.' };
  return { applies: true, ...cycles, braceFrom: stroke.value.braceFrom };
};

/** What else is wanted, so that one sentence can name everything that is missing. */
const stillMissing = ({ bow, archer, arrowSet, settings }: SuitabilityInput): Partial<Record<Measure, null>> => {
  const unweighed = arrowSet.linearDensity === null && arrowSet.weighed === null && !shaftMass(arrowSet).ok;
  const unread = settings.weightOnFingers === null;
  return {
    ...(unweighed ? { linearDensity: null } : {}),
    ...(unread && bow.markedWeight === null ? { weightOnFingers: null } : {}),
    ...(unread && bow.markedWeight !== null && archer.drawLength === null ? { drawLength: null } : {}),
  };
};

const reason = (verdict: Verdict, column: Verdict, beyond: boolean, straddling: string): string | null => {
  if (verdict !== 'cannot tell') return null;
  if (beyond) return BEYOND;
  return column === 'cannot tell' ? straddling : OPPOSED;
};

/**
 * Whether a shaft suits this bow at this draw: the column view, the rule of thumb inside its domain, the cycles figure, one margin.
 *
 * @equation C = F L² / (EI c(r)) against its band; needed δ₂₈ from C at both ends of the band; margin = δ₂₈ of the shaft, measured or from its tube, − middle of needed
 * @param input - bow, archer, arrowSet and settings of a set-up [record]
 * @param bands - between which column figures a shaft suits, by what carries the arrow; the bands from memory unless given [record]
 * @returns verdict, views, needed deflection and margin on the standard tester [m] [record]
 * @validity finger release, 14 to 60 lb; cannot tell when the band of an estimated weight, or of a spine from a tube, straddles a limit or the views are opposed; refused for a compound and when a figure is missing or outside the model's limits, which the sentence names
 * @source from memory
 * @example suitability({ ...exampleBundle, settings: exampleBundle.setup.settings }).value.verdict // "in range"
 */
export function suitability(
  input: SuitabilityInput,
  bands: Readonly<Record<ArrowPass, FigureBand>> = columnBands,
): Result<Suitability> {
  const { bow, archer, arrowSet, settings } = input;
  if (bow.bowKind === 'compound')
    return refuse(
      'compound',
      'Whether a shaft suits is judged for a finger release; a compound is let go with a release aid, so the verdict does not apply.',
      'bowKind',
    );
  const spine = spineOf(arrowSet);
  const figures = given<'arrowLength' | 'deflection' | 'pointMass'>('a verdict on the shaft', {
    arrowLength: arrowSet.length,
    deflection: spine.ok ? spine.value.deflection.value : arrowSet.deflection,
    pointMass: arrowSet.pointMass,
    ...stillMissing(input),
  });
  if (!spine.ok && spine.problem.code !== 'missing') return spine;
  if (!figures.ok) return figures;
  if (!spine.ok) return spine;
  const shaft = shaftMass(arrowSet);
  if (!shaft.ok) return shaft;
  const ends = endMasses(arrowSet);
  if (!ends.ok) return ends;
  const drawn = drawWeight(bow, archer, settings);
  if (!drawn.ok) return drawn;

  const { arrowLength, deflection: measured, pointMass } = figures.value;
  const weight = drawn.value;
  const stiffness = spine.value.stiffness.value;
  const { nockMass, frontMass } = ends.value;
  const frontShare = frontMass / (shaft.value.mass + frontMass);
  const band = bands[bow.arrowPass];
  const figure = columnFigure(weight.value, arrowLength, stiffness, frontShare);
  // The figure goes with the force and with the deflection, so that the buckling factor is worked out once.
  const sag = spine.value.deflection;
  const figureAt = (force: number, deflection: number) => (((figure * force) / weight.value) * deflection) / measured;
  const neededAt = (wanted: number) => (measured * wanted) / figure;

  const pounds = weight.value / poundForce;
  const beyond = pounds < columnWeightLb.from - 1e-6 || pounds > columnWeightLb.to + 1e-6;
  const [ofWeight, ofSpine] = [weightDoubt(weight), spineDoubt(spine.value)];
  const within = settled(fitOf(figure * ofWeight.low * ofSpine.low, band), fitOf(figure * ofWeight.high * ofSpine.high, band));
  const columnVerdict: Verdict = beyond ? 'cannot tell' : within;
  const column: ColumnView = {
    figure,
    figureLow: figureAt(weight.low, sag.low),
    figureHigh: figureAt(weight.high, sag.high),
    band,
    frontShare,
    needed: { low: neededAt(band.low), high: neededAt(band.high) },
    verdict: columnVerdict,
  };
  const rule = ruleOfThumb({
    material: arrowSet.material,
    arrowPass: bow.arrowPass,
    weight,
    length: arrowLength,
    pointMass,
    deflection: measured,
    convention: '28 in, 880 g',
  });

  const views: readonly View[] = [
    { name: 'Load on the shaft', needed: column.needed, verdict: column.verdict },
    ...(rule.applies ? [{ name: 'Rule of thumb', needed: rule.needed, verdict: rule.verdict }] : []),
  ];
  const verdict = opposed(views) ? 'cannot tell' : column.verdict;
  return ok({
    verdict,
    why: reason(verdict, column.verdict, beyond, straddles(weight.from)),
    weight,
    spine: spine.value,
    views,
    column,
    rule,
    cycles: cyclesOf(input, weight.value, {
      stiffness,
      linearDensity: shaft.value.mass / arrowLength,
      length: arrowLength,
      nockMass,
      frontMass,
    }),
    margin: marginOf(sag, column.needed),
    viewsAgree: agreed(views),
  });
}
