/** Points that were set on a picture, each with its id: what is done to any list of them. */
interface WithId {
  readonly id: number;
}

export const nextId = (points: readonly WithId[]): number => points.reduce((most, { id }) => Math.max(most, id), 0) + 1;

export const changed = <P extends WithId>(points: readonly P[], id: number, patch: Partial<P>): readonly P[] =>
  points.map((point) => (point.id === id ? { ...point, ...patch } : point));

/** Without the one of that id; null takes the last. */
export const without = <P extends WithId>(points: readonly P[], id: number | null): readonly P[] =>
  id === null ? points.slice(0, -1) : points.filter((point) => point.id !== id);
