export { Aim } from './Aim.tsx';
