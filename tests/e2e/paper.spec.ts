import { expect, test } from './bench.ts';
import { bothHands, counted } from './hands.ts';

// What stands on the technician's paper. Invented figures of a recurve that pulls as recurves do.
const scale = [
  'Draw (in); pull (lb)',
  '12; 7,5',
  '14; 13,0',
  '16; 17,5',
  '18; 21,0',
  '20; 24,0',
  '22; 27,0',
  '24; 30,0',
  '26; 33,5',
  '28; 37,5',
];
const chronograph = ['gr  ft/s', '320  184', '352  178', '402  169', '502  154'];
const dozen = [352, 351.5, 352.5, 351, 352, 353, 352, 358, 351.5, 352, 352.5, 351].map(
  (gr, index) => `${index + 1}\t${gr}\t${(0.62 + (index % 3) / 1000).toFixed(3)}`,
);

for (const take of bothHands) {
  test(`a paper full of readings becomes a drawing, a suitability line and findings, by ${take.name}`, async ({
    bench,
    page,
  }) => {
    test.setTimeout(180_000);
    const hands = counted(take(page));
    const findings = page.getByRole('complementary', { name: 'Findings' });

    await hands.fill('brace height', '8 3/4');
    await hands.fill('weight on the fingers, at full draw', '38');
    await hands.fill('arrow length', '28 1/2');
    await hands.press('Go on to the bow');

    // In the order of the page, as Tab leads through it.
    await hands.fill('upper limb to string', '206');
    await hands.fill('lower limb to string', '203');
    await hands.fill('string length', '64 3/4');
    await hands.fill('length', '68');
    await hands.fill('button', '2 1/2');
    await hands.fill('upper bolt', '3');
    await hands.fill('lower bolt', '3');
    await hands.fill('nocking point', '6');
    await hands.fill('centre shot', '2.4');
    await hands.press(/^readings off the scale/);
    await hands.press('Paste a table');
    await hands.paste(scale);
    await hands.press('Read it');
    await hands.press('Keep 9 readings');
    await hands.press(/^chronograph/);
    await hands.press('Paste a table');
    await hands.paste(chronograph);
    await hands.press('Read it');
    await hands.press(/^Keep 4/);
    await hands.choose('string material', 'HMPE');
    await hands.fill('strands', '18');
    await hands.fill('string mass', '106');
    await hands.fill('twists', '24');
    await hands.choose('nock fit', 'a light tap frees it');
    await hands.fill('marked weight', '38');
    await hands.fill('brace, least', '8.25');
    await hands.fill('brace, most', '9.25');
    await hands.fill('arrow mass, least', '7');
    await hands.choose('low-stretch string', /^allowed/);
    await hands.fill('draw length', '28');
    await hands.choose('experience', 'settled');
    await hands.choose('clicker', 'shoots with a clicker');
    await hands.choose('age', '17 or over');
    await hands.fill('holds full draw for', '20');
    await expect(page.getByRole('heading', { name: /J stored/ })).toBeVisible();

    await hands.press('Arrow');
    await hands.fill('nock', '8');
    await hands.fill('fletching', '8');
    await hands.fill('shaft’s mass', '7.5');
    await hands.fill('insert', '12');
    await hands.fill('point', '110');
    await hands.fill('whole arrow', '352');
    await hands.fill('deflection', '0.620');
    await hands.fill('outer diameter', '5.5');
    await hands.press(/^numbered arrows/);
    await hands.press('Paste a table');
    await hands.paste(dozen);
    await hands.press('Read it');
    await hands.press('Keep 12 arrows');

    expect(hands.acts()).toBeLessThanOrEqual(60);
    await expect(page.getByRole('img', { name: /Load on the shaft/ })).toBeVisible();
    await expect(page.getByRole('heading', { name: /^Bends at \d+, \d+ and \d+ Hz/ })).toBeVisible();
    // Arrow 8 was written six grains heavier than the rest.
    await expect(findings.getByRole('listitem').filter({ hasText: 'Arrow 8' })).toContainText('358 gr');
    await expect(
      findings.getByRole('listitem').filter({ hasText: 'Brace height 8 3/4 in' }).getByRole('img', { name: 'In range' }),
    ).toBeVisible();
    await expect(findings.getByRole('listitem').filter({ hasText: 'Spine 0.620 in' })).toBeVisible();
    // Nobody has looked at the bow or the arrows yet: that is said, and nothing else waits for a figure.
    await expect(findings.getByRole('img', { name: 'Waiting' })).toHaveCount(0);
    await expect(findings).not.toContainText('NaN');

    await bench.restart();
    await hands.press('Arrow');
    await expect(page.getByRole('img', { name: /Load on the shaft/ })).toBeVisible();
  });
}
