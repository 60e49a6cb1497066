import { expect, test } from './bench.ts';
import { mouse } from './hands.ts';

const GONE =
  /The bench’s host has stopped, so this last change was not kept; everything before it is\. Start it again with npm start/;

test('the address works once, leaves no code behind, and a reload keeps the session', async ({ bench, page, context }) => {
  const address = await bench.newAddress();
  await page.goto('about:blank');
  await page.goto(address);
  await mouse(page).fill('brace height', '8 1/2');
  expect(page.url()).not.toContain('code=');
  await page.reload();
  await expect(page.getByText('8 1/2').first()).toBeVisible();

  const second = await context.newPage();
  await second.goto(address);
  await expect(second.getByText(/This page is not admitted to the bench: its address works once/).first()).toBeVisible();
});

test('the page keeps to its policy: nothing of it is refused, and a script that is slipped in is', async ({ bench, page }) => {
  const answer = await page.request.get(new URL(page.url()).origin);
  expect(answer.headers()['content-security-policy']).toContain("script-src 'self'");
  const refused = page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        document.addEventListener('securitypolicyviolation', (event) => resolve(event.violatedDirective));
        const script = document.createElement('img');
        script.src = 'https://elsewhere.test/picture.png';
        document.body.append(script);
      }),
  );
  expect(await refused).toBe('img-src');
  // That refusal was asked for; there must have been no other.
  expect(bench.complaints.splice(0).every((complaint) => complaint.includes('elsewhere.test'))).toBe(true);
});

test('two windows of one session see each other write', async ({ bench, page, context }) => {
  await mouse(page).fill('brace height', '8 1/2');
  const token = await page.evaluate(() => sessionStorage.getItem('fistmele.token') ?? '');
  const other = await context.newPage();
  await other.addInitScript((kept) => sessionStorage.setItem('fistmele.token', kept), token);
  await other.goto(new URL(page.url()).origin);
  await expect(other.getByText('8 1/2').first()).toBeVisible();
  await other.getByRole('button', { name: 'Bow', exact: true }).click();
  await page.getByRole('button', { name: 'Bow', exact: true }).click();
  await mouse(page).fill('brace height', '8 3/4');
  await expect(other.getByLabel('brace height', { exact: true })).toHaveValue('8 3/4 in');
  expect(bench.complaints).toEqual([]);
});

test('when the host has stopped, the page says so in words, and what was kept is there afterwards', async ({ bench, page }) => {
  await mouse(page).fill('brace height', '8 1/2');
  await page.getByRole('button', { name: 'Bow', exact: true }).click();
  await bench.stop();
  await page.getByLabel('brace height', { exact: true }).fill('9');
  await page.keyboard.press('Tab');
  await expect(page.getByText(GONE).first()).toBeVisible();
  await page.goto('about:blank');
  await bench.start();
  await bench.open();
  await page.getByRole('button', { name: 'Bow', exact: true }).click();
  await expect(page.getByLabel('brace height', { exact: true })).toHaveValue('8 1/2 in');
});
