/** g, the standard acceleration of free fall [m/s²]: adopted by the third CGPM in 1901; over the earth the true one differs by up to 0.3 %. */
export const standardGravity = 9.80665;
