import type { Page } from 'playwright/test';
import { expect, test } from './bench.ts';
import { bothHands, keyboard } from './hands.ts';
import { amissIn, drawn, sizes, type Written } from './texts.ts';

const goTo = (page: Page, screen: string) =>
  page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();

/** Every text on the Arrow page as the browser has laid it out: of drawings, plots, fields and figures. */
const written = (page: Page): Promise<Written[]> =>
  page.evaluate(() => {
    const body = document.querySelector('.body');
    const found = [
      ...(body?.querySelectorAll<Element>(
        'svg text, .on-drawing .figure-shown, .on-drawing label span, .facts dt, .facts dd, .shaft-details h3, .shaft-details .row > label, h2, p.note',
      ) ?? []),
    ];
    return found
      .filter((element) => element.closest('.strip-dot') === null && (element.textContent ?? '').trim() !== '')
      .map((element) => {
        const range = document.createRange();
        range.selectNodeContents(element);
        const { left, top, right, bottom } = range.getBoundingClientRect();
        return {
          text: (element.textContent ?? '').trim(),
          left,
          top,
          right,
          bottom,
          size: Number.parseFloat(getComputedStyle(element).fontSize),
        };
      });
  });

/** What is wrong with the page's texts: two that touch, one that leaves the work, one too small to read. */
async function amiss(page: Page): Promise<string[]> {
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await drawn(page);
  const texts = await written(page);
  expect(texts.length).toBeGreaterThan(40);
  return amissIn(page, texts);
}

const extremes: readonly (readonly [string, readonly (readonly [string, string])[]])[] = [
  [
    '20 in with a point of 300 gr',
    [
      ['length', '20'],
      ['point', '300 gr'],
    ],
  ],
  [
    '34 in with a light point',
    [
      ['length', '34'],
      ['point', '60'],
    ],
  ],
  ['balanced at the tail', [['balance point', '6']]],
  [
    'in pencil again',
    [
      ['length', ''],
      ['point', ''],
      ['balance point', ''],
    ],
  ],
];
const everything = [
  ['deflection', '1.9'],
  ['shaft’s mass', '5.1'],
  ['insert', '25'],
  ['nock', '12.4'],
  ['fletching', '12.5'],
  ['pin', '11.5'],
  ['wrap', '9.5'],
  ['outer diameter', '9.3'],
  ['wall', '0.02'],
  ['vanes', '4'],
  ['fletching length', '102 mm'],
  ['throat to fletching', '31.5'],
] as const;

for (const size of sizes) {
  test(`no text of the demo’s arrows touches another, ${size.width} px`, async ({ page, bench }) => {
    test.setTimeout(240_000);
    expect(bench.notebook).not.toBe('');
    await page.setViewportSize(size);
    await page.getByRole('button', { name: 'Open the demo bench' }).click();
    await page.getByText('demo bench', { exact: true }).waitFor();
    const setups = await page.locator('.rack-item').filter({ hasText: 'hand' }).all();
    expect(setups.length).toBeGreaterThan(4);
    for (const setup of setups) {
      await setup.click();
      await goTo(page, 'Arrow');
      await expect(page).toHaveTitle(/^Arrow/);
      expect(await amiss(page), (await setup.textContent()) ?? '').toEqual([]);
    }
  });

  test(`no text touches another on an empty arrow, a full one, and at the ends of what is shot, ${size.width} px`, async ({
    page,
    bench,
  }) => {
    test.setTimeout(240_000);
    expect(bench.notebook).not.toBe('');
    await page.setViewportSize(size);
    await page.getByLabel('brace height', { exact: true }).fill('8 1/2');
    await page.keyboard.press('Tab');
    await page.getByRole('button', { name: 'Go on to the bow' }).click();
    await goTo(page, 'Arrow');
    await expect(page).toHaveTitle(/^Arrow/);
    const fill = async (name: string, text: string) => {
      await page.getByLabel(name, { exact: true }).fill(text);
      await page.keyboard.press('Tab');
      await expect(page.locator('.kept dd')).not.toHaveText('writing…');
    };
    expect(await amiss(page), 'empty').toEqual([]);
    for (const [name, text] of everything) await fill(name, text);
    for (const [what, figures] of extremes) {
      for (const [name, text] of figures) await fill(name, text);
      expect(await amiss(page), what).toEqual([]);
    }
  });
}

for (const take of bothHands) {
  test(`the drawing is a form, and the plain form holds the same figures, by ${take.name}`, async ({ page, bench }) => {
    test.setTimeout(240_000);
    expect(bench.notebook).not.toBe('');
    const hands = take(page);
    await hands.fill('brace height', '8 1/2');
    await hands.press('Go on to the bow');
    await hands.press('Arrow');
    await hands.fill('length', '28 1/4');
    await hands.fill('balance point', '17 7/8 in');
    await hands.fill('nock', '9');
    await hands.fill('shaft’s mass', '7.5 gr/in');
    await hands.fill('point', '100');
    await hands.choose('material', 'wood');
    await hands.fill('deflection', '40 lb');
    await expect(page.locator('.block')).toContainText(/drawn1 : \d\.\d/);
    await expect(page.getByRole('img', { name: /^first bend, \d+ Hz, still at/ })).toBeVisible();

    await page.keyboard.press('F2');
    await expect(page.getByRole('button', { name: 'Plain form' })).toHaveAttribute('aria-pressed', 'true');
    await expect(page.getByLabel('length', { exact: true })).toHaveValue('28 1/4 in');
    await expect(page.getByLabel('point', { exact: true })).toHaveValue('100 gr');
    await expect(page.getByLabel('balance point', { exact: true })).toHaveValue('17 7/8 in');
    await expect(page.getByLabel('deflection', { exact: true })).toHaveValue('0.650 in');
    await hands.fill('vanes', '4');
    await page.keyboard.press('F2');
    await expect(page.getByLabel('vanes', { exact: true })).toHaveValue('4');
  });
}

test('while a stop stands there is neither verdict nor move; with the right arrows there are both', async ({ page, bench }) => {
  test.setTimeout(120_000);
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page.getByRole('button', { name: /^Cato with the short/ }).click();
  await goTo(page, 'Arrow');
  await expect(page.getByText('Not shown while a stop stands')).toBeVisible();
  await expect(page.locator('.spine-axis, .spine-move')).toHaveCount(0);
  await expect(page.getByRole('heading', { name: /^Bends at/ })).not.toContainText('string');

  await page
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  await expect(page.getByRole('img', { name: /^this shaft, .* Load on the shaft: / })).toBeVisible();
  const hands = keyboard(page);
  await hands.fill('deflection', '0.78');
  await expect(
    page.getByRole('img', { name: /^this shaft, 0\.780 in\. Load on the shaft: weak by 0\.\d{3} in\./ }),
  ).toBeVisible();
  // A brace height out of the maker's range leaves the verdict and holds the moves back: they would be shot.
  await expect(page.getByText('Nothing is offered while a stop stands')).toBeVisible();
  await goTo(page, 'Bow');
  await hands.fill('brace height', '8 3/4');
  await goTo(page, 'Arrow');
  await expect(page.getByText('Nothing is offered while a stop stands')).toHaveCount(0);
  await expect(page.getByRole('img', { name: /^point \d+ gr: acts like 0\.\d{3} in/ }).first()).toBeVisible();
  await expect(page.getByRole('img', { name: /^another shaft: of 0\.\d{3} in, to the middle/ })).toBeVisible();
});
