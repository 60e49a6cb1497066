import { expect, type Page } from 'playwright/test';

/** A text as the browser has laid it out [px]. */
export interface Written {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly size: number;
}

/** Both sizes of window that are looked at. */
export const sizes = [
  { width: 1280, height: 800 },
  { width: 1024, height: 700 },
] as const;

/** Once the page is drawn as it now is: its typefaces are there, and two frames have passed in which a size that changed is taken up. */
export const drawn = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    for (let i = 0; i < 3; i++) await frame();
  });

/** What is wrong with a page's texts: two that touch, one that leaves the work, one too small to read. */
export async function amissIn(page: Page, texts: readonly Written[]): Promise<string[]> {
  const work = await page.locator('.work').boundingBox();
  expect(work, 'the work on the page').not.toBeNull();
  const [left, right] = [work?.x ?? 0, (work?.x ?? 0) + (work?.width ?? 0)];
  const hair = 0.5;
  const touching = texts.flatMap((a, i) =>
    texts
      .slice(i + 1)
      // Lines of text are taller than their letters; 2 px of that on either side is air.
      .filter((b) => a.left < b.right - hair && b.left < a.right - hair && a.top + 2 < b.bottom - 2 && b.top + 2 < a.bottom - 2)
      .map((b) => `“${a.text}” touches “${b.text}”`),
  );
  return [
    ...touching,
    ...texts.filter((one) => one.left < left || one.right > right).map(({ text }) => `“${text}” leaves the work`),
    ...texts.filter(({ size }) => size < 12).map(({ text, size }) => `“${text}” is ${size} px`),
  ];
}
