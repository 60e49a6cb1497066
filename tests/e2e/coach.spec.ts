import { expect, test } from './bench.ts';
import { bothHands } from './hands.ts';

for (const take of bothHands) {
  test(`a coach puts two set-ups beside each other, by ${take.name}`, async ({ bench, page }) => {
    test.setTimeout(120_000);
    expect(bench.notebook).not.toBe('');
    const hands = take(page);
    await hands.press('Open the demo bench');
    await hands.press(/^Tobin, take-down, 110 gr point/);
    await hands.press('Compare');
    await hands.choose('compare with', 'Tobin, take-down, 85 gr point');

    // The planted truths of the demo: the lighter point brings the bare shafts home, and the groups are as wide as before.
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(
      /85 gr point.*bare shafts land \d+ mm from the fletched, not \d+ mm/,
    );
    const row = (name: RegExp) => page.getByRole('row', { name });
    await expect(row(/^Arrow mass/)).toContainText('\u221225');
    await expect(
      row(/^Mean radius, fletched/)
        .locator('.noise')
        .first(),
    ).toBeVisible();
    await expect(page.getByRole('img', { name: /higher|strikes/i }).first()).toBeVisible();

    // A third set-up, made from what is there, joins the list at once.
    await hands.press(/^Add a set-up/);
    await hands.fill('its name', 'Tobin, 100 gr on trial');
    await hands.press('Begin it');
    await hands.press('Arrow');
    await hands.fill('point', '100');
    await hands.fill('whole arrow', '342');
    await hands.press('Compare');
    await hands.choose('compare with', 'Tobin, take-down, 110 gr point');
    await expect(row(/^Arrow mass/)).toContainText('+10');
  });
}
