import type { Page } from 'playwright/test';
import { expect, test } from './bench.ts';
import { bothHands } from './hands.ts';
import { amissIn, drawn, sizes, type Written } from './texts.ts';

/** Every text and every field of the drawing and its details, as the browser has laid them out. */
const written = (page: Page): Promise<Written[]> =>
  page.evaluate(() => {
    const texts = [
      ...document.querySelectorAll(
        '.bow-sheet svg text, .bow-sheet .figure-shown, .bow-sheet label > span, .bow-sheet label:not(:has(span)), .bow-sheet .on-drawing .note, .bow-sheet h2, .bow-sheet h3 > *, .bow-sheet .mark',
      ),
    ].filter((element) => element.closest('.focus-only, .heard') === null && element.checkVisibility());
    const boxes = texts.map((element) => {
      const range = document.createRange();
      range.selectNodeContents(element);
      const box = element.matches('.mark') ? element.getBoundingClientRect() : range.getBoundingClientRect();
      return { element, box, text: (element.textContent ?? '').trim() || 'a mark' };
    });
    const fields = [...document.querySelectorAll<HTMLElement>('.bow-sheet input, .bow-sheet select')].map((element) => ({
      element,
      box: element.getBoundingClientRect(),
      text: `the field ${element.dataset['field'] ?? ''}`,
    }));
    return [...boxes.filter(({ element }) => !element.matches('.figure-shown')), ...fields]
      .filter(({ box }) => box.width > 0)
      .map(({ element, box: { left, top, right, bottom }, text }) => ({
        text,
        left,
        top,
        right,
        bottom,
        size: Number.parseFloat(getComputedStyle(element).fontSize),
      }));
  });

/** What is wrong with the drawing's texts: two that touch, one that leaves the work, one too small to read. */
async function amiss(page: Page): Promise<string[]> {
  // A field that has the focus is larger than at rest.
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await drawn(page);
  const texts = await written(page);
  expect(texts.length).toBeGreaterThan(35);
  return amissIn(page, texts);
}

const extremes = [
  { kind: 'flatbow', hand: 'right', length: '48 in', brace: '5 in', arrow: '20 in', nocking: '16 mm', centre: '10 mm' },
  { kind: 'flatbow', hand: 'left', length: '48 in', brace: '5 in', arrow: '34 in', nocking: '3 mm', centre: '15 mm' },
  { kind: 'take-down recurve', hand: 'right', length: '72 in', brace: '10 in', arrow: '34 in', nocking: '12 mm', centre: '3 mm' },
  { kind: 'take-down recurve', hand: 'left', length: '72 in', brace: '10 in', arrow: '20 in', nocking: '-4 mm', centre: '-3 mm' },
  { kind: 'longbow', hand: 'right', length: '1829 mm', brace: '6 5/8', arrow: '27 3/8', nocking: '14', centre: '12.5 mm' },
] as const;

for (const size of sizes) {
  test(`no label of the bow’s drawing touches another at the extremes, ${size.width} x ${size.height}`, async ({
    bench,
    page,
  }) => {
    test.setTimeout(150_000);
    expect(bench.notebook).not.toBe('');
    await page.setViewportSize(size);
    await page.getByRole('button', { name: 'Open the demo bench' }).click();
    for (const archer of ['Tobin', 'Ines', 'Maud', 'Cato']) {
      await page
        .locator('.rack')
        .getByRole('button', { name: new RegExp(`^${archer}`) })
        .first()
        .click();
      expect(await amiss(page), archer).toEqual([]);
    }
    await page
      .locator('.rack')
      .getByRole('button', { name: /^Tobin/ })
      .first()
      .click();
    const set = async (name: string, value: string) => {
      await page.getByLabel(name, { exact: true }).fill(value);
      await page.getByLabel(name, { exact: true }).press('Tab');
      await expect(page.locator('.kept dd')).not.toHaveText('writing…');
    };
    for (const { kind, hand, length, brace, arrow, nocking, centre } of extremes) {
      await page.getByLabel('kind', { exact: true }).selectOption(kind);
      await page.getByLabel('bow’s hand', { exact: true }).selectOption(hand);
      await set('length', length);
      await set('string length', '');
      await set('brace height', brace);
      await set('arrow length', arrow);
      await set('nocking point', nocking);
      await set('centre shot', centre);
      expect(await amiss(page), `${hand}-handed ${kind}, ${length}, arrow ${arrow}`).toEqual([]);
    }
  });
}

test('an empty bow is drawn in pencil, and its labels keep apart', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await expect(page.locator('.side-view.in-lead')).toBeVisible();
  for (const size of sizes) {
    await page.setViewportSize(size);
    expect(await amiss(page), `${size.width}`).toEqual([]);
  }
});

for (const take of bothHands) {
  test(`the drawing is filled in and follows, and turns over into a plain form of the same fields, by ${take.name}`, async ({
    bench,
    page,
  }) => {
    test.setTimeout(120_000);
    expect(bench.notebook).not.toBe('');
    const hands = take(page);
    await hands.fill('brace height', '8 1/2');
    await hands.press('Go on to the bow');
    const grip = () => page.locator('.side-view .grip').first().getAttribute('d');
    const before = await grip();
    await hands.fill('brace height', '9 1/4');
    await expect.poll(grip).not.toBe(before);
    await hands.fill('upper limb to string', '7 1/2 in');
    await hands.fill('lower limb to string', '186 mm');
    // Computed independently: 7 1/2 in are 190.5 mm.
    await expect(page.getByLabel('tiller', { exact: true })).toHaveValue('4.5 mm');

    await hands.press('Plain form');
    await expect(page.locator('.bow-drawing')).toHaveCount(0);
    await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('9 1/4 in');
    await hands.fill('nocking point', '6 mm');
    await page.getByLabel('nocking point', { exact: true }).focus();
    await page.keyboard.press('F2');
    await expect(page.locator('.bow-drawing')).toBeVisible();
    await expect(page.getByLabel('nocking point', { exact: true })).toBeFocused();
    await expect(page.getByLabel('nocking point', { exact: true })).toHaveValue('6 mm');
  });
}

test('what a finding leads to is found on the drawing and in the plain form', async ({ bench, page }) => {
  expect(bench.notebook).not.toBe('');
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .locator('.rack')
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  const finding = page.locator('.finding').filter({ hasText: 'Brace height' }).first();
  for (const press of ['', 'F2']) {
    if (press !== '') await page.keyboard.press(press);
    await finding.getByRole('button', { name: 'Fix' }).click();
    await expect(page.getByLabel('brace height', { exact: true })).toBeFocused();
  }
});

for (const { reducedMotion, says } of [
  { reducedMotion: 'reduce', says: 'with less motion the drawing jumps to its figure' },
  { reducedMotion: 'no-preference', says: 'the drawing glides to its figure' },
] as const) {
  test(says, async ({ bench, page }) => {
    expect(bench.notebook).not.toBe('');
    await page.emulateMedia({ reducedMotion });
    await page.getByLabel('brace height', { exact: true }).fill('8 1/2');
    await page.keyboard.press('Tab');
    await page.getByRole('button', { name: 'Go on to the bow' }).click();
    // Every shape that the grip takes on its way is noted.
    await page.evaluate(() => {
      const grip = document.querySelector('.side-view .grip');
      const seen: string[] = [];
      Object.assign(window, { seen });
      new MutationObserver(() => seen.push(grip?.getAttribute('d') ?? '')).observe(grip as Element, { attributes: true });
    });
    // Both figures are in range, so that the headline and with it the room for the drawing stay as they are.
    await page.getByLabel('brace height', { exact: true }).fill('8 3/4');
    await page.keyboard.press('Tab');
    await expect(page.locator('.kept dd')).not.toHaveText('writing…');
    await page.waitForTimeout(300);
    const shapes = await page.evaluate(() => (window as unknown as { seen: string[] }).seen.length);
    if (reducedMotion === 'reduce') expect(shapes).toBe(1);
    else expect(shapes).toBeGreaterThan(1);
  });
}
