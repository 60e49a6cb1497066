import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright/test';
import { expect, test } from './bench.ts';

const screens = ['Bow', 'Arrow', 'Groups', 'Aim', 'Compare', 'Record'] as const;

/** Everything axe knows, best practices too; a finding is printed with the element it concerns. */
async function nothingFound(page: Page, where: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  const found = violations.map(
    ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`,
  );
  expect(found, where).toEqual([]);
}

for (const light of ['light', 'dark'] as const) {
  test.describe(`in the ${light}`, () => {
    test.use({ colorScheme: light });

    test(`axe finds nothing on any screen, ${light}`, async ({ page, bench }) => {
      test.setTimeout(120_000);
      expect(bench.notebook).not.toBe('');
      await nothingFound(page, 'the first window');
      await page.getByRole('button', { name: 'Open the demo bench' }).click();
      await page
        .getByRole('button', { name: /^Tobin/ })
        .first()
        .click();
      for (const screen of screens) {
        await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
        await expect(
          page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }),
        ).toHaveAttribute('aria-current', 'page');
        await nothingFound(page, screen);
      }
    });

    test(`axe finds nothing on the pages that open over the work, ${light}`, async ({ page, bench }) => {
      expect(bench.notebook).not.toBe('');
      await page.getByRole('button', { name: 'Open the demo bench' }).click();
      for (const opener of ['Add a set-up', 'Units and light', 'Keys', 'Why'] as const) {
        await page
          .getByRole('button', { name: new RegExp(`^${opener}`) })
          .first()
          .click();
        await expect(page.getByRole('dialog')).toBeVisible();
        await nothingFound(page, opener);
        await page.keyboard.press('Escape');
        await expect(page.getByRole('dialog')).toHaveCount(0);
      }
    });

    test(`axe finds nothing in the small window, ${light}`, async ({ page, bench }) => {
      expect(bench.notebook).not.toBe('');
      await page.setViewportSize({ width: 1024, height: 700 });
      await page.getByRole('button', { name: 'Open the demo bench' }).click();
      await nothingFound(page, 'the strip');
      await page.getByRole('button', { name: 'Open the findings' }).click();
      await nothingFound(page, 'the opened strip');
    });
  });
}
