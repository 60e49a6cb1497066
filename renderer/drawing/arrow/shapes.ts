import type { ArrowPicture, PartPlace } from './picture.ts';
import type { PartName } from '../../../core/arrow/index.ts';
import type { ArrowScale } from './scale.ts';

/** The outlines of an arrow seen from its side, px, about the line y. */
export interface ArrowShapes {
  readonly halfThick: number;
  readonly shaft: string;
  readonly nock: string;
  readonly vanes: readonly string[];
  /** The vane that stands toward the viewer, edge on. */
  readonly edgeVane: string | null;
  readonly wrap: string | null;
  readonly insert: string | null;
  readonly point: string;
  readonly centre: string;
}

/** A vane stands this far off the shaft [m]; the outlines are shapes for the eye. */
const VANE_HEIGHT = 0.0115;

const n = (value: number) => Number(value.toFixed(1));

/** A vane's outline: steep at the back, falling off to the front. */
export function vanePath(from: number, to: number, foot: number, height: number): string {
  const length = to - from;
  const top = foot + height;
  return `M${n(from)} ${n(foot)}Q${n(from - 0.02 * length)} ${n(foot + 0.75 * height)} ${n(from + 0.2 * length)} ${n(top)}C${n(from + 0.5 * length)} ${n(top)} ${n(from + 0.8 * length)} ${n(foot + 0.45 * height)} ${n(to)} ${n(foot)}Z`;
}

/** A nock from its ears to where the shaft begins, with the throat that the string sits in. */
export function nockPath(back: number, throat: number, end: number, y: number, half: number): string {
  const ear = 0.42 * half;
  return `M${n(end)} ${n(y - half)}L${n(throat)} ${n(y - 0.92 * half)}L${n(back)} ${n(y - 0.8 * half)}V${n(y - ear)}L${n(throat)} ${n(y - 0.3 * half)}V${n(y + 0.3 * half)}L${n(back)} ${n(y + ear)}V${n(y + 0.8 * half)}L${n(throat)} ${n(y + 0.92 * half)}L${n(end)} ${n(y + half)}Z`;
}

/** The arrow's outlines at its scale. */
export function arrowShapes(picture: ArrowPicture, scale: ArrowScale, y: number): ArrowShapes {
  const { at } = scale;
  const part = (name: PartName): PartPlace | undefined => picture.parts.find((one) => one.name === name);
  const half = (picture.diameter * scale.perMetre * scale.thickness) / 2;
  const nock = part('nock');
  const fletching = part('fletching');
  const wrap = part('wrap');
  const insert = part('insert');
  const nockEnd = at(Math.max(0.004, nock?.to ?? 0.01));
  const end = at(picture.length);
  const height = Math.min(17, VANE_HEIGHT * scale.perMetre);
  const vane = fletching === undefined ? null : { from: at(fletching.from), to: at(fletching.to) };
  const sides = picture.vaneCount > 1 ? [-1, 1] : [-1];
  const tip = at(picture.tip);
  const bulge = end + 0.35 * (tip - end);
  return {
    halfThick: half,
    shaft: `M${n(nockEnd)} ${n(y - half)}H${n(end)}V${n(y + half)}H${n(nockEnd)}Z`,
    nock: nockPath(at(picture.back), at(0), nockEnd, y, half),
    vanes: vane === null ? [] : sides.map((side) => vanePath(vane.from, vane.to, y + side * half, side * height)),
    edgeVane: vane === null || picture.vaneCount % 2 === 0 ? null : `M${n(vane.from)} ${y}H${n(vane.to)}`,
    wrap:
      wrap === undefined || wrap.mass === null || wrap.mass === 0
        ? null
        : `M${n(at(wrap.from))} ${n(y - half)}H${n(at(wrap.to))}V${n(y + half)}H${n(at(wrap.from))}Z`,
    insert:
      insert === undefined || insert.mass === null || insert.mass === 0
        ? null
        : `M${n(end)} ${n(y - 0.5 * half)}H${n(at(insert.from))}V${n(y + 0.5 * half)}H${n(end)}`,
    point: `M${n(end)} ${n(y - half)}H${n(bulge)}Q${n(bulge + 0.5 * (tip - bulge))} ${n(y - half)} ${n(tip)} ${y}Q${n(bulge + 0.5 * (tip - bulge))} ${n(y + half)} ${n(bulge)} ${n(y + half)}H${n(end)}Z`,
    centre: `M${n(at(picture.back) - 3)} ${y}H${n(tip + 3)}`,
  };
}
