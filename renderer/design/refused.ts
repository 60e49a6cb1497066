/** What was typed into a field and could not be kept, and why. */
interface Refused {
  readonly draft: string;
  readonly wrong: string;
}

const byPlace = new Map<string, Refused>();

/** Nothing typed is lost by leaving the page it stands on: whoever comes back finds it with its sentence, until it is mended or given up. */
export const refused = {
  at: (place: string | null): Refused | null => (place === null ? null : (byPlace.get(place) ?? null)),
  keep(place: string | null, what: Refused): void {
    if (place !== null) byPlace.set(place, what);
  },
  drop(place: string | null): void {
    if (place !== null) byPlace.delete(place);
  },
};
