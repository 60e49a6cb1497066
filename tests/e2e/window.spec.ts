import { expect, test } from './bench.ts';

const screens = ['Bow', 'Arrow', 'Groups', 'Trials', 'Aim', 'Compare', 'Record'] as const;

test('the regions scroll, never the page, on every screen and in every window', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  for (const [width, height] of [
    [1280, 800],
    [1024, 700],
    [1440, 900],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const screen of screens) {
      await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
      const spill = await page.evaluate(() => ({
        down: document.documentElement.scrollHeight - innerHeight,
        across: document.documentElement.scrollWidth - innerWidth,
        work: Math.max(
          ...[...document.querySelectorAll('.work, .body, .head, .rack, .findings')].map(
            (region) => region.scrollWidth - region.clientWidth,
          ),
        ),
      }));
      expect(spill, `${screen} at ${width} x ${height}`).toEqual({ down: 0, across: 0, work: 0 });
    }
  }
});

test('the names in the title block stand whole in a narrow window, long ones in two lines', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.setViewportSize({ width: 1024, height: 700 });
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  const names = page.locator('.block dl > div:not(.kept) dd');
  const cut = () =>
    names.evaluateAll((all) =>
      all
        .filter((name) => name.scrollWidth > name.clientWidth || name.scrollHeight > name.clientHeight + 4)
        .map((name) => name.textContent),
    );
  for (const setup of await page.locator('.rack-item').all()) {
    await setup.click();
    expect(await cut()).toEqual([]);
  }
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Arrow', exact: true }).click();
  const name = 'Outdoor dozen, made over from the winter set with longer points';
  await page.locator('[data-field="arrowSet.name"]').fill(name);
  await page.keyboard.press('Tab');
  await expect(names.filter({ hasText: name })).toBeVisible();
  expect(await cut()).toEqual([]);
});

test('F6 goes round bar, column, page and findings, and Shift+F6 the other way', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await expect(page.getByText('demo bench', { exact: true })).toBeVisible();
  const region = () =>
    page.evaluate(() => document.activeElement?.closest('[data-region]')?.getAttribute('data-region') ?? 'none');
  await page.getByRole('button', { name: 'Keys' }).focus();
  const seen: string[] = [];
  for (let i = 0; i < 4; i++) {
    await page.keyboard.press('F6');
    seen.push(await region());
  }
  expect(seen).toEqual(['rack', 'work', 'findings', 'bar']);
  await page.keyboard.press('Shift+F6');
  expect(await region()).toBe('findings');
});

test('the keys work wherever the focus is: straight after opening, and after a button is gone', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await expect(page.getByText('demo bench', { exact: true })).toBeVisible();
  await page.keyboard.press('Alt+3');
  await expect(page).toHaveTitle(/^Groups/);
  await page.getByRole('button', { name: 'Note it as done' }).click();
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeEnabled();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Redo', exact: true })).toBeEnabled();
  await page.keyboard.press('Alt+1');
  await page.getByLabel('brace height', { exact: true }).focus();
  await page.keyboard.press('Control+y');
  await expect(page.getByRole('button', { name: 'Redo', exact: true })).toBeDisabled();
});

test('a figure that was only passed through is never written over the news of another window', async ({
  bench,
  page,
  context,
}) => {
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await page.getByLabel('brace height', { exact: true }).focus();
  const second = await context.newPage();
  await second.goto(await bench.newAddress());
  await second.getByLabel('brace height', { exact: true }).fill('9');
  await second.keyboard.press('Tab');
  await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('9 in');
  await page.keyboard.press('Tab');
  await second.reload();
  await expect(second.getByLabel('brace height', { exact: true })).toHaveValue('9 in');
});
