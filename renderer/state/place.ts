import type { Screen } from '../../core/findings/finding.ts';
import type { Id } from '../../core/model/common.ts';

/** Where the user stands: a screen and a set-up. */
export interface Place {
  readonly screen: Screen;
  readonly setupId: Id | null;
}

const KEY = 'fistmele.place';
const known: readonly string[] = ['first', 'bow', 'arrow', 'groups', 'trials', 'aim', 'compare', 'record'] satisfies Screen[];

/** Where the user stood before a reload. Only a convenience: whatever cannot be read is forgotten. */
export function rememberedPlace(): Place | null {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    if (typeof found !== 'object' || found === null || !('screen' in found) || !('setupId' in found)) return null;
    const { screen, setupId } = found;
    if (typeof screen !== 'string' || !known.includes(screen)) return null;
    return { screen: screen as Screen, setupId: typeof setupId === 'string' ? setupId : null };
  } catch {
    return null;
  }
}

export function rememberPlace({ screen, setupId }: Place): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ screen, setupId }));
  } catch {
    // A full or forbidden session store costs only the place after a reload.
  }
}
