import type { NextStep } from '../../../core/trials/index.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { answer } from '../frame/goTo.ts';

/** The way to the field in which what is to be measured goes on record. */
export function GoMeasure({ step: { go } }: { step: Pick<NextStep, 'go'> }) {
  const bench = useBenchApi();
  if (go === null) return null;
  return (
    <button type="button" className="btn go" onClick={() => answer(bench, go)}>
      {go.label}
    </button>
  );
}
