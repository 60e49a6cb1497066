export { Arrow } from './Arrow.tsx';
