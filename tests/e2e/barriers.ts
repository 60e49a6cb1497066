import axe from 'axe-core';
import { expect, type Page } from 'playwright/test';

declare global {
  interface Window {
    axe?: typeof axe;
  }
}

/** What axe finds on the page or a part of it, by everything it knows, best practices too; each finding with the element it concerns. */
export async function barriers(page: Page, part?: string): Promise<string[]> {
  // It is put into a page once, not for every look.
  if (await page.evaluate(() => window.axe === undefined)) await page.evaluate(axe.source);
  const found = await page.evaluate(async (within) => {
    const result = await window.axe?.run(within ?? document, { resultTypes: ['violations'] });
    return {
      rules: result?.passes.length ?? 0,
      violations: result?.violations.map(({ id, help, nodes }) => {
        const where = nodes.map((node) => node.html.slice(0, 160)).join(' | ');
        return `${id}: ${help}: ${where}`;
      }),
    };
  }, part);
  expect(found.rules, 'rules of axe that something on the page has met').toBeGreaterThan(5);
  return found.violations ?? ['axe did not run'];
}
