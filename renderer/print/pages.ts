/** A sheet as printers take it [mm]. */
export interface Page {
  readonly width: number;
  readonly height: number;
}

export type PageName = 'A4' | 'letter';

/** ISO 216 and ANSI/ASME Y14.1. */
export const pages: Readonly<Record<PageName, Page>> = {
  A4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

/** Kept white all round: no usual printer needs more [mm]. */
export const MARGIN = 12;

/** What is drawn is this much shorter than the sheet, or rounding to dots would begin a second page [mm]. */
export const SHORTER = 1;
