/**
 * Every published source once. Formulas, checks and "why" panels cite the key. `common practice` and `from memory` are marks, not keys:
 * they say that there is no source to read.
 */
export const sources = {
  'astm-f1880':
    'ASTM F1880, Standard Test Method for Determination of Percent of Let-Off for Archery Bows; draw length after AMO/ATA.',
  'astm-f2031':
    'ASTM F2031, Standard Test Method for Measurement of Arrow Shaft Static Spine (Stiffness): span 28 in, load 880 g (1.94 lb).',
  'dowell-1971':
    'M. Dowell, P. Jarratt, A modified regula falsi method for computing the root of an equation, BIT 11 (1971) 168-174: the Illinois rule.',
  'hairer-1993':
    'E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, Nonstiff Problems, 2nd edition, Springer 1993, sections II.4 to II.6: the pair of Dormand and Prince, its step control and its continuous extension.',
  'kiefer-1953':
    'J. Kiefer, Sequential minimax search for a maximum, Proceedings of the American Mathematical Society 4 (1953) 502-506.',
  'miyazaki-2013': 'T. Miyazaki and others, Aerodynamic properties of an archery arrow, Sports Engineering 16 (2013) 43-54.',
  'nist-sp811':
    'A. Thompson, B. N. Taylor, Guide for the Use of the International System of Units (SI), NIST Special Publication 811, 2008 edition, appendix B: conversion factors.',
  'ortiz-2020':
    'J. Ortiz and others, Experimental and computational study of archery arrows fletched with straight vanes, Proceedings 49 (2020) 56, doi:10.3390/proceedings2020049056.',
  'picard-2008':
    'A. Picard, R. S. Davis, M. Gläser, K. Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149-155.',
  'us-standard-atmosphere-1976': 'U.S. Standard Atmosphere, 1976, NOAA, NASA and USAF, Washington 1976.',
  'wa-rules': 'World Archery rule book, target faces and scoring; verify against the current edition.',
} as const satisfies Record<string, string>;

export type SourceKey = keyof typeof sources;
