import { useSyncExternalStore } from 'react';

/** A window this low leaves the flight's part hardly any room under it. */
const LOW = '(max-height: 760px)';

function follow(heard: () => void): () => void {
  const query = matchMedia(LOW);
  query.addEventListener('change', heard);
  return () => query.removeEventListener('change', heard);
}

export const useLowWindow = (): boolean => useSyncExternalStore(follow, () => matchMedia(LOW).matches);
