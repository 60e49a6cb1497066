import fs from 'node:fs';
import { startHost } from '../../electron/launch/host.mjs';
import { expect, test } from './bench.ts';
import { keyboard, mouse } from './hands.ts';

test('a figure that cannot be read gets a sentence, and what was kept stays in force', async ({ bench, page }) => {
  const hands = mouse(page);
  await hands.fill('brace height', '8 1/2');
  const brace = page.getByLabel('brace height', { exact: true });
  for (const [typed, sentence] of [
    ['28 1/', /A fraction needs its lower number/],
    ['38 lb', /length/],
    ['8000', /between/],
    ['NaN', /expected/],
    ['about nine', /expected/],
  ] as const) {
    await hands.fill('brace height', typed);
    await expect(page.getByRole('alert')).toHaveText(sentence);
    await expect(page.getByRole('alert')).toContainText('8 1/2 in stays in force');
    await expect(brace).toHaveAttribute('aria-invalid', 'true');
    await brace.press('Escape');
    await expect(brace).toHaveValue('8 1/2 in');
  }
  await bench.restart();
  await page.getByRole('button', { name: 'Bow', exact: true }).click();
  await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('8 1/2 in');
});

test('what was refused is found again by whoever leaves the page and comes back, with its sentence', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  const hands = mouse(page);
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .locator('.rack')
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  await hands.press('Aim');
  await hands.press('The flight');
  const temperature = page.getByLabel('temperature', { exact: true });
  await temperature.fill('300 °C');
  await hands.press('Sight marks');
  await hands.press('The flight');
  await expect(temperature).toHaveValue('300 °C');
  await expect(temperature).toHaveAttribute('aria-invalid', 'true');
  await temperature.press('Escape');
  await hands.press('Bow');
  await hands.press('Aim');
  await expect(temperature).toHaveValue('');
});

test('one shot, shots in one hole and groups at two distances each get a sentence, never a verdict', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  const hands = keyboard(page);
  const headline = page.getByRole('heading', { level: 1 });
  await hands.fill('brace height', '8 1/2');
  await hands.press('Go on to the bow');
  await hands.press('Groups');
  await hands.press('Begin a fletched group');
  await expect(headline).toHaveText(/No shots yet/);
  await hands.shoot(10, 10);
  await expect(headline).toHaveText(/One shot has no spread/);
  await hands.shoot(10, 10);
  await hands.shoot(10, 10);
  await expect(headline).toHaveText(/one hole/);
  await hands.press(/^New group/);
  await hands.fill('distance', '30 m');
  await hands.press('Begin a bare group');
  await hands.shoot(40, 0);
  await hands.shoot(52, 5);
  await hands.press(/^Fletched, 18 m/);
  await expect(headline).not.toHaveText(/real/);
  await expect(page.locator('.groups-right')).toContainText(/30 m/);
});

test('a compound bow is kept, and says why no finger-shot verdict is given', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  const hands = mouse(page);
  await hands.fill('brace height', '7');
  await hands.press('Go on to the bow');
  await hands.choose('kind', 'compound');
  await expect(page.getByRole('complementary', { name: 'Findings' })).toContainText(/compound/i);
});

test('a notebook that another bench has open is left alone, and the sentence says what to do', async ({ bench, page }) => {
  const second = await startHost({ env: { ...process.env, FISTMELE_NOTEBOOK: bench.notebook } });
  try {
    await page.goto(second.address.startsWith('http') ? second.address : await second.newAddress());
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('The notebook is not open');
    await expect(page.getByRole('main')).toContainText(/open in another/i);
    await page.getByRole('button', { name: 'Open the demo bench' }).click();
    await expect(page.getByRole('button', { name: /^Tobin/ }).first()).toBeVisible();
  } finally {
    await second.stop();
  }
});

test('a notebook that is no notebook is not touched', async ({ bench, page }) => {
  await page.goto('about:blank');
  await bench.stop();
  const broken = 'not a notebook at all '.repeat(400);
  fs.writeFileSync(bench.notebook, broken);
  await bench.start();
  await bench.open();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The notebook is not open');
  await expect(page.getByRole('main')).toContainText('It has not been changed');
  await page.goto('about:blank');
  await bench.stop();
  expect(fs.readFileSync(bench.notebook, 'utf8')).toBe(broken);
  await bench.start();
});

test('a notebook from a newer bench is left as it is, and opens again in its own', async ({ bench, page }) => {
  await mouse(page).fill('brace height', '8 1/2');
  await page.goto('about:blank');
  await bench.stop();
  // SQLite keeps a file's own version in its header, four bytes from the sixtieth on.
  const own = fs.readFileSync(bench.notebook);
  const newer = Buffer.from(own);
  newer.writeUInt32BE(own.readUInt32BE(60) + 1, 60);
  fs.writeFileSync(bench.notebook, newer);
  await bench.start();
  await bench.open();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The notebook is not open');
  await expect(page.getByRole('main')).toContainText(/newer/i);
  await page.goto('about:blank');
  await bench.stop();
  expect(fs.readFileSync(bench.notebook).equals(newer)).toBe(true);
  fs.writeFileSync(bench.notebook, own);
  await bench.start();
  await bench.open();
  await page.getByRole('button', { name: 'Bow', exact: true }).click();
  await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('8 1/2 in');
});
