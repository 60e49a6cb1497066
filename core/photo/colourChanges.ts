import type { Face } from '../group/faces.ts';
import type { ColourChange } from './edges.ts';

/**
 * The rings where a face changes colour, the innermost first.
 *
 * @equation outer edges of the zones whose next zone has another colour, and the outermost edge where it is not white
 * @param face - the face [record]
 * @returns radii and colours [list]
 * @validity any face of this bench
 * @source wa-rules
 * @example colourChanges({ rings: [{ points: 9, radius: 2 }, { points: 10, radius: 1 }], colourOf: () => 'gold' }).length // 1
 */
export function colourChanges(face: Pick<Face, 'rings' | 'colourOf'>): ColourChange[] {
  const inward = face.rings.toReversed();
  return inward.flatMap(({ points, radius }, i) => {
    const colour = face.colourOf(points);
    const next = inward[i + 1];
    const outer = next === undefined ? 'white' : face.colourOf(next.points);
    // Beyond the last printed ring there is paper, but nobody says how much of it.
    const room = (radius - (inward[i - 1]?.radius ?? 0)) * (next === undefined ? 0.5 : 1);
    return colour === null || outer === null || outer === colour ? [] : [{ radius, colours: [colour, outer] as const, room }];
  });
}
