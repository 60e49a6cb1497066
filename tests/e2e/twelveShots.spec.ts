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

/** The arrows' numbers that the table has. */
async function arrows(page: Page): Promise<string[]> {
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  const numbers = await page
    .getByRole('table', { name: 'Shots' })
    .getByRole('textbox', { name: /^arrow, / })
    .evaluateAll((found) => found.map((cell) => (cell as HTMLInputElement).value));
  await page.keyboard.press('Escape');
  return numbers.slice(0, -1); // the blank row
}

const numbered = (from: number) => dozen.map((_, i) => String(from + i));

/** Where the face is and how much of it is seen. */
const standing = (page: Page) =>
  page.locator('.face-target').evaluate((target) => {
    const { x, y, width, height } = target.querySelector('.frame-line')!.getBoundingClientRect();
    return { x, y, width, height, half: target.getAttribute('data-half') };
  });

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
  expect(await arrows(page)).toEqual(dozen.map(() => ''));
  const places = await kept(page);
  expect(places).toHaveLength(dozen.length);
  // A screen's pixel is some millimetre of the face.
  dozen.forEach(([x, y], i) => {
    expect(Math.abs((places[i]?.[0] ?? NaN) - x)).toBeLessThan(1.5);
    expect(Math.abs((places[i]?.[1] ?? NaN) - y)).toBeLessThan(1.5);
  });
});

for (const [width, height] of [
  [1280, 800],
  [1024, 700],
] as const)
  test(`the face stands still under the pointer while shots are set, at ${width} by ${height}`, async ({ bench, page }) => {
    await page.setViewportSize({ width, height });
    await atGroups(bench, page);
    await page.getByRole('button', { name: 'Begin a fletched group' }).click();
    const face = page.locator('.face-target');
    await expect(face).toBeVisible();
    const before = await standing(page);
    const half = Number(before.half) * 1000;
    const at = (x: number, y: number) =>
      [before.x + before.width * (0.5 + x / half / 2), before.y + before.height * (0.5 - y / half / 2)] as const;
    for (const [i, [x, y]] of dozen.entries()) {
      await page.mouse.click(...at(4 * x, 4 * y));
      await expect(face).toHaveAttribute('aria-label', new RegExp(` ${i + 1} shots in `));
      expect(await standing(page)).toEqual(before);
      // One key numbers the first; the others count on.
      if (i === 0) await page.keyboard.press('1');
    }
    await page.mouse.move(0, 0);
    expect(await standing(page)).toEqual(before);
    expect(await arrows(page)).toEqual(numbered(1));
    // Asked for, or with the next end, it closes in.
    await page.getByRole('button', { name: 'New end' }).click();
    expect(Number((await standing(page)).half)).toBeLessThan(Number(before.half));
  });

test('a click on a hole takes that shot in hand, a second one sets another in the same hole, the other button leaves it out', async ({
  bench,
  page,
}) => {
  await atGroups(bench, page);
  await page.getByRole('button', { name: 'Begin a fletched group' }).click();
  const face = page.locator('.face-target');
  await expect(face).toBeVisible();
  const { x, y, width, height } = await standing(page);
  const shots = (count: number) => expect(face).toHaveAttribute('aria-label', new RegExp(` ${count} shots in `));
  const first = [x + width * 0.4, y + height * 0.4] as const;
  await page.mouse.click(...first);
  await shots(1);
  await page.mouse.click(x + width * 0.6, y + height * 0.55);
  await shots(2);
  await page.mouse.click(...first);
  await expect(face).toHaveAttribute('data-taken', '1');
  await expect(page.getByRole('button', { name: 'Remove shot 1', exact: true })).toBeVisible();
  await shots(2);
  await page.mouse.click(...first);
  await shots(3);
  // The tools act on the one in hand, and say which that is.
  await page.mouse.click(x + width * 0.6, y + height * 0.55, { button: 'right' });
  const sheet = page.getByRole('dialog', { name: 'Leave shot 2 of end 1 out' });
  await sheet.getByLabel('reason').fill('slipped off the rest');
  await page.keyboard.press('Enter');
  await expect(sheet).toBeHidden();
  await expect(face).toBeFocused();
  await page.getByRole('button', { name: 'Count it again: shot 2', exact: true }).click();
  await expect(page.locator('.left-out')).toHaveCount(0);
  await page.getByRole('button', { name: 'Remove shot 2', exact: true }).click();
  await shots(2);
});

/** The dozen typed key by key; the first may carry its arrow's number. Says how many key strokes that took. */
async function typeDozen(bench: TestBench, page: Page, before = ''): Promise<number> {
  await atGroups(bench, page);
  let strokes = 0;
  const press = async (key: string) => {
    strokes += 1;
    await page.keyboard.press(key);
  };
  await press('Enter');
  await expect(page.getByLabel(/^at, across and up/)).toBeFocused();
  for (const key of before) await press(key);
  for (const [x, y] of dozen)
    for (const key of `${Math.abs(x)}${x < 0 ? 'l' : 'r'}${Math.abs(y)}${y < 0 ? 'd' : 'u'}`) await press(key);
  await expect(page.locator('.face-target')).toHaveAttribute('aria-label', / 12 shots in /);
  return strokes;
}

test('twelve shots take at most 60 key strokes by keyboard, and no menu', async ({ bench, page }) => {
  expect(await typeDozen(bench, page)).toBeLessThanOrEqual(MOST_KEYS);
  expect(await kept(page)).toEqual(dozen);
});

test('numbering the arrows of the dozen takes two key strokes more', async ({ bench, page }) => {
  expect(await typeDozen(bench, page, '4:')).toBeLessThanOrEqual(MOST_KEYS + 2);
  expect(await kept(page)).toEqual(dozen);
  expect(await arrows(page)).toEqual(numbered(4));
});
