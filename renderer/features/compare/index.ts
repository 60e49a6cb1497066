export { Compare } from './Compare.tsx';
