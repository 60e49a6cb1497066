export type { Figure, Section } from './figure.ts';
export { archerFields, arrowFields, bowFields, formFields, settingFields, type Field } from './fields.ts';
export { benchFigures, frozenFigures, type MaybeShot } from './figures.ts';
export { compareSetups, type CompareRow, type Side } from './compareSetups.ts';
export { compareHeadline } from './headline.ts';
export { diffSnapshots, type DiffRow } from './diffSnapshots.ts';
export { shortNames } from './shortNames.ts';
