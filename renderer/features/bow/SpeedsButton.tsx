import { speedsListed } from '../../../core/compare/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { SheetRow } from '../../design/SheetRow.tsx';
import { useUnits } from '../../state/useBench.ts';
import { SpeedsSheet } from './SpeedsSheet.tsx';

/** Which arrows were timed over a chronograph, and the way to their sheet. */
export function SpeedsButton({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const { chronograph } = bundle.setup;
  return (
    <SheetRow
      name="chronograph"
      text={chronograph.length === 0 ? 'Enter timed arrows' : speedsListed(chronograph, units).text}
      field="setup.chronograph"
      sheet={(close) => <SpeedsSheet bundle={bundle} onClose={close} />}
    />
  );
}
