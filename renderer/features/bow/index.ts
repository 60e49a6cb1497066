export { Bow } from './Bow.tsx';
