export { Trials } from './Trials.tsx';
export { TrialsShelf } from './TrialsShelf.tsx';
