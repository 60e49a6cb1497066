/**
 * Every published source once. Formulas, checks and "why" panels cite the key. `common practice` and `from memory` are marks, not keys:
 * they say that there is no source to read.
 */
export const sources = {
  'astm-f1880':
    'ASTM F1880, Standard Test Method for Determination of Percent of Let-Off for Archery Bows; draw length after AMO/ATA.',
  'astm-f2031':
    'ASTM F2031, Standard Test Method for Measurement of Arrow Shaft Static Spine (Stiffness): span 28 in, load 880 g (1.94 lb).',
  'nist-sp811':
    'A. Thompson, B. N. Taylor, Guide for the Use of the International System of Units (SI), NIST Special Publication 811, 2008 edition, appendix B: conversion factors.',
  'wa-rules': 'World Archery rule book, target faces and scoring; verify against the current edition.',
} as const satisfies Record<string, string>;

export type SourceKey = keyof typeof sources;
