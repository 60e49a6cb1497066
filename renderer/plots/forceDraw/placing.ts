import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';
import type { Box } from '../boxes.ts';
import { curveBoxes } from '../curveBoxes.ts';
import { label, type Label } from '../labels.ts';
import { FIGURE, NAME, namesOn, type Plotted } from '../placing.ts';
import type { ForceDrawData } from './data.ts';

/** From a figure to its name [px]. */
const GAP = 6;

/** What is drawn, as far as a name has to keep off it or belongs to it. */
export interface Drawn extends Plotted {
  readonly dots: readonly {
    readonly x: number;
    readonly y: number;
    readonly kind: 'drawn' | 'let down' | 'flagged';
    readonly why: string | null;
  }[];
  /** This archer's draw, down to the axis. */
  readonly full: { readonly x: number; readonly y: number };
  readonly stacks: { readonly x: number; readonly y: number } | null;
}

/** The names on the plot, each where it is free: the weight over the curve's end, energies in the area, "stacks" where it begins. */
export function placeLabels(data: ForceDrawData, marks: Drawn, units: UnitChoice): readonly Label[] {
  const { x, y, window, full } = marks;
  const band = data.samples.map(({ draw, low, high }) => ({ at: draw, low, high }));
  const others: readonly Box[] = [
    ...curveBoxes(data.letDown.map(({ draw, force }) => ({ x: x(draw), y: y(force) }))),
    { left: full.x - 3, right: full.x + 3, top: full.y, bottom: window.bottom },
  ];
  const { place, placed } = namesOn(marks, band, others, 2);

  const weight = textQuantity(data.weight.value, 'weight', units);
  const named = data.fullOf === 'archer' ? weightName[data.from] : 'on the scale';
  const above = [full.x - 10, full.x - 30, full.x - 60].flatMap((end) =>
    [6, 14, 22, 32, 44].map((up) => [end, full.y - up] as const),
  );
  [named, ''].some((name) => place(above.map(([end, base]) => figureAt(name, weight, end, base))));

  const stacks = marks.stacks;
  if (stacks !== null) {
    const aside = [
      ...[8, 14, 22].flatMap((out) =>
        [-8, -14, -2].map((up) => label('stacks', stacks.x - out, stacks.y + up, 'end', 'name', NAME)),
      ),
      ...[10, 18, 28].flatMap((out) =>
        [16, 24, 34].map((down) => label('stacks', stacks.x + out, stacks.y + down, 'start', 'name', NAME)),
      ),
      ...[20, 34, 48].map((down) => label('stacks', stacks.x, stacks.y + down, 'middle', 'name', NAME)),
    ];
    place(aside.map((one) => [one]));
  }

  const about = data.from === 'readings' ? '' : 'about ';
  const inside = areaPlaces(data, marks);
  const energy = textQuantity(data.energy.value, 'energy', units);
  const stored = [`energy, ${about}${energy}`, energy];
  stored.some((text) => place(inside.map((at) => [label(text, at.x, at.y, 'middle', 'name', NAME)])));
  if (data.loss !== null && marks.full.x - window.left > 130) {
    const lost = textQuantity(data.loss.energy, 'energy', units);
    [`kept by the bow, ${lost}`, `kept, ${lost}`].some((text) =>
      place(inside.map((at) => [label(text, at.x, at.y + 18, 'middle', 'name', NAME)])),
    );
  }
  return placed;
}

const weightName: Readonly<Record<ForceDrawData['from'], string>> = {
  readings: 'on the fingers',
  'weight on the fingers': 'on the fingers',
  'marked weight': 'from the mark, about',
};

/** A name and its figure on one line, which ends at a place. */
function figureAt(name: string, figure: string, end: number, base: number): readonly Label[] {
  const strong = label(figure, end, base, 'end', 'strong', FIGURE);
  return name === '' ? [strong] : [label(name, strong.box.left - GAP, base, 'end', 'name', NAME), strong];
}

/** Places in the area under the curve, the roomiest first. */
function areaPlaces(data: ForceDrawData, { x, y }: Drawn) {
  const stroke = data.full - data.brace;
  return [0.62, 0.68, 0.56, 0.74, 0.5].flatMap((along) =>
    [0.36, 0.28, 0.44, 0.2].map((up) => ({ x: x(data.brace + along * stroke), y: y(up * data.weight.value) })),
  );
}
