import fs from 'node:fs';
import type { Page } from 'playwright/test';
import { barriers } from './barriers.ts';
import { expect, test } from './bench.ts';

const WORK = '[data-region="work"]';

async function openFlight(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .locator('.rack')
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  await page.getByRole('navigation', { name: 'Parts of Aim' }).getByRole('button', { name: 'The flight' }).click();
}

test('speeds along the flight are entered by keyboard alone, and the one that cannot be is named', async ({ page, bench }) => {
  expect(bench.notebook).not.toBe('');
  await openFlight(page);
  const work = page.locator(WORK);
  await expect(work.getByText('a drag coefficient of 1.5 to 2.6.').first()).toBeVisible();
  await page.locator('[data-field="setup.flightSpeeds"]').focus();
  await page.keyboard.press('Enter');
  const sheet = page.getByRole('dialog', { name: 'Speeds along the flight' });
  await expect(sheet).toBeVisible();
  // The sheet opens on its first cell.
  await sheet.getByLabel(/^distance.*row 1$/).focus();
  for (const figure of ['0 yd', '287', '20 yd', '277', '30 yd', '266', '40 yd', '255']) {
    await page.keyboard.type(figure);
    await page.keyboard.press('Enter');
  }
  await expect(sheet.getByText('row 1: Does not fit the others.')).toBeVisible();
  expect(await barriers(page, 'dialog[open]')).toEqual([]);
  await sheet.getByRole('button', { name: 'Keep 4 speeds' }).focus();
  await page.keyboard.press('Enter');
  await expect(sheet).toHaveCount(0);
  await expect(work.getByText(/^The first reading, 287 ft\/s at 0 m, does not fit/)).toBeVisible();
  await expect(work.getByText(/until then no drag is taken from these speeds/)).toBeVisible();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await barriers(page, WORK), colorScheme).toEqual([]);
  }

  // Speeds that this arrow can have are the drag that everything on the page rests on.
  await page.locator('[data-field="setup.flightSpeeds"]').click();
  await sheet.getByLabel(/^distance.*row 4$/).fill('60 m');
  for (const [index, speed] of ['182', '177', '174.5', '166'].entries())
    await sheet.getByLabel(new RegExp(`^speed.*row ${index + 1}$`)).fill(speed);
  await sheet.getByRole('button', { name: 'Keep 4 speeds' }).click();
  await expect(sheet).toHaveCount(0);
  await expect(work.getByText(/^Read off four speeds along the flight: a drag coefficient of/)).toBeVisible();
  await expect(page.locator('div.head')).toContainText('a drag read off speeds along the flight');
  await work.getByRole('button', { name: 'Take it as the measured speed' }).click();
  await expect(page.locator('[data-field="settings.arrowSpeed"]')).toHaveValue('182 ft/s');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.locator('[data-field="settings.arrowSpeed"]')).toHaveValue('179 ft/s');
});

test('a fresh bench asks on Aim for all that makes a flight, and the flight comes up by keyboard alone', async ({
  page,
  bench,
}) => {
  expect(bench.notebook).not.toBe('');
  await page.getByLabel('arrow length').fill('30 in');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  const title = page.getByRole('heading', { level: 1 });
  await expect(title).toHaveText('No flight yet: the arrow’s weight and a speed are missing');
  const findings = page.getByRole('complementary', { name: 'Findings' });
  await expect(findings.getByText('No sight mark yet')).toHaveCount(0);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await barriers(page, WORK), colorScheme).toEqual([]);
  }
  await findings
    .getByRole('listitem')
    .filter({ hasText: 'How far an arrow could fly' })
    .getByRole('button', { name: 'Enter', exact: true })
    .click();
  await expect(page.locator('[data-field="settings.arrowSpeed"]')).toBeFocused();
  await page.keyboard.press('Shift+Tab');
  // In reading order: the arrow, the chronograph that is not there, and what stands in for it.
  for (const figure of ['352', '', '38 lb']) {
    await page.keyboard.type(figure);
    await page.keyboard.press('Tab');
  }
  await expect(title).toHaveText('No flight yet: a speed is missing');
  await page.keyboard.type('27 in');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('navigation', { name: 'Parts of Aim' })).toBeVisible();
  const mark = findings.getByRole('listitem').filter({ hasText: 'No sight mark yet' });
  await mark.getByRole('button', { name: 'Enter', exact: true }).click();
  await expect(page.locator('[data-field="marks.next.distance"]')).toBeFocused();
});

test('a measured speed is carried over when the brace height is altered, and measured again by the same figure', async ({
  page,
  bench,
}) => {
  expect(bench.notebook).not.toBe('');
  await openFlight(page);
  await expect(page.locator('div.head')).toContainText('a measured speed of 179 ft/s');
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Bow', exact: true }).click();
  await page.locator('[data-field="settings.braceHeight"]').fill('8 1/2 in');
  await page.keyboard.press('Enter');
  const caution = page
    .getByRole('complementary', { name: 'Findings' })
    .getByRole('listitem')
    .filter({ hasText: 'Speed measured at another brace height' });
  await expect(caution).toContainText(/179 ft\/s, measured with a brace height of 7.*; about 17\d with a brace height of 8/);
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  await expect(page.locator('div.head')).toContainText(/carried over from 179 ft\/s measured with a brace height of 7/);
  const speed = page.locator('[data-field="settings.arrowSpeed"]');
  await speed.focus();
  await page.keyboard.type('179');
  await page.keyboard.press('Enter');
  await expect(caution).toHaveCount(0);
  await expect(page.locator('div.head')).toContainText('a measured speed of 179 ft/s');
});

test('the air changes the flight, and a pressure that the height cannot have is told at its field', async ({ page, bench }) => {
  expect(bench.notebook).not.toBe('');
  await openFlight(page);
  const work = page.locator(WORK);
  const [altitude, pressure] = ['altitude', 'pressure'].map((key) => page.locator(`[data-field="aim.air.${key}"]`));
  await expect(work.getByText('1.222 kg/m³')).toBeVisible();
  await altitude!.fill('2000');
  await page.keyboard.press('Tab');
  await expect(work.getByText(/^1\.00\d kg\/m³$/)).toBeVisible();
  await pressure!.fill('1013');
  await page.keyboard.press('Tab');
  await expect(work.getByText(/^At 2000 m a barometer reads about 795 hPa/)).toBeVisible();
  await pressure!.focus();
  await page.keyboard.press('Escape');
  await expect(work.getByText(/a barometer reads about/)).toHaveCount(0);
  // It is kept for this set-up while the window is open, and the other parts of the page fly in it too.
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Bow', exact: true }).click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  await expect(altitude!).toHaveValue('2000 m');
});

test('the nose is read by arrow keys, and its plot and the table are saved', async ({ page, bench }) => {
  expect(bench.notebook).not.toBe('');
  await openFlight(page);
  const slider = page.getByRole('slider', { name: 'Read the nose at a distance' });
  await slider.focus();
  await expect(slider).toHaveAttribute('aria-valuetext', /^At 18 m, bare /);
  await page.keyboard.press('ArrowRight');
  await expect(slider).toHaveAttribute('aria-valuetext', /^At 19 m, bare /);
  for (const [link, holds] of [
    ['Save bare and fletched as SVG', 'nose against the path'],
    ['Save drop as SVG', 'speed left'],
    ['Save drop as CSV', 'distance (m),over the line (cm)'],
  ] as const) {
    const arriving = page.waitForEvent('download');
    await page.getByRole('button', { name: link, exact: true }).click();
    expect(fs.readFileSync(await (await arriving).path(), 'utf8'), link).toContain(holds);
  }
});
