import { useSyncExternalStore } from 'react';

/** What a sheet has beside and above its work [px]. */
const BESIDE = 380;
const ABOVE = 250;

const room = (): number =>
  Math.round(Math.max(280, Math.min(560, window.innerHeight - ABOVE, Math.min(880, window.innerWidth - 48) - BESIDE + 60)));

const watch = (told: () => void) => {
  window.addEventListener('resize', told);
  return () => window.removeEventListener('resize', told);
};

/** The side of the square in which a picture is worked on: as large as the sheet in this window allows. */
export const useStageSize = (): number => useSyncExternalStore(watch, room);
