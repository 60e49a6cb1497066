import type { Face } from '../../../../core/group/index.ts';
import type { PicturePoint } from '../../../../core/model/picture.ts';
import { colourChanges, fitRings, type FaceFit } from '../../../../core/photo/index.ts';
import type { Result } from '../../../../core/model/problem.ts';

/** A point of a ring that somebody marked in the photo. */
export interface RingPoint {
  readonly id: number;
  /** Of the ring [m]; 0 for the centre. */
  readonly radius: number;
  readonly picture: PicturePoint;
}

/** What a click in the photo marks: a ring by its radius in words of a list, the way up, or another face. */
export type Tool = 'gold' | 'up' | `ring ${number}`;

export const toolOf = (radius: number): Tool => `ring ${radius}`;
export const radiusOf = (tool: Tool): number | null => (tool.startsWith('ring ') ? Number(tool.slice(5)) : null);

/** The rings where the colour changes come first: they are seen best. */
export function toolsFor(face: Face): readonly { readonly value: Tool; readonly text: string }[] {
  const changes = new Map(colourChanges(face).map(({ radius, colours }) => [radius, colours] as const));
  const inward = face.rings.toReversed();
  const rings = [...inward.filter(({ radius }) => changes.has(radius)), ...inward.filter(({ radius }) => !changes.has(radius))];
  return [
    ...rings.map(({ points, radius }) => {
      const colours = changes.get(radius);
      return {
        value: toolOf(radius),
        text: `outer edge of ${points}${colours === undefined ? '' : `, ${colours.join(' to ')}`}`,
      };
    }),
    { value: toolOf(0), text: 'the centre of the face' },
    { value: 'up', text: 'a point straight above the centre' },
    { value: 'gold', text: 'the gold of this face, where the picture has several' },
  ];
}

/** The same in two words, for the loupe. */
export function shortOf(tool: Tool, face: Face): string {
  const radius = radiusOf(tool);
  if (radius === null) return tool === 'up' ? 'which way is up' : 'the gold of this face';
  return radius === 0 ? 'the centre' : `edge of ${face.rings.find((ring) => ring.radius === radius)?.points ?? ''}`;
}

/** How the face lies by the marks alone; null where nobody marked anything. */
export const fitOf = (marks: readonly RingPoint[]): Result<FaceFit> | null =>
  marks.length === 0 ? null : fitRings(marks, false);

/** Marks further off than this share of a zone are on another ring, or on another face. */
const FAR = 0.15;

export const isFarOff = (fit: FaceFit, face: Face): boolean => fit.residual > (FAR * face.diameter) / 20;
