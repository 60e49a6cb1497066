export { Choice, plain } from './Choice.tsx';
export { Dialog } from './Dialog.tsx';
export { Figure } from './Figure.tsx';
export { useFigure, type FigureProps } from './useFigure.ts';
export { Fraction } from './Fraction.tsx';
export { Mark } from './Mark.tsx';
export { WhyLink } from './WhyLink.tsx';
export { Words } from './Words.tsx';
export { useSize } from './useSize.ts';
