import fs from 'node:fs';
import type { Download, Page } from 'playwright/test';
import { expect, test } from './bench.ts';

/** The demo's archer who read the bow on a scale. */
async function openTobin(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .locator('.rack')
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Bow', exact: true }).click();
}

async function saved(page: Page, link: string): Promise<Download> {
  const arriving = page.waitForEvent('download');
  await page.getByRole('button', { name: link, exact: true }).click();
  return arriving;
}

const textOf = async (download: Download) => fs.readFileSync(await download.path(), 'utf8');

test('a plot is saved as an SVG that stands on its own, black on white in the dark too', async ({ bench, page, context }) => {
  expect(bench.notebook).not.toBe('');
  await page.emulateMedia({ colorScheme: 'dark' });
  await openTobin(page);
  const download = await saved(page, 'Save force and draw as SVG');
  expect(download.suggestedFilename()).toMatch(/^demo - Tobin.* - force and draw\.svg$/);
  const text = await textOf(download);
  // Read by the browser's own XML reader, on a page of its own: the bench's policy lets nobody parse markup.
  const reader = await context.newPage();
  const read = await reader.evaluate((given) => {
    const parsed = new DOMParser().parseFromString(given, 'image/svg+xml');
    const colours = [...parsed.querySelectorAll('[fill], [stroke]')].flatMap((element) => [
      element.getAttribute('fill'),
      element.getAttribute('stroke'),
    ]);
    return {
      broken: parsed.querySelector('parsererror')?.textContent ?? null,
      root: parsed.documentElement.localName,
      width: parsed.documentElement.getAttribute('width'),
      title: parsed.querySelector('title')?.textContent,
      desc: parsed.querySelector('desc')?.textContent,
      texts: [...parsed.querySelectorAll('text')].map((element) => element.textContent),
      dots: parsed.querySelectorAll('circle').length,
      leftOver: parsed.querySelectorAll('[class], [tabindex], [role="slider"], .hit, script, foreignObject').length,
      colours: [...new Set(colours.filter((colour) => colour !== null))],
    };
  }, text);
  expect(read).toMatchObject({ broken: null, root: 'svg', leftOver: 0 });
  expect(read.width).toMatch(/^\d+(\.\d+)?mm$/);
  expect(read.title).toMatch(/J stored/);
  expect(read.desc).toMatch(/^Force against draw\. /);
  expect(read.texts.join(' ')).toMatch(/on the fingers/);
  expect(read.dots).toBeGreaterThan(6);
  expect(read.colours).toContain('#ffffff');
  expect(read.colours).toContain('#000000');
  expect(text).not.toMatch(/var\(|url\(http|href="http/);
});

test('a plot is saved as a picture at twice its size', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await openTobin(page);
  const svg = await textOf(await saved(page, 'Save stroke as SVG'));
  const [, width = '0', height = '0'] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? [];
  const png = fs.readFileSync(await (await saved(page, 'Save stroke as PNG')).path());
  // PNG specification: eight bytes of signature, then IHDR with width and height as big-endian 32-bit numbers.
  expect([...png.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2 * Number(width), 2 * Number(height)]);
});

test('the readings and the curve are saved as a table', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await openTobin(page);
  const text = await textOf(await saved(page, 'Save force and draw as CSV'));
  const [head = '', ...rows] = text.split('\r\n').filter((row) => row !== '');
  expect(head).toBe('what,"draw, AMO (in)",force (lb),low (lb),high (lb),remark');
  const drawn = rows.filter((row) => row.startsWith('"read, drawing"')).map((row) => row.split(',').slice(2, 4).map(Number));
  expect(drawn.length).toBeGreaterThan(6);
  for (const pair of drawn) expect(pair.every((figure) => Number.isFinite(figure) && figure > 0)).toBe(true);
  expect(rows.filter((row) => row.startsWith('curve,')).length).toBeGreaterThan(50);
  await expect(page.getByRole('status').filter({ hasText: /Given to the browser to save as demo - Tobin/ })).toBeVisible();
});

test('the spine axis takes along what would centre the shaft, and every line of what that costs', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page.locator('.rack').getByRole('button', { name: /^Maud/ }).first().click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Arrow', exact: true }).click();
  // Far too stiff: every kind of move, and costs too long for one line.
  await page.locator('[data-field="arrowSet.deflection"]').fill('0.5 in');
  await page.keyboard.press('Tab');
  await expect(page.locator('.wants-moves li').nth(1)).toBeVisible();
  const told = await page.locator('.wants-moves .note').allInnerTexts();
  expect(told.length).toBeGreaterThan(1);
  const text = await textOf(await saved(page, 'Save spine as SVG'));
  const words = [...text.matchAll(/<text [^>]*>(.*?)<\/text>/g)]
    .map(([, inside = '']) => inside.replace(/<[^>]*>/g, ''))
    .join(' ');
  const plain = (line: string) => line.replace(/[\s\u200a]+/g, ' ').trim();
  expect(words).toContain('What would centre it');
  for (const line of told) expect(words).toContain(plain(line));
});

test('the bow’s drawing takes the figures of its fields along, in ink, and leaves the fields behind', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.emulateMedia({ colorScheme: 'dark' });
  await openTobin(page);
  const brace = await page.getByLabel('brace height', { exact: true }).inputValue();
  const text = await textOf(await saved(page, 'Save bow as SVG'));
  const texts = [...text.matchAll(/<text ([^>]*)>(.*?)<\/text>/g)].map(([, attributes = '', inside = '']) => ({
    attributes,
    words: inside.replace(/<[^>]*>/g, ''),
  }));
  const figure = texts.find(({ words }) => words === brace);
  expect(figure, `${brace} among ${texts.map(({ words }) => words).join('; ')}`).toBeDefined();
  expect(texts.some(({ words }) => words === 'brace height')).toBe(true);
  // The rings A and B on the drawing name two details: they go along, with where the centre shot was read.
  for (const named of ['nocking point', 'centre shot', 'read at the arrow’s point'])
    expect(
      texts.some(({ words }) => words === named),
      named,
    ).toBe(true);
  // No light ink of the dark page is left on the white ground: every text is at most half as bright as white.
  expect(texts.length).toBeGreaterThan(8);
  for (const { attributes, words } of texts) {
    const [, red = 'ff', green = 'ff', blue = 'ff'] = /fill="#(..)(..)(..)"/.exec(attributes) ?? [];
    expect(Math.max(...[green, blue].map((part) => Number.parseInt(part, 16))), `${words}: ${red}${green}${blue}`).toBeLessThan(
      128,
    );
  }
  expect(text).not.toMatch(/<(input|select|label|foreignObject)/);
  // The page is as it was: one drawing, one field of that name.
  await expect(page.getByLabel('brace height', { exact: true })).toHaveCount(1);
});

test('face, flight, groups, heights and the time line are saved too, each as a drawing with its figures', async ({
  bench,
  page,
}) => {
  expect(bench.notebook).not.toBe('');
  await openTobin(page);
  for (const [screen, names] of [
    ['Groups', ['face']],
    ['Aim', ['flight']],
    ['Compare', ['groups compared', 'heights compared']],
    ['Record', ['time line']],
  ] as const) {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
    for (const name of names) {
      const svg = await textOf(await saved(page, `Save ${name} as SVG`));
      expect([...svg.matchAll(/<text /g)].length, name).toBeGreaterThan(5);
      expect([...svg.matchAll(/<path /g)].length, name).toBeGreaterThan(3);
      const rows = (await textOf(await saved(page, `Save ${name} as CSV`))).split('\r\n');
      expect(rows.length, name).toBeGreaterThan(2);
    }
  }
});
