import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import { figureBox, figureSize, figureText } from '../dimension/figureBox.ts';
import { lane } from '../dimension/lanes.ts';
import type { Span } from '../dimension/lines.ts';
import type { FieldSpot } from './dimensions.ts';
import type { ArrowPicture } from './picture.ts';
import { arrowScale } from './scale.ts';
import { nockPath, vanePath } from './shapes.ts';

/** Heights all details share: what is drawn lies about the first, its figures stand about the second; px. */
export const detail = { middle: 38, figures: 102, height: 150 } as const;

/** Between two details, and the share of the page that each takes [px, -]. */
const GUTTER = 28;
const shares = { spine: 0.31, section: 0.29, nock: 0.4 } as const;

/** How wide each detail is on a page. */
export function detailWidths(page: number): Readonly<Record<keyof typeof shares, number>> {
  const room = page - 2 * GUTTER;
  return {
    spine: Math.floor(room * shares.spine),
    section: Math.floor(room * shares.section),
    nock: Math.floor(room * shares.nock),
  };
}

/** Beyond the fletching the detail shows this much more of the shaft [m]. */
const BEYOND = 0.016;
/** Vanes are drawn no taller, and the shaft no thicker [px]. */
const TALLEST = 22;
const THICKEST = 20;
const LINE = 76;
const GAP = 10;

type NockFigure = 'vaneFromThroat' | 'vaneLength' | 'vaneCount';

/** The tail of the arrow enlarged: where the fletching begins, how long it is, and how many vanes it has. */
export function nockEnd(arrowSet: ArrowSet, picture: ArrowPicture, units: UnitChoice, width: number) {
  const place = picture.parts.find(({ name }) => name === 'fletching');
  const [from, to] = [place?.from ?? 0, place?.to ?? 0];
  const scale = arrowScale({ back: picture.back, tip: to + BEYOND, diameter: picture.diameter }, width);
  const y = detail.middle;
  const half = Math.min(THICKEST, picture.diameter * scale.perMetre) / 2;
  const ends = { throat: scale.at(0), from: scale.at(from), to: scale.at(to), cut: width - 3 };
  const sides = picture.vaneCount > 1 ? [-1, 1] : [-1];

  const dimension = (a: number, b: number): Span => ({
    axis: 'across',
    from: a,
    to: b,
    line: LINE,
    objectFrom: y + half,
    objectTo: y + half,
  });
  return {
    ratio: scale.ratio,
    width,
    half,
    y,
    ends,
    shaft: `M${ends.cut} ${y - half}H${scale.at(0.012)}V${y + half}H${ends.cut}`,
    cut: `M${ends.cut} ${y - half - 3}q-4 ${half / 2 + 2} 0 ${half + 3}t0 ${half + 3}`,
    nock: nockPath(scale.at(picture.back), ends.throat, scale.at(0.012), y, half),
    vanes: sides.map((side) => vanePath(ends.from, ends.to, y + side * half, side * TALLEST)),
    edgeVane: picture.vaneCount % 2 === 0 ? null : `M${ends.from} ${y}H${ends.to}`,
    spans: { vaneFromThroat: dimension(ends.throat, ends.from), vaneLength: dimension(ends.from, ends.to) },
    fields: fieldsOf(arrowSet, units, width, ends),
  };
}

function fieldsOf(
  arrowSet: ArrowSet,
  units: UnitChoice,
  width: number,
  ends: { readonly throat: number; readonly from: number; readonly to: number },
): Readonly<Record<NockFigure, FieldSpot & { readonly lines: readonly string[]; readonly leader: string | null }>> {
  const rows: readonly { readonly field: NockFigure; readonly name: readonly string[]; readonly at: number }[] = [
    { field: 'vaneFromThroat', name: ['throat to', 'fletching'], at: (ends.throat + ends.from) / 2 },
    { field: 'vaneLength', name: ['fletching', 'length'], at: (ends.from + ends.to) / 2 },
    { field: 'vaneCount', name: ['vanes'], at: width },
  ];
  const sizes = rows.map(({ field, name }) => figureSize(figureText(field, arrowSet[field], units), name));
  const places = lane(
    rows.map(({ at }, i) => ({ at, size: sizes[i]?.width ?? 0 })),
    0,
    width,
    GAP,
  );
  const spot = (i: number) => {
    const at = places[i]?.at ?? 0;
    const box = figureBox(sizes[i] ?? figureSize('', []), at, detail.figures, 'middle');
    const from = rows[i]?.at ?? at;
    const leader = i === 2 ? null : `M${from} ${LINE + 3}L${at} ${box.top + 1}`;
    return { box, anchor: 'middle', lines: rows[i]?.name ?? [], leader } as const;
  };
  return { vaneFromThroat: spot(0), vaneLength: spot(1), vaneCount: spot(2) };
}
