import { readSpine } from '../../../core/arrow/index.ts';
import type { Finding } from '../../../core/findings/finding.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import { figuresOf, type FigureSpec } from '../../design/figureSpecs.ts';
import type { FigureProps } from '../../design/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { useEdits } from '../../state/useEdits.ts';

/** The figures of an arrow set, by the record's own names. */
export type ArrowField = {
  [K in keyof ArrowSet]-?: null extends ArrowSet[K] ? (ArrowSet[K] extends number | null ? K : never) : never;
}[keyof ArrowSet];

const specs: Readonly<Record<ArrowField, FigureSpec>> = {
  length: { measure: 'arrowLength', name: 'length', label: 'Arrow length', hint: 'Throat of the nock to the end of the shaft.' },
  deflection: { measure: 'deflection', name: 'deflection', label: 'Spine deflection' },
  linearDensity: {
    measure: 'linearDensity',
    name: 'shaft’s mass',
    label: 'Shaft mass per length',
    hint: 'Per length of bare shaft.',
  },
  diameter: { measure: 'shaftDiameter', name: 'outer diameter', label: 'Shaft diameter' },
  wall: {
    measure: 'wall',
    name: 'wall',
    label: 'Wall of the tube',
    hint: 'Of a metal tube: with the diameter it gives the spine.',
  },
  balance: {
    measure: 'balance',
    name: 'balance point',
    label: 'Balance point',
    hint: 'Throat of the nock to where the whole arrow balances on an edge.',
  },
  pointMass: { measure: 'pointMass', name: 'point', label: 'Point mass' },
  insertMass: { measure: 'insertMass', name: 'insert', label: 'Insert mass' },
  nockMass: { measure: 'nockMass', name: 'nock', label: 'Nock mass' },
  pinMass: {
    measure: 'pinMass',
    name: 'pin',
    label: 'Pin mass',
    hint: 'A pin in the tail that carries the nock. Blank counts as none.',
  },
  wrapMass: { measure: 'wrapMass', name: 'wrap', label: 'Wrap mass', hint: 'Under the fletching. Blank counts as none.' },
  fletchingMass: {
    measure: 'fletchingMass',
    name: 'fletching',
    label: 'Fletching mass',
    hint: 'All the vanes or feathers of one arrow.',
  },
  vaneCount: { measure: 'vaneCount', name: 'vanes', label: 'Number of vanes' },
  vaneLength: { measure: 'vaneLength', name: 'fletching length', label: 'Fletching length' },
  vaneFromThroat: {
    measure: 'vaneFromThroat',
    name: 'throat to fletching',
    label: 'Place of the fletching',
    hint: 'Throat of the nock to the back end of the fletching.',
  },
  weighed: {
    measure: 'arrowMass',
    name: 'whole arrow',
    label: 'Weighed arrow',
    hint: 'On a scale, fletched. When it is there it governs the sum of the parts.',
  },
};

const arrowFields = Object.keys(specs) as readonly ArrowField[];

/** A figure as the drawing shows it: in the colour of the finding that it can mend. */
type DrawnFigure = FigureProps & { readonly level: 'caution' | 'stop' | undefined };
type Levels = Readonly<Partial<Record<ArrowField, 'caution' | 'stop'>>>;

/** The grave findings by the figure that mends each; the first is the worst. */
export function fieldLevels(findings: readonly Finding[]): Levels {
  const levels: Partial<Record<ArrowField, 'caution' | 'stop'>> = {};
  for (const { level, action } of findings) {
    const field = arrowFields.find((one) => action?.kind === 'go' && action.field === `arrowSet.${one}`);
    if (field !== undefined && (level === 'caution' || level === 'stop')) levels[field] ??= level;
  }
  return levels;
}

/** Every figure of the arrow with how it is kept: the same on the drawing and in the plain form. */
export function useArrowFields(
  arrowSet: ArrowSet,
  assumed: Partial<Record<ArrowField, number | null>>,
  levels: Levels,
): Readonly<Record<ArrowField, DrawnFigure>> {
  const edit = useEdits();
  const units = useUnits();
  const kept = figuresOf('arrowSet', specs, arrowSet, (label, patch) => edit.arrowSet(label, patch));
  const fields = Object.fromEntries(
    arrowFields.map((field) => [field, { ...kept[field], assumed: assumed[field] ?? undefined, level: levels[field] }]),
  ) as Record<ArrowField, DrawnFigure>;
  const wood = arrowSet.convention === '26 in, 2 lb';
  return {
    ...fields,
    deflection: {
      ...fields.deflection,
      read: (typed) => readSpine(typed, arrowSet.convention, units),
      ...(wood ? { hint: 'The deflection, or the shaft’s pounds as in 45 lb.' } : {}),
    },
  };
}
