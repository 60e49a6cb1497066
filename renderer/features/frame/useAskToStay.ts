import { useEffect } from 'react';
import { useBenchApi } from '../../state/useBench.ts';

/** Leaving while a write is on its way would leave it unanswered. The store is asked when somebody leaves: no write draws the window anew. */
export function useAskToStay(): void {
  const bench = useBenchApi();
  useEffect(() => {
    const ask = (event: BeforeUnloadEvent) => {
      if (bench.getState().pending > 0) event.preventDefault();
    };
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [bench]);
}
