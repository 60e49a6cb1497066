import { exampleBundle, type Bow, type Bundle, type ForceReading, type Result, type Setup } from '../../../core/model/index.ts';

export const inch = 0.0254;
export const pound = 4.4482216152605;

export const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

type Row = readonly [drawIn: number, forceLb: number, way?: ForceReading['way']];

/** A recurve of about 34 lb at 28 in, braced at 8.5 in, as a scale might read it. Invented. */
export const steadyRows: readonly Row[] = [
  [12, 5.6],
  [14, 10.8],
  [16, 15],
  [18, 18.6],
  [20, 21.8],
  [22, 24.8],
  [24, 27.7],
  [26, 30.7],
  [28, 34],
];

export const readingsOf = (rows: readonly Row[]): ForceReading[] =>
  rows.map(([drawIn, forceLb, way = 'draw']) => ({ draw: drawIn * inch, force: forceLb * pound, way }));

/** The example's archer with a draw of 28 in and this bow's readings; the weight on the fingers is not on record. */
export function bowRead(rows: readonly Row[], bow: Partial<Bow> = {}, settings: Partial<Setup['settings']> = {}): Bundle {
  const { setup } = exampleBundle;
  return {
    ...exampleBundle,
    archer: { ...exampleBundle.archer, drawLength: 28 * inch },
    bow: { ...exampleBundle.bow, forceDraw: readingsOf(rows), ...bow },
    setup: { ...setup, settings: { ...setup.settings, weightOnFingers: null, weightDraw: null, ...settings } },
  };
}

/** The example's set-up with arrows over the chronograph. */
export function chronographed(
  speeds: readonly (readonly [massG: number, speed: number])[],
  bundle: Bundle = exampleBundle,
): Bundle {
  const chronograph = speeds.map(([massG, speed]) => ({ mass: massG / 1000, speed }));
  return { ...bundle, setup: { ...bundle.setup, chronograph } };
}

/** Speeds of a bow that gives back so much energy [J] with this virtual mass [g]. */
export const speedsOf = (returned: number, virtualG: number, masses: readonly number[]) =>
  masses.map((massG) => [massG, Math.sqrt((2 * returned) / ((massG + virtualG) / 1000))] as const);

/** The set-up's own arrow over the chronograph. */
export const withSpeed = (bundle: Bundle, arrowSpeed: number): Bundle => ({
  ...bundle,
  setup: { ...bundle.setup, settings: { ...bundle.setup.settings, arrowSpeed } },
});
