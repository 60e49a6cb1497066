import fs from 'node:fs';
import type { Page } from 'playwright/test';
import { barriers } from './barriers.ts';
import { expect, test } from './bench.ts';

const WORK = '[data-region="work"]';
const screens = ['Bow', 'Arrow', 'Groups', 'Trials', 'Aim', 'Compare', 'Record'] as const;

/** By day and by night. What is the same on every screen is looked at once, and after that only the part that changes. */
async function nothingFound(page: Page, where: string, part?: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await expect(page.locator('html')).toHaveAttribute('data-theme', colorScheme);
    expect(await barriers(page, part), `${where}, ${colorScheme}`).toEqual([]);
  }
}

test('axe finds nothing on any screen, by day and by night', async ({ page, bench }) => {
  test.setTimeout(120_000);
  expect(bench.notebook).not.toBe('');
  await nothingFound(page, 'the first window');
  // That it finds what is amiss: a field without a name.
  await page.evaluate(() => document.querySelector('main')?.append(document.createElement('input')));
  expect(await barriers(page, 'main')).toEqual([expect.stringMatching(/^label: .*<input/)]);
  await page.reload();
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  for (const screen of screens) {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
    await expect(
      page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }),
    ).toHaveAttribute('aria-current', 'page');
    await nothingFound(page, screen, screen === 'Bow' ? undefined : WORK);
  }
});

test('axe finds nothing where little has been measured, by day and by night', async ({ page, bench }) => {
  test.setTimeout(120_000);
  expect(bench.notebook).not.toBe('');
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  for (const screen of screens) {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
    await expect(page).toHaveTitle(new RegExp(`^${screen}`));
    await nothingFound(page, `${screen}, empty`, screen === 'Bow' ? undefined : WORK);
  }
});

test('axe finds nothing on any part of a trial, by day and by night', async ({ page, bench }) => {
  test.setTimeout(120_000);
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  for (const [archer, trial] of [
    [/^Ines/, /^Bare shafts/],
    [/^Maud/, /^Paper/],
    [/^Maud/, /^Nocking point/],
  ] as const) {
    await page.getByRole('button', { name: archer }).first().click();
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Trials', exact: true }).click();
    await page.locator('.rack').getByRole('button', { name: trial }).click();
    for (const part of ['plan', 'shoot', 'read', 'change']) {
      await page.locator(`[data-part=${part}]`).click();
      await nothingFound(page, `${String(trial)}, ${part}`, WORK);
    }
  }
});

test('axe finds nothing on the pages that open over the work, by day and by night', async ({ page, bench }) => {
  test.setTimeout(120_000);
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page.getByRole('button', { name: /^Ines/ }).click();
  const open = async (screen: string, opener: RegExp) => {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
    await page.getByRole('button', { name: opener }).first().click();
    await expect(page.getByRole('dialog')).toBeVisible();
    await nothingFound(page, String(opener), 'dialog[open]');
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toHaveCount(0);
  };
  for (const opener of [/^Add a set-up/, /^Units and light/, /^Keys/, /^Why/]) await open('Bow', opener);
  for (const opener of [/^readings off the scale/, /^chronograph/, /^looked over/]) await open('Bow', opener);
  await open('Arrow', /^numbered arrows/);
  for (const opener of [/^Causes/, /^Other changes/, /^Next group/, /^How the first/, /^Table$/, /^Leave out/])
    await open('Groups', opener);
  await open('Record', /^Take a snapshot/);
});

test('axe finds nothing on a stop and in the small window, by day and by night', async ({ page, bench }) => {
  test.setTimeout(120_000);
  expect(bench.notebook).not.toBe('');
  await page.setViewportSize({ width: 1024, height: 700 });
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page.getByRole('button', { name: /^Cato with/ }).click();
  for (const screen of screens) {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
    await expect(page).toHaveTitle(new RegExp(`^${screen}`));
    await nothingFound(page, `${screen}, small`, screen === 'Bow' ? undefined : WORK);
  }
  await page.getByRole('button', { name: 'Open the findings' }).click();
  await nothingFound(page, 'the opened strip');
});

test('axe finds nothing where the notebook is not open, by day and by night', async ({ page, bench }) => {
  await page.goto('about:blank');
  await bench.stop();
  fs.writeFileSync(bench.notebook, 'not a notebook at all '.repeat(400));
  await bench.start();
  await bench.open();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The notebook is not open');
  await nothingFound(page, 'the closed notebook');
});
