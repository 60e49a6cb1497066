import { createContext } from 'react';

/** Whether a plumb line hangs through the centre of the face, as in a walk-back. */
export const Plumb = createContext(false);
