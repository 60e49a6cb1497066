import { expect, test } from './bench.ts';
import { bothHands } from './hands.ts';

for (const take of bothHands) {
  test(`an archer keeps a snapshot, changes things and puts them back, by ${take.name}`, async ({ bench, page }) => {
    test.setTimeout(120_000);
    const hands = take(page);
    await hands.fill('brace height', '8 3/4 in');
    await hands.fill('weight on the fingers, at full draw', '36');
    await hands.fill('arrow length', '28');
    await hands.press('Go on to the bow');
    await hands.fill('nocking point', '6');
    await hands.press('Record');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('No snapshot of this bow yet');
    await hands.press('Take a snapshot');
    await hands.fill('its name', 'Spring, 18 m');
    await hands.press('Keep it');
    await expect(page.locator('.rack')).toContainText('Spring, 18 m');

    await hands.press('Bow');
    await hands.fill('brace height', '8 1/4');
    await hands.fill('nocking point', '8 mm');
    await hands.press('Arrow');
    await hands.fill('length', '27 1/2');

    await hands.press('Record');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Three things differ from “Spring, 18 m”/);
    for (const [name, then, now] of [
      ['Brace height', '8 3/4', '8 1/4'],
      ['Nocking point', '6 mm', '8 mm'],
      ['Length', '28 in', '27 1/2'],
    ] as const) {
      const row = page.getByRole('row').filter({ hasText: name });
      await expect(row).toContainText(then.replace(/ (?=1\/|3\/)/, '\u200a'));
      await expect(row).toContainText(now.replace(/ (?=1\/|3\/)/, '\u200a'));
    }

    await bench.restart();
    await hands.press('Record');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Three things differ from “Spring, 18 m”/);
    await hands.press('Put “Spring, 18 m” back');
    await hands.press('Bow');
    await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('8 3/4 in');
    await expect(page.getByLabel('nocking point', { exact: true })).toHaveValue('6 mm');

    // Put back is a new state: a restart keeps it, and one undo leads to the state before it.
    await bench.restart();
    await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('8 3/4 in');
    await hands.press('Undo');
    await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('8 1/4 in');
    await hands.press('Arrow');
    await expect(page.getByLabel('length', { exact: true })).toHaveValue('27 1/2 in');
  });
}
