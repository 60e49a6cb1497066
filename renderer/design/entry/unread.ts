import { createContext } from 'react';

/** By which a pasted table tells its sheet that it is not read yet: the sheet is not kept without it unasked. */
export const UnreadContext = createContext<(unread: boolean) => void>(() => undefined);
