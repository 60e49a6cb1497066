export { First } from './First.tsx';
