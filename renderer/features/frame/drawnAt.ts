import { useEffect } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** The scale of the drawing in front, for the title block; null where nothing is drawn to scale. */
const store = createStore<{ readonly text: string | null }>(() => ({ text: null }));

/** A screen says how it is drawn, for as long as it stands. */
export function useSayDrawn(text: string | null): void {
  useEffect(() => {
    store.setState({ text });
    return () => store.setState({ text: null });
  }, [text]);
}

export const useDrawnAt = (): string | null => useStore(store, ({ text }) => text);
