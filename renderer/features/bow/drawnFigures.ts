import type { Finding } from '../../../core/findings/finding.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { DrawnFigure } from '../../drawing/bow/BowDrawing.tsx';
import type { DrawnBow } from '../../drawing/bow/figures.ts';
import type { FigureText, OnDrawing } from '../../drawing/bow/standing.ts';
import { figureText } from '../../drawing/dimension/figureBox.ts';
import type { FigureProps } from '../../design/index.ts';
import type { BowFields } from './useBowFields.ts';

type OnSheet = OnDrawing | 'nocking' | 'centre';

/** The figures of the drawing and of its two details: which field each is, what is drawn until it is measured, and how its name is written. */
export function drawnFigures(
  { settings, bow, arrowLength }: BowFields,
  drawn: DrawnBow,
  findings: readonly Finding[],
): Readonly<Record<OnSheet, DrawnFigure>> {
  const figure = (props: FigureProps, assumed?: number, lines: readonly string[] = [props.name]): DrawnFigure => ({
    ...props,
    lines,
    assumed,
    level: levelOf(props.field, findings),
  });
  return {
    upper: figure(settings.tillerUpper, wholeMillimetres(drawn.upper), ['upper limb', 'to string']),
    brace: figure(settings.braceHeight, drawn.brace),
    lower: figure(settings.tillerLower, wholeMillimetres(drawn.lower), ['lower limb', 'to string']),
    tiller: figure(settings.tiller),
    string: figure(settings.stringLength, drawn.string),
    // The dimension runs from tip to tip; a bow is marked by its string.
    length: { ...figure(bow.length, drawn.length), note: 'as marked' },
    arrow: figure(arrowLength, drawn.arrow),
    nocking: figure(settings.nockingPoint, drawn.nocking),
    centre: figure(settings.centreShot, drawn.centre),
  };
}

/** A pencil says no more than it knows. */
const wholeMillimetres = (length: number): number => Math.round(length * 1000) / 1000;

/** The worst that the findings say of a field, when it calls for something. */
function levelOf(field: string | undefined, findings: readonly Finding[]): 'caution' | 'stop' | undefined {
  const found = findings.find(
    ({ level, action }) => (level === 'stop' || level === 'caution') && action?.kind === 'go' && action.field === field,
  );
  return found?.level === 'stop' || found?.level === 'caution' ? found.level : undefined;
}

/** What a figure says and how its name is written, for the room that it takes. */
export const textOf = ({ measure, value, assumed, lines, note, level }: DrawnFigure, units: UnitChoice): FigureText => ({
  text: figureText(measure, value, units, assumed ?? null),
  name: note === undefined ? lines : [...lines, note],
  marked: level !== undefined,
});
