import { expect, test } from './bench.ts';

test('what a technician asks of a group is answered under its figures, each with a page; a score sheet is kept and put away', async ({
  page,
  bench,
}) => {
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .locator('.rack')
    .getByRole('button', { name: /^Tobin, take-down, 110/ })
    .click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Groups', exact: true }).click();

  // What is read and done next comes before what may be asked.
  const questions = page.getByRole('region', { name: 'Asked of the fletched group' });
  const next = await page.locator('.next .btn').first().boundingBox();
  expect(next?.y).toBeLessThan((page.viewportSize()?.height ?? 0) - 36);
  await expect(questions.getByRole('listitem')).toHaveCount(10);
  await expect(questions).toContainText(/Mean radius of many such shots \d+ mm \(\d+ to \d+ mm\)/);

  // Against his ten earlier groups, with the picture, the table and the why.
  await questions.getByRole('button', { name: 'Is it tighter or wider than before?' }).click();
  const sheet = page.getByRole('dialog', { name: 'Is it tighter or wider than before?' });
  await expect(sheet.getByRole('img', { name: /^Mean radius of 11 groups with 95 % bars/ })).toBeVisible();
  await expect(sheet.getByRole('row', { name: /^this group 12/ })).toHaveClass('answer');
  await sheet.getByRole('button', { name: /^Why/ }).click();
  await expect(page.getByRole('dialog').last()).toContainText('Source: G. K. Smyth');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);

  await questions.getByRole('button', { name: 'Ask the bare one' }).click();
  await expect(page.getByRole('region', { name: 'Asked of the bare group' })).toContainText(/No: \d+ mm right of the aim/);

  // Scores without places: typed, read as they are typed, kept, put away and taken out again.
  await page.getByRole('button', { name: 'New score sheet' }).click();
  const scores = page.getByRole('dialog', { name: 'A new score sheet' });
  await scores.getByLabel('values, a line an end').fill('X 10 9 9 8 7\n10 10 9 8 8 11');
  await expect(scores.getByRole('alert')).toHaveText(/^Line 2 holds “11”/);
  await expect(scores.getByRole('button', { name: 'Keep this sheet' })).toBeDisabled();
  await scores.getByLabel('values, a line an end').fill('x 10 9 9 8 7\n10 10 9 8 8 m');
  await expect(scores.getByRole('status')).toHaveText('98 with 12, 8.17 an arrow: 4 tens, 1 of them X, 1 missed.');
  await expect(scores.getByRole('row', { name: /^70 m, 122 cm/ })).toBeVisible();
  await scores.getByRole('button', { name: 'Keep this sheet' }).click();
  await page.getByRole('button', { name: '18 m: 98 with 12' }).click();
  await expect(page.getByLabel('values, a line an end')).toHaveValue('X 10 9 9 8 7\n10 10 9 8 8 M');
  await page.getByRole('button', { name: 'Put this sheet away' }).click();
  await expect(page.getByRole('button', { name: '18 m: 98 with 12', exact: true })).toHaveCount(0);
  await page.getByRole('button', { name: /^Take out again.*Scores, 18 m: 98 with 12/ }).click();
  await expect(page.getByRole('button', { name: '18 m: 98 with 12', exact: true })).toBeVisible();
});
