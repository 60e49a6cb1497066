import { arrowsListed } from '../../../core/compare/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { SheetRow } from '../../design/SheetRow.tsx';
import { useUnits } from '../../state/useBench.ts';
import { DozenSheet } from './DozenSheet.tsx';

/** How many arrows of the set are numbered, and the way to their sheet. */
export function DozenButton({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const { arrows } = bundle.arrowSet;
  return (
    <SheetRow
      name="numbered arrows"
      text={arrows.length === 0 ? 'Number the arrows' : arrowsListed(arrows, units).text}
      field="arrowSet.arrows"
      sheet={(close) => <DozenSheet bundle={bundle} onClose={close} />}
    />
  );
}
