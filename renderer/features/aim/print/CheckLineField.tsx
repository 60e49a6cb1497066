import { CHECK } from '../../../print/index.ts';
import { Figure } from '../../../design/index.ts';
import { useBench, useBenchApi } from '../../../state/useBench.ts';

/** What the check line measures on this person's printer: what is at true size is drawn larger or smaller by it, here and ever after. */
export function CheckLineField() {
  const bench = useBenchApi();
  const checkLine = useBench((state) => state.preferences.checkLine);
  return (
    <Figure
      measure="checkLine"
      name={`the ${CHECK} mm line measures`}
      value={checkLine}
      assumed={CHECK / 1000}
      hint="On paper, with a ruler, printed while this field is empty. Leave it empty for a printer that prints true."
      onKeep={(next) => {
        const { prefer, preferences } = bench.getState();
        return prefer({ ...preferences, checkLine: next });
      }}
      field="print.checkLine"
    />
  );
}
