import type { Bundle } from '../../../core/model/bundle.ts';
import { Dialog } from '../../design/index.ts';

export function DozenSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  return (
    <Dialog title="Numbered arrows" onClose={onClose}>
      <p className="note">{bundle.bow.name}</p>
    </Dialog>
  );
}
