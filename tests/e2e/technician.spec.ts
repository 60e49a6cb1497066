import { expect, test } from './bench.ts';
import { bothHands } from './hands.ts';

/** Six fletched about the centre, and four bare ones some 45 mm to their right: far more than such groups wander. */
const fletched = [
  [-14, 6],
  [11, -9],
  [3, 15],
  [-8, -12],
  [16, 4],
  [-6, 1],
] as const;
const bare = [
  [38, 4],
  [55, -8],
  [47, 11],
  [44, -3],
] as const;

for (const take of bothHands) {
  test(`a technician goes from a tape and a scale to one next change, by ${take.name}`, async ({ bench, page }) => {
    test.setTimeout(120_000);
    const hands = take(page);
    const findings = page.getByRole('complementary', { name: 'Findings' });
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Measure one bow, and the bench begins');

    await hands.fill('brace height', '8 1/2');
    await hands.fill('weight on the fingers, at full draw', '38#');
    await hands.fill('arrow length', '72.4 cm');
    await hands.press('Go on to the bow');

    await hands.fill('tiller', '3');
    await hands.fill('length', '68 in');
    await hands.fill('button', '2 1/2');
    await hands.fill('nocking point', '6 mm');
    await hands.fill('brace, least', '8.25');
    await hands.fill('brace, most', '235 mm');
    await hands.fill('draw length', '28');
    await hands.choose('experience', 'settled');
    await hands.choose('clicker', 'shoots with a clicker');
    await expect(
      findings.getByRole('listitem').filter({ hasText: 'Brace height 8 1/2 in' }).getByRole('img', { name: 'In range' }),
    ).toBeVisible();

    await hands.press('Arrow');
    await hands.fill('nock', '8');
    await hands.fill('fletching', '0.5 g');
    await hands.fill('shaft’s mass', '7.5');
    await hands.fill('insert', '12');
    await hands.fill('point', '110 gr');
    await hands.fill('deflection', '0.620');
    await expect(
      findings.getByRole('listitem').filter({ hasText: 'Spine 0.620 in' }).getByRole('img', { name: 'In range' }),
    ).toBeVisible();

    await hands.press('Groups');
    await hands.press('Begin a fletched group');
    for (const [x, y] of fletched) await hands.shoot(x, y);
    await hands.press(/^New group/);
    await hands.press('Begin a bare group');
    for (const [x, y] of bare) await hands.shoot(x, y);

    await expect(page.getByRole('heading', { level: 1 })).toHaveText(
      /^Bare shafts land 4\d mm right of fletched, and that is real$/,
    );
    const next = page.locator('.next');
    await expect(next.getByRole('heading')).toHaveText(/button/i);
    await hands.press('Note it as done');
    await hands.press('Bow');
    const button = page.getByLabel('button', { exact: true });
    await expect(button).not.toHaveValue('2 1/2 turns');

    // What was noted survives the night, and can still be undone the next morning.
    await bench.restart();
    await expect(page.getByLabel('button', { exact: true })).not.toHaveValue('2 1/2 turns');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(page.getByLabel('button', { exact: true })).toHaveValue('2 1/2 turns');
  });
}
