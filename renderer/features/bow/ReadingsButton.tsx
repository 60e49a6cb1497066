import { readingsListed } from '../../../core/compare/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { SheetRow } from '../../design/SheetRow.tsx';
import { useUnits } from '../../state/useBench.ts';
import { ReadingsSheet } from './ReadingsSheet.tsx';

/** What was read off a bow scale, in a few words, and the way to its sheet. */
export function ReadingsButton({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const { forceDraw } = bundle.bow;
  return (
    <SheetRow
      name="readings off the scale"
      text={forceDraw.length === 0 ? 'Enter readings' : readingsListed(forceDraw, units).text}
      field="bow.forceDraw"
      sheet={(close) => <ReadingsSheet bundle={bundle} onClose={close} />}
    />
  );
}
