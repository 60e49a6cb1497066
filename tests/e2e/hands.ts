import { expect, type Locator, type Page } from 'playwright/test';

/** What a person does at the bench, with one kind of hand. A journey is written once and walked with each. */
export interface Hands {
  readonly name: 'mouse' | 'keyboard';
  /** Types a figure or a word into the field of that name, and leaves it. */
  fill(field: string, text: string): Promise<void>;
  /** Picks from a list by the text of the entry. */
  choose(list: string, entry: string | RegExp): Promise<void>;
  press(button: string | RegExp): Promise<void>;
  /** Pastes a table into the box that was opened for it. */
  paste(lines: readonly string[]): Promise<void>;
  /** Puts a shot on the face, millimetres from the centre, x right, y up. */
  shoot(xMm: number, yMm: number): Promise<void>;
}

/** The sheet in front if one is open, else the whole window. */
const inFront = async (page: Page): Promise<Locator> => {
  const sheet = page.locator('dialog[open]');
  return (await sheet.count()) > 0 ? sheet : page.locator('body');
};

export async function onceKept(page: Page): Promise<void> {
  await expect(page.locator('.kept dd')).not.toHaveText('writing…');
}

export function mouse(page: Page): Hands {
  return {
    name: 'mouse',
    async fill(field, text) {
      const input = (await inFront(page)).getByLabel(field, { exact: true });
      await input.click();
      await input.fill(text);
      await (await inFront(page)).locator('h1, h2').first().click();
      await onceKept(page);
    },
    async choose(list, entry) {
      const select = (await inFront(page)).getByLabel(list, { exact: true });
      const text = await select.locator('option', { hasText: entry }).first().textContent();
      await select.selectOption({ label: text ?? '' });
      await onceKept(page);
    },
    async press(button) {
      const exact = typeof button === 'string';
      await (await inFront(page)).getByRole('button', { name: button, exact }).first().click();
      await onceKept(page);
    },
    async paste(lines) {
      const box = (await inFront(page)).getByRole('textbox', { name: /^table: / });
      await box.click();
      await page.keyboard.insertText(lines.join('\n'));
    },
    async shoot(xMm, yMm) {
      const face = page.locator('.face-target');
      const before = await page.locator('.face-target').getAttribute('aria-label');
      await face.scrollIntoViewIfNeeded();
      const box = await face.locator('.frame-line').boundingBox();
      if (box === null) throw new Error('no face on the page');
      const half = Number(await face.getAttribute('data-half')) * 1000;
      const at = [
        box.x + box.width / 2 + (xMm / half) * (box.width / 2),
        box.y + box.height / 2 - (yMm / half) * (box.height / 2),
      ] as const;
      const taken = await face.getAttribute('data-taken');
      const isSet = async () => (await face.getAttribute('aria-label')) !== before;
      const isTaken = async () => ![null, taken].includes(await face.getAttribute('data-taken'));
      await page.mouse.click(...at);
      await expect.poll(async () => (await isTaken()) || (await isSet())).toBe(true);
      // On a hole the first click takes that shot in hand, and the second sets another.
      if (!(await isSet())) await page.mouse.click(...at);
      await expect(face).not.toHaveAttribute('aria-label', before ?? '');
      await onceKept(page);
    },
  };
}

const nameInFocus = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const here = document.activeElement;
    if (here === null) return '';
    const label = 'labels' in here ? (here as HTMLInputElement).labels?.[0]?.textContent : undefined;
    return (here.getAttribute('aria-label') ?? label ?? here.textContent ?? '').trim();
  });

/** How many presses of Tab lead from the focus to the nearest thing of that name, less than 0 with Shift, by the order in the page; 0 when none is found. */
const stepsTo = (page: Page, name: string | RegExp): Promise<number> =>
  page.evaluate(
    ({ text, source, flags }) => {
      const fits = (named: string) => (source === null ? named === text : new RegExp(source, flags).test(named));
      const nameOf = (element: Element) => {
        const label = 'labels' in element ? (element as HTMLInputElement).labels?.[0]?.textContent : undefined;
        return (element.getAttribute('aria-label') ?? label ?? element.textContent ?? '').trim();
      };
      const open = document.querySelector('dialog[open]') ?? document.body;
      const all = [
        ...open.querySelectorAll<HTMLElement>(
          'button:not([disabled]), input, select, textarea, a[href], summary, [tabindex="0"]',
        ),
      ].filter(
        (element) =>
          element.tabIndex >= 0 &&
          element.checkVisibility() &&
          // Of a group of radio buttons Tab halts at the chosen one only.
          !(element instanceof HTMLInputElement && element.type === 'radio' && !element.checked),
      );
      const here = all.indexOf(document.activeElement as HTMLElement);
      if (here >= 0 && fits(nameOf(all[here] as HTMLElement))) return 0;
      for (let step = 1; step <= all.length; step++) {
        const [ahead, behind] = [all[here + step], all[here - step]];
        if (ahead !== undefined && fits(nameOf(ahead))) return step;
        if (here > 0 && behind !== undefined && fits(nameOf(behind))) return -step;
      }
      return 0;
    },
    { text: String(name), source: name instanceof RegExp ? name.source : null, flags: name instanceof RegExp ? name.flags : '' },
  );

/** Presses Tab until the thing of that name has the focus: if it cannot be reached so, neither can a person reach it. */
export async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  const fits = (text: string) => (typeof name === 'string' ? text === name : name.test(text));
  const most = 160;
  // How far it ought to be is counted first, so that the page is not asked after every step; what counts is where the steps lead.
  const steps = await stepsTo(page, name);
  for (let step = Math.abs(steps); step > 0; step--) await page.keyboard.press(steps > 0 ? 'Tab' : 'Shift+Tab');
  for (let i = 0; i < most; i++) {
    if (fits(await nameInFocus(page))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not reach ${String(name)} within ${most} steps`);
}

export function keyboard(page: Page): Hands {
  return {
    name: 'keyboard',
    async fill(field, text) {
      await tabTo(page, field);
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Tab');
      await onceKept(page);
    },
    async choose(list, entry) {
      await tabTo(page, list);
      const select = page.locator(':focus');
      const fits = (text: string) => (typeof entry === 'string' ? text.includes(entry) : entry.test(text));
      const chosen = () => select.evaluate((element) => (element as HTMLSelectElement).selectedOptions[0]?.textContent ?? '');
      const texts = await select.locator('option').allTextContents();
      const [from, to] = [texts.indexOf(await chosen()), texts.findIndex(fits)];
      expect(to, `${list} offers ${String(entry)}`).toBeGreaterThanOrEqual(0);
      // A letter leads to the next entry that begins with it; where that is another one, the arrows do it step by step.
      const letter = texts[to]?.charAt(0) ?? '';
      const next = [...texts.keys()].map((step) => (from + 1 + step) % texts.length).find((i) => texts[i]?.startsWith(letter));
      if (to !== from && next === to && /[a-z\d]/i.test(letter)) await page.keyboard.press(letter);
      else for (let i = from; i !== to; i += Math.sign(to - from)) await page.keyboard.press(to > from ? 'ArrowDown' : 'ArrowUp');
      await onceKept(page);
      expect(fits(await chosen()), `${list} offers ${String(entry)}`).toBe(true);
    },
    async press(button) {
      await tabTo(page, button);
      await page.keyboard.press('Enter');
      await onceKept(page);
    },
    async paste(lines) {
      await tabTo(page, /^table: /);
      await page.keyboard.insertText(lines.join('\n'));
    },
    async shoot(xMm, yMm) {
      await tabTo(page, /face\. \d+ shots/);
      const face = page.locator('.face-target');
      const before = await face.getAttribute('aria-label');
      // The cross starts where it was; from the centre every place is a whole number of coarse and fine steps away.
      await page.keyboard.press('Escape');
      const walk = async (mm: number, plus: string, minus: string) => {
        const key = mm > 0 ? plus : minus;
        for (let i = 0; i < Math.floor(Math.abs(mm) / 5); i++) await page.keyboard.press(key);
        for (let i = 0; i < Math.abs(mm) % 5; i++) await page.keyboard.press(`Shift+${key}`);
      };
      await walk(xMm, 'ArrowRight', 'ArrowLeft');
      await walk(yMm, 'ArrowUp', 'ArrowDown');
      await page.keyboard.press('Enter');
      await expect(face).not.toHaveAttribute('aria-label', before ?? '');
      await onceKept(page);
    },
  };
}

/** The same hands, and how often they did something: a field filled, an entry picked, a button pressed, a table pasted, a shot put. */
export function counted(hands: Hands): Hands & { acts(): number } {
  let acts = 0;
  const count =
    <A extends unknown[]>(act: (...given: A) => Promise<void>) =>
    (...given: A) => {
      acts++;
      return act(...given);
    };
  const { name, fill, choose, press, paste, shoot } = hands;
  return {
    name,
    fill: count(fill),
    choose: count(choose),
    press: count(press),
    paste: count(paste),
    shoot: count(shoot),
    acts: () => acts,
  };
}

export const bothHands = [mouse, keyboard] as const;
