import { expect, type Page } from 'playwright/test';
import { test } from './bench.ts';

async function toTheBow(page: Page): Promise<void> {
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
}

test('a figure that is half typed when a key leads to another screen is kept', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await toTheBow(page);
  await page.getByLabel('brace height', { exact: true }).fill('8 3/4');
  await page.keyboard.press('Alt+2');
  await expect(page).toHaveTitle(/^Arrow/);
  await page.keyboard.press('Alt+1');
  await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('8 3/4 in');
});

test('a step that still waits is not kept over what is typed after it', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await toTheBow(page);
  const brace = page.getByLabel('brace height', { exact: true });
  await brace.press('ArrowUp');
  await brace.pressSequentially('9 1/4');
  // Longer than a step waits.
  await page.waitForTimeout(900);
  await expect(brace).toHaveValue(/9 1\/4$/);
  await brace.fill('9 1/4');
  await page.keyboard.press('Tab');
  await expect(brace).toHaveValue('9 1/4 in');
});

test('a sheet is not left unasked with a figure or a pasted table in it, nor by selecting text', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await toTheBow(page);
  const sheet = page.getByRole('dialog', { name: 'Readings off the scale' });
  const asked = sheet.getByText('What was entered here is not kept yet.');
  const open = () => page.getByRole('button', { name: /Enter readings/ }).click();

  await open();
  const brace = sheet.getByLabel('at a brace height of', { exact: true });
  await brace.fill('8 1/4');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Escape');
  await expect(asked).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(sheet).toHaveCount(0);

  await open();
  await sheet.getByRole('button', { name: 'Paste a table' }).click();
  await page.keyboard.insertText('10 5\n20 22');
  await page.keyboard.press('Escape');
  await expect(asked).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(sheet).toHaveCount(0);

  // Nor is it kept without the pasted table, not even with the table folded away again.
  await open();
  await sheet.getByRole('button', { name: 'Paste a table' }).click();
  await page.keyboard.insertText('10 5\n20 22');
  await sheet.getByRole('button', { name: 'Paste a table' }).click();
  await sheet.getByRole('button', { name: 'Keep no readings' }).click();
  await expect(sheet.getByText('The pasted table is not read yet.')).toBeVisible();
  await sheet.getByRole('button', { name: 'Paste a table' }).click();
  await sheet.getByRole('button', { name: 'Read it' }).click();
  await expect(sheet.getByText('The pasted table is not read yet.')).toHaveCount(0);
  await expect(sheet.getByRole('button', { name: 'Keep 2 readings' })).toBeVisible();
  await sheet.getByRole('button', { name: 'Cancel' }).click();
  await expect(sheet).toHaveCount(0);

  await open();
  const field = await brace.boundingBox();
  const edge = await sheet.boundingBox();
  if (field === null || edge === null) throw new Error('no sheet on the page');
  await page.mouse.move(field.x + field.width - 4, field.y + field.height / 2);
  await page.mouse.down();
  await page.mouse.move(edge.x - 20, field.y + field.height / 2, { steps: 4 });
  await page.mouse.up();
  await expect(sheet).toBeVisible();
  await page.mouse.click(edge.x - 20, field.y);
  await expect(sheet).toHaveCount(0);
});

test('a sheet tells that another window wrote before it takes the place of that', async ({ bench, page, context }) => {
  await toTheBow(page);
  await page.getByRole('button', { name: /Enter readings/ }).click();
  const sheet = page.getByRole('dialog', { name: 'Readings off the scale' });
  await sheet.getByRole('textbox', { name: 'draw, row 1', exact: true }).fill('10');
  await sheet.getByRole('textbox', { name: 'force, row 1', exact: true }).fill('5');

  const second = await context.newPage();
  await second.goto(await bench.newAddress());
  await second.getByRole('button', { name: /Enter readings/ }).click();
  const theirs = second.getByRole('dialog', { name: 'Readings off the scale' });
  await theirs.getByRole('textbox', { name: 'draw, row 1', exact: true }).fill('20');
  await theirs.getByRole('textbox', { name: 'force, row 1', exact: true }).fill('22');
  await theirs.getByRole('button', { name: 'Keep 1 reading' }).click();
  await expect(theirs).toHaveCount(0);

  // What was typed here still stands; it is kept only when it is asked for once more.
  const keep = sheet.getByRole('button', { name: 'Keep 1 reading' });
  await keep.click();
  await expect(sheet.getByText('Another window has written here since this sheet was opened.')).toBeVisible();
  await expect(sheet.getByRole('textbox', { name: 'draw, row 1', exact: true })).toHaveValue('10');
  await keep.click();
  await expect(sheet).toHaveCount(0);
  await expect(second.getByRole('button', { name: /1 reading/ })).toContainText('10 in');
});
