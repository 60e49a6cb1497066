import type { Locator, Page } from 'playwright/test';
import { barriers } from './barriers.ts';
import { expect, test } from './bench.ts';
import { amissIn, drawn, sizes, type Written } from './texts.ts';

const WORK = '[data-region="work"]';

async function openConditions(page: Page, archer: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page.locator('.rack').getByRole('button', { name: archer }).first().click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  await page
    .getByRole('navigation', { name: 'Parts of Aim' })
    .getByRole('button', { name: 'Hill, wind, wrong distance' })
    .click();
}

const headline = (page: Page): Locator => page.getByRole('heading', { level: 1 });
const figure = (page: Page, field: string): Locator => page.locator(`[data-field="${field}"]`);
const picture = (page: Page): Locator => page.getByRole('img', { name: /^Where the group will land/ });

/** As a person types: the field is gone to, and what is typed takes the place of what stood there. */
async function type(page: Page, field: string, text: string): Promise<void> {
  await figure(page, field).focus();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Every line of text of this part as it is laid out, in its fields too; what an open list would hold is not on the page. */
const textsOf = (page: Page): Promise<Written[]> =>
  page.locator('.cond').evaluate((part) => {
    const written: Written[] = [];
    const put = (text: string, element: Element, { left, top, right, bottom }: DOMRect) => {
      const size = Number.parseFloat(getComputedStyle(element).fontSize);
      if (right - left > 1 && bottom - top > 1) written.push({ text, left, top, right, bottom, size });
    };
    const walker = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const [text, parent] = [node.textContent?.trim() ?? '', node.parentElement];
      if (text === '' || parent === null || parent.closest('option, .heard') !== null) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const line of range.getClientRects()) put(text, parent, line);
    }
    for (const field of part.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input:not([type="range"]), select'))
      put(field.value, field, field.getBoundingClientRect());
    return written;
  });

test('hill, wind and a wrong distance are chosen by keyboard alone, and what cannot be is refused in words', async ({
  page,
  bench,
}) => {
  expect(bench.notebook).not.toBe('');
  await openConditions(page, /^Tobin/);
  const work = page.locator(WORK);
  await expect(headline(page)).toHaveText(/^Nothing to allow for at 50.m: \d\.\d.points an arrow; 5.m short would be \d\.\d$/);

  // The slider goes by whole degrees and the headline with it; its field takes the exact figure.
  await work.getByRole('slider', { name: 'slope, up +, by slider' }).focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
  await expect(figure(page, 'conditions.slope')).toHaveValue('3°');
  await expect(headline(page)).toHaveText(/^3° up at 50.m: /);
  await page.keyboard.press('Home');
  await expect(figure(page, 'conditions.slope')).toHaveValue('−45°');
  await expect(headline(page)).toHaveText(/^45° down at 50.m: \d+.cm high, \d\.\d.points an arrow instead of \d\.\d$/);
  await type(page, 'conditions.slope', '15');
  // The rule of the cosine, 50 m × cos 15° = 48.3 m; and arrows strike high on every slope (common practice).
  await expect(work.getByText('48.3 m', { exact: true })).toBeVisible();
  const hill = /^15° up at 50.m: ([\d.]+).cm high, \d\.\d.points an arrow instead of \d\.\d$/;
  await expect(headline(page)).toHaveText(hill);
  const [, high = ''] = hill.exec((await headline(page).textContent()) ?? '') ?? [];
  await expect(picture(page)).toHaveAccessibleName(new RegExp(`with 15° up: its centre ${high} cm high,`));

  await type(page, 'conditions.slope', '89');
  await expect(work.getByRole('alert')).toHaveText(/^A slope between .60 and 60° was expected\. 15° stays in force\.$/);
  await expect(headline(page)).toHaveText(hill);
  await page.keyboard.press('Escape');
  await expect(work.getByRole('alert')).toHaveCount(0);
  await expect(figure(page, 'conditions.slope')).toHaveValue('15°');

  // 15 km/h are 4.2 m/s: by the definition of the hour.
  await type(page, 'conditions.windSpeed', '4 m/s');
  await expect(figure(page, 'conditions.windSpeed')).toHaveValue('4 m/s');
  await expect(work.getByText(/^4 m\/s, 14 km\/h, 8\.9 mph\. Force 3, /)).toBeVisible();
  await expect(headline(page)).toHaveText(/^Hill and wind at 50.m: [\d.]+.cm high and \d+.cm left, /);
  await type(page, 'conditions.windSpeed', '15 km/h');
  await expect(figure(page, 'conditions.windSpeed')).toHaveValue('4.2 m/s');
  const windy = (await headline(page).textContent()) ?? '';
  for (const [typed, said] of [
    ['hurricane', /^A wind such as 4 m\/s or 9 mph was expected\. 4\.2 m\/s stays in force\.$/],
    ['40 m/s', /^A wind between 0 and 20 m\/s was expected\. 4\.2 m\/s stays in force\.$/],
  ] as const) {
    await type(page, 'conditions.windSpeed', typed);
    await expect(work.getByRole('alert')).toHaveText(said);
    await expect(headline(page)).toHaveText(windy);
    await page.keyboard.press('Escape');
  }

  // Emptied it is still air, and an emptied slope is level.
  await figure(page, 'conditions.windSpeed').fill('');
  await page.keyboard.press('Enter');
  await expect(figure(page, 'conditions.windSpeed')).toHaveValue('0 m/s');
  await expect(work.getByText('Still air: nothing to allow. For instance 3 m/s')).toBeVisible();
  await figure(page, 'conditions.slope').fill('');
  await page.keyboard.press('Enter');
  await expect(figure(page, 'conditions.slope')).toHaveValue('0°');
  await expect(work.getByRole('alert')).toHaveCount(0);
  await type(page, 'conditions.slope', '15');
  await type(page, 'conditions.windSpeed', '15 km/h');

  // From the left it carries the arrows as far to the right.
  const drifted = /(\d+).cm left/.exec(windy)?.[1] ?? 'none';
  await figure(page, 'conditions.windHour').focus();
  await page.keyboard.press('9');
  await expect(headline(page)).toHaveText(new RegExp(`high and ${drifted}.cm right, `));
  await expect(
    work.getByText(
      /^To strike the middle of a face at 50 m: set the sight for [\d.]+ m \(reads [\d.]+\) and hold \d+ cm left\.$/,
    ),
  ).toBeVisible();

  await work.getByRole('slider', { name: 'sight set for, by slider' }).focus();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  await expect(figure(page, 'conditions.believed')).toHaveValue('48 m');
  await expect(headline(page)).toHaveText(
    /^Hill, wind and 2.m short at 50.m: [\d.]+.cm low and \d+.cm right, \d\.\d.points an arrow/,
  );
  await expect(picture(page)).toHaveAccessibleName(
    /with 15° up, 4\.2 m\/s from 9 o’clock and 2 m short: its centre [\d.]+ cm low and \d+ cm right, /,
  );
  await expect(
    picture(page)
      .locator('text')
      .filter({ hasText: /^[\d.]+ cm low and \d+ cm right$/ }),
  ).toHaveCount(1);

  for (const size of sizes) {
    await page.setViewportSize(size);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await barriers(page, WORK), `${colorScheme} at ${size.width} px`).toEqual([]);
    }
  }
});

test('a distance that is guessed, the wind’s clock and the sliders go by mouse, and nothing written touches', async ({
  page,
  bench,
}) => {
  expect(bench.notebook).not.toBe('');
  await openConditions(page, /^Maud/);
  const work = page.locator(WORK);
  await expect(headline(page)).toHaveText(
    /^A distance guessed to within 5.m at 30.m: up to \d+.cm low or \d+.cm high, \d\.\d.points an arrow instead of \d\.\d$/,
  );

  // Drawn along, the thumb stays under the hand: three quarters of the way is three quarters of its 15 m.
  const guess = work.getByRole('slider', { name: 'guessed within, by slider' });
  await guess.scrollIntoViewIfNeeded();
  const track = await guess.boundingBox();
  if (track === null) throw new Error('the slider was expected on the page');
  const along = (share: number) => [track.x + 5 + share * (track.width - 10), track.y + track.height / 2] as const;
  await page.mouse.move(...along(1 / 3));
  await page.mouse.down();
  await page.mouse.move(...along(3 / 4), { steps: 5 });
  await page.mouse.up();
  await expect(figure(page, 'conditions.within')).toHaveValue(/^1[12] m$/);
  await expect(headline(page)).toHaveText(/^A distance guessed to within 1[12].m at 30.m: /);
  await figure(page, 'conditions.marked').selectOption('marked');
  await expect(headline(page)).toHaveText(/^Nothing to allow for at 30.m: /);
  await figure(page, 'conditions.believed').fill('33');
  await figure(page, 'conditions.slope').click();
  await expect(headline(page)).toHaveText(/^3.m long at 30.m: \d+.cm high, /);

  // A wind that nobody shoots in is told as one, and its clock turned by a click at nine.
  await figure(page, 'conditions.windSpeed').fill('12 m/s');
  await page.keyboard.press('Enter');
  await expect(work.getByText(/^\s*Better not shot in: .* The range officer decides\.$/)).toBeVisible();
  const clock = work.locator('.cond-clock');
  await clock.scrollIntoViewIfNeeded();
  await clock.click({ position: { x: 8, y: 38 } });
  await expect(figure(page, 'conditions.windHour')).toHaveValue('9');
  await expect(headline(page)).toHaveText(/^Wind and 3.m long at 30.m: \d+.cm high and \d+.cm right, /);

  for (const size of sizes) {
    await page.setViewportSize(size);
    // On the middle, off to one side, and where no arrow strikes the face at all.
    for (const [wind, believed] of [
      ['0', '30'],
      ['12 m/s', '33'],
      ['20 m/s', '60'],
    ] as const) {
      await figure(page, 'conditions.windSpeed').fill(wind);
      await page.keyboard.press('Enter');
      await figure(page, 'conditions.believed').fill(believed);
      await page.keyboard.press('Enter');
      await expect(picture(page)).toHaveAccessibleName(
        believed === '30' ? /its centre on the middle/ : new RegExp(`${Number(believed) - 30} m long`),
      );
      await drawn(page);
      const texts = await textsOf(page);
      expect(texts.length).toBeGreaterThan(60);
      expect(await amissIn(page, texts), `${wind}, set for ${believed} m, at ${size.width} px`).toEqual([]);
    }
  }
  await expect(
    work.getByText(/^No arrow strikes the face; the highest pass over the butt: the ground behind it must be clear\.$/),
  ).toBeVisible();

  // What was chosen stands until the window is closed.
  const kept = (await headline(page).textContent()) ?? '';
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Bow', exact: true }).click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  await expect(headline(page)).toHaveText(kept);
});
