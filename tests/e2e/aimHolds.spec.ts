import type { Page } from 'playwright/test';
import { barriers } from './barriers.ts';
import { expect, test } from './bench.ts';
import { amissIn, drawn, sizes, type Written } from './texts.ts';

const WORK = '[data-region="work"]';

async function openHolds(page: Page, archer: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page.locator('.rack').getByRole('button', { name: archer }).first().click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  await page.getByRole('navigation', { name: 'Parts of Aim' }).getByRole('button', { name: 'Without a sight' }).click();
}

const textsOf = (page: Page): Promise<Written[]> =>
  page.locator('.archer-view svg text').evaluateAll((texts) =>
    texts.map((one) => {
      const { left, top, right, bottom } = one.getBoundingClientRect();
      return { text: one.textContent ?? '', left, top, right, bottom, size: Number.parseFloat(getComputedStyle(one).fontSize) };
    }),
  );

test('a point of aim is chosen by keyboard alone: in the table, on the target, and in its field', async ({ page, bench }) => {
  expect(bench.notebook).not.toBe('');
  await openHolds(page, /^Maud/);
  const work = page.locator(WORK);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Point on at \d+ m, \d+ to \d+$/);
  const said = work.getByRole('heading', { name: /^At .* hold the tip/ });

  await work.getByRole('radio', { name: '30 m' }).focus();
  await page.keyboard.press('ArrowUp');
  await expect(said).toHaveText(/^At 20 m hold the tip \d+ cm below the centre/);
  await expect(work.locator('tr.answer th')).toHaveText('20 m');

  const target = work.getByRole('slider', { name: 'The target stands at' });
  await target.focus();
  await page.keyboard.press('PageUp');
  await page.keyboard.press('ArrowUp');
  await expect(said).toHaveText(/^At 31 m /);
  await expect(target).toHaveAttribute('aria-valuetext', /^At 31 m hold the tip/);
  await page.keyboard.press('Shift+ArrowDown');
  await expect(work.locator('[data-field="aim.setFor"]')).toHaveValue('26 m');

  await work.locator('[data-field="aim.setFor"]').fill('60 yd');
  await page.keyboard.press('Enter');
  await expect(said).toHaveText(/^At 54\.9 m hold the tip \d+ cm above the centre/);
  await expect(work.getByText(/^That is over the butt/)).toBeVisible();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await barriers(page, WORK), colorScheme).toEqual([]);
  }
});

test('the flight speaks of the ground only where it draws it', async ({ page, bench }) => {
  expect(bench.notebook).not.toBe('');
  await openHolds(page, /^Maud/);
  const work = page.locator(WORK);
  const note = work.locator('.flight-title .note');
  for (const [distance, grounded] of [
    ['20', false],
    ['50', true],
  ] as const) {
    await work.locator('[data-field="aim.setFor"]').fill(distance);
    await page.keyboard.press('Enter');
    await expect(work.locator('.flight svg text', { hasText: /^ground$/ })).toHaveCount(grounded ? 1 : 0);
    if (grounded) await expect(note).toContainText('Ground 130 cm under the gold');
    else await expect(note).not.toContainText('Ground');
  }
});

test('the target is pulled nearer with the mouse, and a row is taken by a click', async ({ page, bench }) => {
  expect(bench.notebook).not.toBe('');
  await openHolds(page, /^Ines/);
  const work = page.locator(WORK);
  const target = work.getByRole('slider', { name: 'The target stands at' });
  await target.scrollIntoViewIfNeeded();
  const box = await work.locator('.archer-target .hit').first().boundingBox();
  if (box === null) throw new Error('the target was expected on the page');
  const begun = Number(await target.getAttribute('aria-valuenow'));
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2 + 60, { steps: 5 });
  await page.mouse.up();
  // By similar triangles: a butt is 1.24 m wide, the eye 1.6 m up, and the ground 60 px lower is so much nearer.
  const underHorizon = (1.6 / 1.24) * box.width;
  const nearer = Math.round((begun * underHorizon) / (underHorizon + 60));
  expect(nearer).toBeLessThan(begun - 10);
  await expect.poll(async () => Number(await target.getAttribute('aria-valuenow'))).toBe(nearer);
  await work.getByRole('row', { name: /^50 m/ }).getByRole('cell').first().click();
  await expect(work.getByText(/^That is under the ground at the target: lay a marker [\d.]+ m out/)).toBeVisible();

  // Her bow stands to the left of the arrow: what is measured stands to the right.
  const texts = await textsOf(page);
  const view = await work.locator('.archer-view').boundingBox();
  const middle = (view?.x ?? 0) + (view?.width ?? 0) / 2;
  expect(texts.find(({ text }) => /^\d+ cm$/.test(text))?.left).toBeGreaterThan(middle);
  expect(texts.find(({ text }) => text === '50 m')?.right).toBeLessThan(middle);
});

test('the texts of the view touch nothing at either size, near and far', async ({ page, bench }) => {
  expect(bench.notebook).not.toBe('');
  await openHolds(page, /^Ines/);
  for (const size of sizes) {
    await page.setViewportSize(size);
    for (const distance of ['10', '30', '70']) {
      await page.locator('[data-field="aim.setFor"]').fill(distance);
      await page.keyboard.press('Enter');
      await expect(page.getByRole('heading', { name: new RegExp(`^At ${distance} m hold`) })).toBeVisible();
      await drawn(page);
      const texts = await textsOf(page);
      expect(texts.length).toBeGreaterThan(4);
      expect(await amissIn(page, texts), `${distance} m at ${size.width} px`).toEqual([]);
    }
  }
});

test('without the eye height there is no point of aim, but its field; with another anchor the point-on distance changes', async ({
  page,
  bench,
}) => {
  expect(bench.notebook).not.toBe('');
  await openHolds(page, /^Maud/);
  const work = page.locator(WORK);
  const eye = work.locator('[data-field="form.eyeHeight"]');
  await expect(work.getByText(/^Under the jaw, say\. Point on at \d+ m .* instead of \d+ m/)).toBeVisible();
  await work.locator('[data-field="aim.otherEye"]').fill('60');
  await page.keyboard.press('Enter');
  await expect(work.getByText(/With the same hold the arrows strike lower:$/)).toBeVisible();

  await eye.fill('');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No points of aim yet: the eye height is missing');
  // Nothing is assumed, nor does a figure in pencil say so.
  await expect(eye).toHaveAttribute('placeholder', /^not yet/);
  await expect(work.locator('.archer-view')).toHaveCount(0);
  await work.getByRole('button', { name: 'Enter it' }).click();
  await expect(eye).toBeFocused();
  await page.keyboard.type('85');
  await page.keyboard.press('Enter');
  await expect(work.locator('.archer-view')).toBeVisible();
});
