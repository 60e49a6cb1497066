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

test('a flyer is left out from where it is named, a walk-back is not asked about its aim, and the caution for bare shafts stands where they fly', async ({
  page,
  bench,
}) => {
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  const rack = page.locator('.rack');
  const to = (screen: string) =>
    page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
  await rack.getByRole('button', { name: /^Ines/ }).first().click();
  const caution = page.getByText('Bare shafts fly wide: start at 10 m or nearer');
  await to('Trials');
  await rack.getByRole('button', { name: /^Bare shafts at 10 and 18 m/ }).click();
  await expect(caution.first()).toBeVisible();
  await rack.getByRole('button', { name: /^Walk-back to 30 m/ }).click();
  await expect(page.getByRole('heading', { name: /^The line slants/ })).toBeVisible();
  await expect(caution).toHaveCount(0);

  await to('Groups');
  const questions = page.locator('.questions');
  await rack.getByRole('button', { name: /^Walk-back to 30 m, 5 m/ }).click();
  await expect(questions).toContainText('Shot for a walk-back, at one mark with one sight setting for all distances');
  await expect(questions.getByRole('button', { name: 'How big is it?' })).toBeVisible();
  await expect(questions.getByRole('button', { name: 'Is it on the aim?' })).toHaveCount(0);
  await expect(questions.getByRole('button', { name: 'What would it score?' })).toHaveCount(0);

  await page.getByRole('button', { name: /^New group/ }).click();
  await page.getByRole('button', { name: 'Begin a fletched group' }).click();
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  const sheet = page.getByRole('dialog', { name: 'Shots as a table' });
  await sheet.getByRole('button', { name: 'Paste a table' }).click();
  const places = ['1,2;0,5', '-1;0,8', '0,3;-1,4', '14;12', '-0,6;-0,9', '0,9;-0,4', '-1,3;-0,2', '0,2;1,1'];
  await sheet
    .getByRole('textbox', { name: /^table: / })
    .fill(['x (cm);y (cm);Wind', ...places.map((at) => `${at};still`)].join('\n'));
  await sheet.getByRole('button', { name: 'Read it' }).click();
  await expect(sheet.getByText('Column 3, “Wind”, is not read: heads that are known are')).toBeVisible();
  await sheet.getByRole('button', { name: 'Keep 8 shots' }).click();
  await questions.getByRole('button', { name: 'Leave shot 4 out' }).click();
  const reason = page.getByRole('dialog', { name: 'Leave shot 4 out' });
  await reason.getByLabel('reason').fill('plucked, clicker went early');
  await page.keyboard.press('Enter');
  await expect(reason).toBeHidden();
  await expect(questions).toContainText('1 of 8 left out');
  await expect(questions).toContainText(
    'Left out for “plucked, clicker went early”. If it was left out for that alone, the figures without it hold',
  );
  expect(bench.complaints).toEqual([]);
});
