export { Record } from './Record.tsx';
export { RecordShelf } from './RecordShelf.tsx';
