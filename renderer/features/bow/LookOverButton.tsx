import type { Bundle } from '../../../core/model/bundle.ts';
import { SheetRow } from '../../design/SheetRow.tsx';
import { now } from '../../state/clock.ts';
import { LookOverSheet } from './LookOverSheet.tsx';
import { lookOverText } from './lookOverText.ts';

/** When the bow was last looked over and what was seen, and the way to its sheet. */
export function LookOverButton({ bundle }: { bundle: Bundle }) {
  return (
    <SheetRow
      name="looked over"
      text={lookOverText(bundle.bow, now())}
      field="bow.lookOver"
      sheet={(close) => <LookOverSheet bundle={bundle} onClose={close} />}
    />
  );
}
