import type { Bundle } from '../../../core/model/bundle.ts';
import { Dialog } from '../../design/index.ts';

export function LookOverSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  return (
    <Dialog title="Look the bow over" onClose={onClose}>
      <p className="note">{bundle.bow.name}</p>
    </Dialog>
  );
}
