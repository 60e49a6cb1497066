import { curveNatural, line } from 'd3';
import type { Box } from '../boxes.ts';
import { firstFree, label, type Label } from '../labels.ts';

/** One way the free arrow bends: its frequency [Hz], its shape along the shaft, largest |w| = 1, and where it stands still [m from the throat]. */
export interface Bend {
  readonly mode: number;
  readonly frequency: number;
  readonly shape: readonly { readonly x: number; readonly w: number }[];
  readonly nodes: readonly number[];
  /** "first bend, 62 Hz" */
  readonly name: string;
  /** The nodes' distances from the throat, as they are written under them. */
  readonly nodeTexts: readonly string[];
}

/** The arrow's own length on the page: the throat of the nock, and px per metre. */
export interface AlongArrow {
  readonly throat: number;
  readonly perMetre: number;
  readonly width: number;
}

interface BendMarks {
  readonly y: number;
  readonly curve: string;
  readonly mirror: string;
  readonly wash: string;
  readonly nodes: readonly { readonly x: number; readonly label: Label }[];
  readonly name: Label | null;
}

/** Heights in px: half the swing, and what one bend takes. */
const swing = 21;
const pitch = 54;

export const bendsHeight = (count: number): number => count * pitch + 4;

const nodeLabel = (text: string, x: number, y: number, width: number): Label => {
  const middle = label(text, x, y + 17, 'middle', 'text', 12);
  if (middle.box.left < 0) return label(text, 0, y + 17, 'start', 'text', 12);
  return middle.box.right > width ? label(text, width, y + 17, 'end', 'text', 12) : middle;
};

/** The bends one under the other, each over the arrow's own length, swinging to both sides of a line through its nodes. */
export function bendMarks(bends: readonly Bend[], { throat, perMetre, width }: AlongArrow): readonly BendMarks[] {
  const at = (metres: number) => throat + metres * perMetre;
  return bends.map((bend, index) => {
    const y = index * pitch + pitch / 2;
    // The swing that begins upward is the one drawn full: all of them start on the same side.
    const up = (bend.shape[0]?.w ?? 0) < 0 ? -1 : 1;
    const draw = (sign: number) =>
      line<{ x: number; w: number }>(
        (point) => at(point.x),
        (point) => y - sign * swing * point.w,
      ).curve(curveNatural)(bend.shape) ?? '';
    const curve = draw(up);
    const back = [...bend.shape].reverse().map((point) => `${at(point.x)} ${y + up * swing * point.w}`);
    const nodes = bend.nodes.map((node, i) => ({ x: at(node), label: nodeLabel(bend.nodeTexts[i] ?? '', at(node), y, width) }));
    return { y, curve, mirror: draw(-up), wash: `${curve}L${back.join('L')}Z`, nodes, name: nameOf(bend, nodes, y, at, width) };
  });
}

/** The name stands in the widest belly that has room for it between two nodes. */
function nameOf(
  bend: Bend,
  nodes: readonly { readonly x: number; readonly label: Label }[],
  y: number,
  at: (metres: number) => number,
  width: number,
): Label | null {
  const places = nodes
    .slice(1)
    .map((node, i) => ({ middle: (node.x + (nodes[i]?.x ?? 0)) / 2, gap: node.x - (nodes[i]?.x ?? 0) }));
  const widest = [...places]
    .sort((a, b) => b.gap - a.gap)
    .map(({ middle }) => label(bend.name, middle, y + 4, 'middle', 'name', 13));
  const end = label(bend.name, at(bend.shape.at(-1)?.x ?? 0) - 4, y - swing, 'end', 'name', 13);
  const obstacles: Box[] = nodes.flatMap((node) => [
    node.label.box,
    { left: node.x - 6, right: node.x + 6, top: y - 6, bottom: y + 6 },
  ]);
  const bounds = { left: 0, right: width, top: y - pitch / 2, bottom: y + pitch / 2 };
  return firstFree([...widest, end], (one) => [one.box], obstacles, bounds);
}
