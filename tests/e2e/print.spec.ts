import fs from 'node:fs';
import type { Page } from 'playwright/test';
import { type PdfPage, readPdf } from '../pdf.ts';
import { expect, test } from './bench.ts';
import { bothHands, counted } from './hands.ts';
import { drawn } from './texts.ts';

/** What a sheet may be off by on paper [mm]. */
const NEARLY = 0.05;

async function openAim(page: Page, archer: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page.locator('.rack').getByRole('button', { name: archer }).first().click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
}

async function openPaper(page: Page, part: string, button: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Parts of Aim' }).getByRole('button', { name: part, exact: true }).click();
  await page.getByRole('button', { name: button, exact: true }).click();
  await expect(page.locator('.paper-out svg')).toHaveCount(1);
}

/** The page as Chromium's own printer makes it: the same that a person gets from the print dialog, at the size that it asks for. */
async function printed(page: Page): Promise<PdfPage> {
  // While a later answer is worked out there is nothing to print.
  await expect(page.locator('.paper-out svg')).toHaveCount(1);
  await drawn(page);
  const [sheet, ...more] = readPdf(await page.pdf({ preferCSSPageSize: true }));
  expect(more, 'sheets after the first').toEqual([]);
  if (sheet === undefined) throw new Error('nothing was printed');
  return sheet;
}

const lengthOf = ({ from, to }: PdfPage['lines'][number]): number => Math.hypot(to.x - from.x, to.y - from.y);

/** Straight lines as long as this, upright or level. */
const asLong = (sheet: PdfPage, length: number) =>
  sheet.lines.filter((line) => line.painted === 'stroke' && Math.abs(lengthOf(line) - length) < NEARLY);

/** A line of the first strip as the page holds it: its distance, the exact reading behind it, and whether it is dashed. */
const linesInPage = (page: Page) =>
  page
    .locator('.paper-out [data-strip]')
    .first()
    .evaluate((strip) =>
      [...strip.querySelectorAll('[data-distance]')].map((line) => ({
        distance: line.getAttribute('data-distance') ?? '',
        reading: Number(line.getAttribute('data-reading')),
        dashed: line.hasAttribute('stroke-dasharray'),
      })),
    );

/** How far down the lines of the first strip stand, from its left edge inward; its outline reaches all across. */
function lineHeights(sheet: PdfPage): readonly number[] {
  const inward = sheet.lines.filter(
    ({ from, to, painted }) =>
      painted === 'stroke' && Math.abs(from.x - 25) < NEARLY && Math.abs(from.y - to.y) < 1e-6 && to.x > from.x && to.x < 31,
  );
  return inward.map(({ from }) => from.y).sort((a, b) => a - b);
}

test('the strip is printed at true size, on one sheet that holds nothing of the bench', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await openAim(page, /^Tobin/);
  await openPaper(page, 'Sight marks', 'Print strip');
  const sheet = await printed(page);
  // A4, ISO 216: 210 by 297 mm; Chromium rounds to 1/100 in.
  expect(Math.abs(sheet.width - 210)).toBeLessThan(0.2);
  expect(Math.abs(sheet.height - 297)).toBeLessThan(0.2);

  expect(asLong(sheet, 50)).toHaveLength(1);

  const inPage = await linesInPage(page);
  const solid = inPage.filter(({ dashed }) => !dashed);
  expect(solid.length).toBeGreaterThan(20);
  // The demo's sight is in millimetres, so that a reading is a place on the bar; dashed lines become shapes in a PDF.
  const heights = lineHeights(sheet);
  expect(heights).toHaveLength(solid.length);
  const [first] = solid;
  for (const [i, { distance, reading }] of solid.entries()) {
    const off = (heights[i] ?? 0) - (heights[0] ?? 0) - (reading - (first?.reading ?? 0));
    expect(Math.abs(off), `${distance} m`).toBeLessThan(NEARLY);
  }

  await page.emulateMedia({ media: 'print' });
  const seen = await page.evaluate(() =>
    [...document.body.children].filter((element) => element.checkVisibility()).map((element) => element.className),
  );
  expect(seen).toEqual(['paper-out A4']);
});

test('what the check line measures makes everything at true size larger, and stays for every later sheet and file', async ({
  bench,
  page,
}) => {
  expect(bench.notebook).not.toBe('');
  await openAim(page, /^Tobin/);
  await openPaper(page, 'Sight marks', 'Print strip');
  const before = lineHeights(await printed(page));
  const field = page.locator('[data-field="print.checkLine"]');
  await field.fill('49.0 mm');
  await page.keyboard.press('Tab');
  await expect(page.locator('.print-preview')).toContainText('Drawn 2.0 % larger');
  const sheet = await printed(page);
  const larger = 50 / 49;
  expect(asLong(sheet, 50 * larger)).toHaveLength(1);
  const after = lineHeights(sheet);
  expect(after).toHaveLength(before.length);
  for (const [i, y] of after.entries()) {
    const grown = (y - (after[0] ?? 0)) / larger - ((before[i] ?? 0) - (before[0] ?? 0));
    expect(Math.abs(grown)).toBeLessThan(NEARLY);
  }

  // The file is the same drawing: its own lines, in its own millimetres.
  const arriving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as SVG' }).click();
  const download = await arriving;
  expect(download.suggestedFilename()).toMatch(/^demo - .* - sight strip\.svg$/);
  const file = fs.readFileSync(await download.path(), 'utf8');
  expect(file).toMatch(/<svg [^>]*width="210mm" height="296mm" viewBox="0 0 210 296"/);
  const [, top = '', end = ''] = /d="M [\d.]+ ([\d.]+) V ([\d.]+)"[^>]*data-check="50"/.exec(file) ?? [];
  expect(Math.abs(Number(end) - Number(top) - 50 * larger)).toBeLessThan(NEARLY);
  const places = [...file.matchAll(/d="M 0 ([\d.]+) H [^"]*"[^>]*data-distance="\d+" data-reading="([\d.-]+)"/g)]
    .map(([, y, reading]) => ({ y: Number(y), reading: Number(reading) }))
    .slice(0, (await linesInPage(page)).length);
  expect(places.length).toBeGreaterThan(20);
  for (const { y, reading } of places) {
    const off = y - (places[0]?.y ?? 0) - larger * (reading - (places[0]?.reading ?? 0));
    expect(Math.abs(off)).toBeLessThan(NEARLY);
  }

  await field.fill('35');
  await page.keyboard.press('Tab');
  await expect(page.getByText(/The 50 mm line as it is printed between 40 and 60 mm was expected\./)).toBeVisible();
  await field.press('Escape');
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await expect(page.locator('.paper-out')).toHaveCount(0);
  await openPaper(page, 'Sight marks', 'Print strip');
  await expect(page.locator('[data-field="print.checkLine"]')).toHaveValue('49 mm');
});

test('the range card is as large as a card on a letter sheet too, and the choice of paper is remembered', async ({
  bench,
  page,
}) => {
  expect(bench.notebook).not.toBe('');
  await openAim(page, /^Tobin/);
  await openPaper(page, 'Sight marks', 'Print strip');
  await page.getByLabel('paper', { exact: true }).selectOption('letter');
  await page.getByLabel('what', { exact: true }).selectOption('card');
  await expect(page.locator('.paper-out [data-cut]').first()).toBeAttached();
  const cards = await page.locator('.paper-out [data-cut]').count();
  const sheet = await printed(page);
  // 8 1/2 by 11 in.
  expect(Math.abs(sheet.width - 8.5 * 25.4)).toBeLessThan(0.2);
  expect(Math.abs(sheet.height - 11 * 25.4)).toBeLessThan(0.2);
  expect(asLong(sheet, 50)).toHaveLength(1);
  // ISO/IEC 7810, ID-1: 85.60 by 53.98 mm.
  expect(asLong(sheet, 85.6)).toHaveLength(2 * cards);
  expect(asLong(sheet, 53.98)).toHaveLength(2 * cards);

  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await openPaper(page, 'Sight marks', 'Print strip');
  await expect(page.getByLabel('paper', { exact: true })).toHaveValue('letter');
});

test('the point-of-aim card is printed for an archer without a sight', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await openAim(page, /^Ines/);
  await openPaper(page, 'Without a sight', 'Print card');
  const tips = await page.locator('.paper-out [data-tip]').count();
  expect(tips).toBeGreaterThan(2);
  const sheet = await printed(page);
  expect(asLong(sheet, 50)).toHaveLength(1);
  // ISO/IEC 7810, ID-3: 125 by 88 mm.
  expect(asLong(sheet, 125)).toHaveLength(2);
  expect(asLong(sheet, 88)).toHaveLength(2);
  await page.getByLabel('pictures').uncheck();
  await expect(page.locator('.paper-out [data-tip]')).toHaveCount(0);
});

for (const take of bothHands) {
  test(`marks at two distances become a printed strip, from an empty notebook, by ${take.name}`, async ({ bench, page }) => {
    expect(bench.notebook).not.toBe('');
    // A browser without a screen has no print dialog: what the page calls, and under which title, is noted in its place.
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', document.title);
    });
    const hands = counted(take(page));
    await hands.fill('brace height', '8 3/4');
    await hands.fill('weight on the fingers, at full draw', '38');
    await hands.fill('arrow length', '28 1/2');
    await hands.press('Go on to the bow');
    await hands.press('Arrow');
    await hands.fill('whole arrow', '352');
    await hands.press('Aim');
    await hands.fill('measured arrow speed', '182 ft/s');
    await hands.fill('Distance of the next mark', '30 m');
    await hands.fill('What the sight reads there', '54.1');
    await hands.fill('Distance of the next mark', '50 m');
    await hands.fill('What the sight reads there', '85.2');
    await hands.press('Print strip');
    await expect(page.locator('.paper-out svg')).toHaveCount(1);
    await hands.press('Print');
    expect(hands.acts()).toBeLessThanOrEqual(25);
    await expect(page.locator('body')).toHaveAttribute('data-printed', / - sight strip$/);
    expect(await page.title()).toBe('Aim – Fistmele');
    const sheet = await printed(page);
    expect(asLong(sheet, 50)).toHaveLength(1);
    const inPage = await linesInPage(page);
    expect(inPage.map(({ distance }) => distance)).toEqual(expect.arrayContaining(['30', '50']));
  });
}
