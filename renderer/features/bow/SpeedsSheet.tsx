import type { Bundle } from '../../../core/model/bundle.ts';
import { Dialog } from '../../design/index.ts';

export function SpeedsSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  return (
    <Dialog title="Arrows over the chronograph" onClose={onClose}>
      <p className="note">{bundle.bow.name}</p>
    </Dialog>
  );
}
