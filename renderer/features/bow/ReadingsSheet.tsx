import type { Bundle } from '../../../core/model/bundle.ts';
import { Dialog } from '../../design/index.ts';

export function ReadingsSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  return (
    <Dialog title="Readings off the scale" onClose={onClose}>
      <p className="note">{bundle.bow.name}</p>
    </Dialog>
  );
}
