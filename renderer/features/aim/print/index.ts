export type { Maker, Makers, Span } from './makers.ts';
export { PrintButton } from './PrintButton.tsx';
