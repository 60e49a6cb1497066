/**
 * Units that the rooms count in where a rule of the trade is worded in them, each written down here only. Exact: the international yard
 * and pound (1959; NIST SP 811, appendix B) and standard gravity (third CGPM, 1901; over the earth the true one differs by up to 0.3 %).
 * This file imports nothing, so that the records may use it too.
 */
export const inch = 0.0254;
export const foot = 0.3048;
export const yard = 0.9144;
export const pound = 0.45359237;
export const grain = 6.479891e-5;
export const poundForce = 4.4482216152605;
export const standardGravity = 9.80665;
