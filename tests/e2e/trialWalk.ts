import { expect, type Page } from 'playwright/test';
import { keyboard, mouse, onceKept, tabTo, type Hands } from './hands.ts';

type Place = readonly [x: number, y: number];

/** What is entered in one row of a trial's sheet: shots or tears in millimetres, speeds, or the parts that powder shows touched. */
export type RowEntry = { readonly shots: readonly Place[] } | { readonly tear: Place } | { readonly touched: readonly string[] };

type ByHand = RegExp | { readonly left: RegExp; readonly right: RegExp };
const of = (said: ByHand, hand: 'left' | 'right'): RegExp => (said instanceof RegExp ? said : said[hand]);

export interface Walk {
  readonly kind: string;
  /** Figures of the plan that are altered, so that few arrows are enough. */
  readonly plan: readonly (readonly [field: string, text: string])[];
  readonly rows: readonly RowEntry[];
  /** What the page then says, by hand where that makes a difference. */
  readonly finds: ByHand;
  /** The one next change. */
  readonly next: ByHand;
  /** What is pressed at the end of it. */
  readonly end: 'Note it as done' | 'End the trial';
}

export const walkers = [
  { hand: 'right', take: mouse },
  { hand: 'left', take: mouse },
  { hand: 'right', take: keyboard },
  { hand: 'left', take: keyboard },
] as const;

const headline = (page: Page) => page.getByRole('heading', { level: 1 });

const turnTo = (page: Page, hands: Hands, screen: string, keys: string) =>
  hands.name === 'keyboard' ? page.keyboard.press(keys) : hands.press(screen);

/** A bow of one's own with what every trial needs, on a notebook that is kept. */
async function measured(page: Page, hands: Hands, hand: 'left' | 'right'): Promise<void> {
  await hands.fill('brace height', '8 1/2');
  if (hand === 'left') await hands.choose('hand', 'left');
  await hands.press('Go on to the bow');
  await turnTo(page, hands, 'Trials', 'Alt+4');
  await expect(headline(page)).toHaveText('Begin with bare shafts');
}

async function enterShots(page: Page, hands: Hands, shots: readonly Place[]): Promise<void> {
  if (hands.name === 'mouse') {
    for (const [x, y] of shots) await hands.shoot(x, y);
  } else {
    await tabTo(page, /^at, across and up/);
    for (const [x, y] of shots) {
      await page.keyboard.type(`${x} ${y}`);
      await page.keyboard.press('Enter');
    }
  }
  await expect(page.locator('.row-count')).toHaveText(`${shots.length} of ${shots.length}`);
  await onceKept(page);
}

/** On to the next row, and after the last to what they say. */
async function goOn(page: Page, hands: Hands): Promise<void> {
  const row = page.locator('.row-head');
  const before = await row.textContent();
  if (hands.name === 'keyboard') await page.keyboard.press('n');
  else await hands.press(/^(Next: |Read it)/);
  await inHandNext(page, before);
  await onceKept(page);
}

async function enterTear(page: Page, hands: Hands, [x, y]: Place): Promise<void> {
  const row = await page.locator('.row-head').textContent();
  const pad = page.locator('.pad');
  if (hands.name === 'mouse') {
    await pad.scrollIntoViewIfNeeded();
    const box = await pad.boundingBox();
    const half = Number(await pad.getAttribute('data-half')) * 1000;
    if (box === null) throw new Error('no paper on the page');
    const per = box.width / 2 / half;
    await page.mouse.click(box.x + box.width / 2 + x * per, box.y + box.height / 2 - y * per);
  } else {
    await tabTo(page, /^Paper\. /);
    for (let i = 0; i < Math.abs(x) / 5; i++) await page.keyboard.press(x > 0 ? 'ArrowRight' : 'ArrowLeft');
    for (let i = 0; i < Math.abs(y) / 5; i++) await page.keyboard.press(y > 0 ? 'ArrowUp' : 'ArrowDown');
    await page.keyboard.press('Enter');
  }
  await onceKept(page);
  await inHandNext(page, row);
}

/** What is entered at one stroke takes the next row in hand by itself, and after the last one what they say. */
const inHandNext = (page: Page, row: string | null) => expect(page.locator('.row-head', { hasText: row ?? '' })).toHaveCount(0);

async function enterTouched(page: Page, hands: Hands, touched: readonly string[]): Promise<void> {
  const row = await page.locator('.row-head').textContent();
  for (const part of touched) {
    if (hands.name === 'mouse') await page.getByLabel(part, { exact: true }).check();
    else {
      await tabTo(page, part);
      await page.keyboard.press('Space');
    }
  }
  await hands.press(touched.length === 0 ? 'Clean: nothing touched' : /^Note: /);
  await inHandNext(page, row);
}

async function enterRows(page: Page, hands: Hands, rows: readonly RowEntry[]): Promise<void> {
  for (const row of rows) {
    if ('shots' in row) {
      await enterShots(page, hands, row.shots);
      await goOn(page, hands);
    } else if ('tear' in row) await enterTear(page, hands, row.tear);
    else await enterTouched(page, hands, row.touched);
  }
  await expect(page.locator('[data-part=read]')).toHaveAttribute('aria-expanded', 'true');
}

/** A trial from its plan to the next change, undone and done again, and found on record after a reload. */
export async function walk(page: Page, { hand, take }: (typeof walkers)[number], trial: Walk): Promise<void> {
  const hands = take(page);
  await measured(page, hands, hand);
  await hands.press(new RegExp(`^${trial.kind}\\s?: plan`));
  for (const [field, text] of trial.plan) await hands.fill(field, text);
  await hands.press('Read, and the place is fit: begin');
  await enterRows(page, hands, trial.rows);

  await expect(page.locator('.trial-head')).toHaveText(of(trial.finds, hand));
  await hands.press('Go on to the change');
  const step = page.locator('.change-part .plate').first();
  await expect(step).toHaveText(of(trial.next, hand));
  const noted = (await step.textContent()) ?? '';

  const done = page.getByRole('button', { name: trial.end, exact: true });
  await hands.press(trial.end);
  await expect(done).toHaveCount(0);
  if (hands.name === 'mouse') await hands.press('Undo');
  else await page.keyboard.press('ControlOrMeta+z');
  await expect(done).toBeVisible();
  await hands.press(trial.end);
  await expect(done).toHaveCount(0);
  const found = await headline(page).textContent();

  await page.reload();
  await expect(page.locator('.rack-item', { hasText: trial.kind })).toBeVisible();
  await turnTo(page, hands, 'Record', 'Alt+7');
  const tried = page.locator('.tried tr').filter({ hasText: trial.kind });
  await expect(tried).toContainText(trial.end === 'End the trial' ? 'ended' : noted);
  await hands.press(trial.kind);
  await expect(headline(page)).toHaveText(found ?? '');
}
