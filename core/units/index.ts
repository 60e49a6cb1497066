export { isUse, type Use } from './uses.ts';
export { parseQuantity } from './parse.ts';
export { showQuantity, textQuantity, type Shown, type ShowOptions } from './show.ts';
export { readsNought } from './nought.ts';
export { factorOf, unitOf } from './chosen.ts';
export { stepOf } from './step.ts';
export { wholeCount } from './wholeCount.ts';
export { readMeasure } from './readMeasure.ts';
