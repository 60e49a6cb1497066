// Core's one door, for whoever uses it as a library: `npm run build:core` makes dist/core/index.js of it, with types.
export * from './units/index.ts';
export * from './model/index.ts';
export * from './tables/index.ts';
export * from './bow/index.ts';
export * from './arrow/index.ts';
export * from './suitability/index.ts';
export * from './safety/index.ts';
export * from './findings/index.ts';
export * from './group/index.ts';
export * from './trials/index.ts';
export * from './questions/index.ts';
export * from './flight/index.ts';
export * from './aim/index.ts';
export * from './dozen/index.ts';
export * from './photo/index.ts';
export * from './compare/index.ts';
export * from './host.ts';
export * from './sources.ts';

// Where two rooms use one word, the second goes by a longer name here.
export { Shot } from './model/index.ts';
export type { Shot as FlownShot } from './flight/index.ts';
export type { Side } from './trials/index.ts';
export type { Side as ComparedSide } from './compare/index.ts';
