export type { Figure, Section } from './figure.ts';
export { archerFields, arrowFields, bowFields, formFields, settingFields, setupFields, type Field } from './fields.ts';
export { benchFigures, frozenFigures, type MaybeShot } from './figures.ts';
export { compareSetups, type CompareRow, type Side } from './compareSetups.ts';
export { compareHeadline } from './headline.ts';
export { diffSnapshots, type DiffRow } from './diffSnapshots.ts';
export { heightsApart, type HeightApart } from './heightsApart.ts';
export { arrowsListed, flightSpeedsListed, readingsListed, speedsListed, type Listed } from './lists.ts';
export { shortNames } from './shortNames.ts';
