import type { Page } from 'playwright/test';
import { expect, test, type TestBench } from './bench.ts';

/** A usual indoor dozen, about 12 mm of spread on each axis [mm]: drawn once by dice and kept. */
const dozen = [
  [-14, 6],
  [11, -9],
  [3, 15],
  [-8, -12],
  [16, 4],
  [-6, 1],
  [9, 22],
  [-3, -17],
  [5, -2],
  [-21, 8],
  [13, 10],
  [2, -7],
] as const;

const MOST_ACTIONS = 14;
const MOST_KEYS = 60;

/** The Groups screen of a set-up without groups. */
async function atGroups(bench: TestBench, page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2 in');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Groups', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Put the first group on the face');
  expect(bench.complaints).toEqual([]);
}

/** The twelve as the notebook has them, in the person's millimetres, out of the table of shots. */
async function kept(page: Page): Promise<(readonly [number, number])[]> {
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  const table = page.getByRole('table', { name: 'Shots' });
  const cells = await table
    .getByRole('textbox', { name: /^(across|up), / })
    .evaluateAll((found) => found.map((cell) => Number((cell as HTMLInputElement).value.replace('−', '-'))));
  await page.keyboard.press('Escape');
  const pairs: (readonly [number, number])[] = [];
  for (let i = 0; i + 1 < cells.length; i += 2) pairs.push([cells[i] ?? NaN, cells[i + 1] ?? NaN]);
  return pairs.slice(0, -1); // the blank row
}

test('twelve shots take at most 14 actions by mouse', async ({ bench, page }) => {
  await atGroups(bench, page);
  let actions = 0;
  const click = async (x: number, y: number) => {
    actions += 1;
    await page.mouse.click(x, y);
  };
  const begin = await page.getByRole('button', { name: 'Begin a fletched group' }).boundingBox();
  if (begin === null) throw new Error('no button to begin with');
  await click(begin.x + begin.width / 2, begin.y + begin.height / 2);
  const face = page.locator('.face-target');
  for (const [i, [x, y]] of dozen.entries()) {
    const box = await face.locator('.frame-line').boundingBox();
    if (box === null) throw new Error('no face on the page');
    const half = Number(await face.getAttribute('data-half')) * 1000;
    await click(box.x + box.width * (0.5 + x / half / 2), box.y + box.height * (0.5 - y / half / 2));
    await expect(face).toHaveAttribute('aria-label', new RegExp(` ${i + 1} shots in `));
  }
  expect(actions).toBeLessThanOrEqual(MOST_ACTIONS);
  const places = await kept(page);
  expect(places).toHaveLength(dozen.length);
  // A screen's pixel is some millimetre of the face.
  dozen.forEach(([x, y], i) => {
    expect(Math.abs((places[i]?.[0] ?? NaN) - x)).toBeLessThan(1.5);
    expect(Math.abs((places[i]?.[1] ?? NaN) - y)).toBeLessThan(1.5);
  });
});

test('twelve shots take at most 60 key strokes by keyboard, and no menu', async ({ bench, page }) => {
  await atGroups(bench, page);
  let strokes = 0;
  const press = async (key: string) => {
    strokes += 1;
    await page.keyboard.press(key);
  };
  await press('Enter');
  await expect(page.getByLabel(/^at, across and up/)).toBeFocused();
  for (const [x, y] of dozen)
    for (const key of `${Math.abs(x)}${x < 0 ? 'l' : 'r'}${Math.abs(y)}${y < 0 ? 'd' : 'u'}`) await press(key);
  await expect(page.locator('.face-target')).toHaveAttribute('aria-label', / 12 shots in /);
  expect(strokes).toBeLessThanOrEqual(MOST_KEYS);
  expect(await kept(page)).toEqual(dozen);
});
