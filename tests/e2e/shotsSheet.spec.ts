import type { Page } from 'playwright/test';
import { expect, test } from './bench.ts';

const face = (page: Page) => page.locator('.face-target');

async function begun(page: Page): Promise<void> {
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2 in');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Groups', exact: true }).click();
  await page.getByRole('button', { name: 'Begin a fletched group' }).press('Enter');
  await expect(page.getByLabel(/^at, across and up/)).toBeFocused();
}

test('ends follow one another, a shot is left out for a reason and never without, and counts again', async ({ bench, page }) => {
  await begun(page);
  await page.getByLabel('arrows an end').fill('2');
  await page.keyboard.press('Enter');
  const typed = page.getByLabel(/^at, across and up/);
  for (const place of ['12 -8', '4 -6', '-3 9']) {
    await typed.fill(place);
    await typed.press('Enter');
  }
  await expect(page.getByText('end 2, 1 of 2')).toBeVisible();
  await face(page).focus();
  await page.keyboard.press('n');
  await expect(page.getByText('end 3, 0 of 2')).toBeVisible();
  await expect(page.getByRole('button', { name: 'New end' })).toBeDisabled();
  // Nothing was dropped, and with no reason nothing is left out.
  await page.keyboard.press('l');
  const sheet = page.getByRole('dialog', { name: 'Leave shot 1 of end 2 out' });
  await sheet.getByRole('button', { name: 'Leave it out' }).click();
  await expect(sheet.getByRole('alert')).toContainText('A reason was expected');
  // What is wanted has the focus.
  await expect(sheet.getByLabel('reason')).toBeFocused();
  await page.keyboard.type('slipped off the rest');
  await page.keyboard.press('Enter');
  await expect(sheet).toBeHidden();
  await expect(face(page)).toBeFocused();
  const out = page.locator('.left-out').getByRole('listitem');
  await expect(out).toHaveText(/^shot 1 of end 2: “slipped off the rest”\./);
  await expect(face(page)).toHaveAttribute('aria-label', / 3 shots in /);
  await bench.restart();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Groups', exact: true }).click();
  await expect(out).toBeVisible();
  await out.getByRole('button', { name: /^Count it again/ }).click();
  await expect(out).toHaveCount(0);
  await expect(face(page)).toBeFocused();
  // A shot that is pulled and brought back was pulled: no other is set where it stands.
  await face(page).scrollIntoViewIfNeeded();
  const box = await face(page).locator('.frame-line').boundingBox();
  if (box === null) throw new Error('no face on the page');
  const half = Number(await face(page).getAttribute('data-half')) * 1000;
  const [x, y] = [box.x + box.width * (0.5 + 12 / half / 2), box.y + box.height * (0.5 + 8 / half / 2)];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 40, y + 30);
  await expect(page.locator('.pulled-shot')).toHaveCount(1);
  await page.mouse.move(x, y);
  await page.mouse.up();
  await expect(page.locator('.pulled-shot')).toHaveCount(0);
  await expect(face(page)).toHaveAttribute('aria-label', / 3 shots in /);
});

test('a pasted table is seen before it is kept, each line’s fate told, and takes the place of what was there', async ({
  bench,
  page,
}) => {
  await begun(page);
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Keep the shots' })).toBeDisabled();
  await page.keyboard.press('Escape');
  await page.getByLabel(/^at, across and up/).focus();
  await page.keyboard.type('1r1u');
  await expect(face(page)).toHaveAttribute('aria-label', / 1 shots in /);
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  const sheet = page.getByRole('dialog', { name: 'Shots as a table' });
  await sheet.getByRole('button', { name: 'Paste a table' }).click();
  const lines = [
    'Saturday',
    'arrow;end;x (cm);y (cm)',
    '1;1;21,2;20,8',
    '2;1;20,4;21,1',
    '2;1;20,4;21,1',
    '3;1;gust;1',
    '4;1;900;1',
  ];
  await sheet.getByRole('textbox', { name: /^table: / }).fill(lines.join('\n'));
  await sheet.getByRole('button', { name: 'Read it' }).click();
  await expect(sheet.getByText('3 lines taken, 3 left out, with heads.')).toBeVisible();
  await expect(sheet.getByRole('row').filter({ hasText: 'The same as line 4; kept all the same.' })).toBeVisible();
  await sheet.getByLabel('measured from').selectOption({ label: 'the upper left corner of the face' });
  await sheet.getByLabel('what was read').selectOption({ label: 'takes the place of all shots of this group' });
  await expect(sheet.getByRole('img', { name: /^3 shots on the / })).toBeVisible();
  // What was understood stands beside what was written.
  await expect(sheet.getByRole('row').filter({ hasText: '1;1;21,2;20,8' })).toContainText('12 mm across, −8 mm up');
  await sheet.getByRole('button', { name: 'Keep 3 shots' }).click();
  await expect(sheet).toBeHidden();
  await expect(face(page)).toHaveAttribute('aria-label', / 3 shots in /);

  // A shot is mended in the same table: its place, its number, its end.
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  await expect(sheet.getByLabel('across, arrow 1, row 1')).toHaveValue('12');
  await expect(sheet.getByLabel('up, arrow 1, row 1')).toHaveValue('−8');
  await sheet.getByLabel('across, arrow 1, row 1').fill('-1,5 cm');
  await sheet.getByLabel('arrow, arrow 1, row 1').fill('7');
  await sheet.getByRole('button', { name: 'Keep 3 shots' }).click();
  await expect(sheet).toBeHidden();
  await page.getByRole('button', { name: 'Save the shots as CSV' }).scrollIntoViewIfNeeded();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the shots as CSV' }).click();
  const file = await (await download).createReadStream();
  const parts: Buffer[] = [];
  for await (const part of file) parts.push(part as Buffer);
  expect(Buffer.concat(parts).toString('utf8')).toBe(
    ['arrow,end,x (mm),y (mm),left out,reason', '7,1,-15,-8,no,', '2,1,4,-11,no,', '2,1,4,-11,no,', ''].join('\r\n'),
  );
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(face(page)).toHaveAttribute('aria-label', / 1 shots in /);
  expect(bench.complaints).toEqual([]);
});
