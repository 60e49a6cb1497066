export * from './plane.ts';
export * from './faceFit.ts';
export * from './markedPoints.ts';
export * from './ellipse.ts';
export * from './markedRings.ts';
export * from './upright.ts';
