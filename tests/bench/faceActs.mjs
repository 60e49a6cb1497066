// What a person does on the face and beside it, one act after the other, with 10,000 shots on the page. Only mouse and keys are used while
// an act is watched: looking things up in the page is work of the page too.

const SHOTS = 10_000;
const TIMES = 6;
/** Long enough for the figures that follow a shot in their own time [ms]. */
const SETTLED = 1000;

/** A sunflower's seeds fill a disc of 0.1 m, six to an end. */
const table = () =>
  ['arrow;end;x (mm);y (mm)']
    .concat(
      Array.from({ length: SHOTS }, (_, i) => {
        const [radius, angle] = [100 * Math.sqrt(i / SHOTS), i * Math.PI * (3 - Math.sqrt(5))];
        return `${(i % 6) + 1};${1 + Math.floor(i / 6)};${(radius * Math.cos(angle)).toFixed(1)};${(radius * Math.sin(angle)).toFixed(1)}`;
      }),
    )
    .join('\n');

/** @param {import('playwright').Page} page */
const toGroups = (page) => page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Groups', exact: true });

/**
 * A bench with one group of 10,000 shots on its page.
 * @param {import('playwright').Page} page
 */
export async function manyShots(page) {
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2 in');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await toGroups(page).click();
  await beginGroup(page, 'fletched');
}

/**
 * @param {import('playwright').Page} page
 * @param {'fletched' | 'bare'} fletching
 */
async function beginGroup(page, fletching) {
  await page.getByRole('button', { name: `Begin a ${fletching} group` }).click();
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  const file = { name: 'shots.csv', mimeType: 'text/csv', buffer: Buffer.from(table()) };
  await page.locator('dialog input[type="file"]').setInputFiles(file);
  await page.getByRole('button', { name: /^Keep 10,000 shots/ }).click();
  await page.waitForFunction(
    (label) => document.querySelector('.face-target')?.getAttribute('aria-label')?.includes(label),
    ` ${SHOTS} shots in the ${fletching} group`,
  );
  await page.waitForTimeout(SETTLED);
}

/**
 * @param {import('playwright').Locator} locator
 * @returns {Promise<[x: number, y: number]>}
 */
async function middleOf(locator) {
  await locator.scrollIntoViewIfNeeded();
  const box = await locator.boundingBox();
  if (box === null) throw new Error('nothing to press');
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/**
 * The acts by name. Each is made ready unwatched and yields what is to be watched, once or several times.
 * @param {import('playwright').Page} page
 * @returns {Readonly<Record<string, () => AsyncGenerator<() => Promise<void>>>>}
 */
export function faceActs(page) {
  const settle = () => page.waitForTimeout(SETTLED);
  const corner = async () => {
    const frame = page.locator('.face-target .frame-line');
    const [x, y] = await middleOf(frame);
    const side = (await frame.boundingBox())?.width ?? 0;
    return /** @type {const} */ ([x - side * 0.2, y - side * 0.2]);
  };
  /** @param {...string} keys */
  const press = async (...keys) => {
    for (const key of keys) await page.keyboard.press(key);
    await settle();
  };
  /** @param {import('playwright').Locator} locator */
  const click = async (locator) => {
    const at = await middleOf(locator);
    return async () => {
      await page.mouse.click(...at);
      await settle();
    };
  };
  async function* set() {
    const [left, top] = await corner();
    for (let i = 0; i < TIMES; i++)
      yield async () => {
        await page.mouse.click(left + 20 * i, top + 10 * i);
        await settle();
      };
  }
  async function* pull() {
    const [left, top] = await corner();
    for (let i = 0; i < TIMES; i++)
      yield async () => {
        await page.mouse.move(left + 20 * i, top + 10 * i);
        await page.mouse.down();
        await page.mouse.move(left + 20 * i + 40, top + 10 * i + 60, { steps: 20 });
        await page.mouse.up();
        await settle();
      };
  }
  async function* question() {
    const questions = page.locator('.questions li button');
    const count = await questions.count();
    if (count === 0) throw new Error('no questions on the page');
    for (let i = 0; i < count; i++) {
      yield await click(questions.nth(i));
      yield () => press('Escape');
    }
  }
  async function* come() {
    for (let i = 0; i < 3; i++) {
      await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Bow', exact: true }).click();
      yield await click(toGroups(page));
    }
  }
  return {
    set,
    pull,
    async *nudge() {
      await page.locator('.face-target').focus();
      for (let i = 0; i < TIMES; i++) yield () => press('ArrowRight');
    },
    async *point() {
      const [left, top] = await corner();
      yield async () => {
        for (let i = 0; i < 40; i++) {
          await page.mouse.move(left + 4 * i, top + 3 * i);
          await page.waitForTimeout(20);
        }
      };
    },
    async *step() {
      await page.locator('.face-target').focus();
      for (let i = 0; i < TIMES; i++) yield () => press('PageUp');
    },
    async *number() {
      await page.locator('.face-target').focus();
      for (let i = 1; i <= 2; i++) yield () => press(String(i));
    },
    async *'leave-out'() {
      for (let i = 0; i < 2; i++) {
        await page.locator('.face-target').focus();
        yield () => press('l');
        yield async () => {
          await page.keyboard.type('slipped');
          await press('Enter');
        };
        await page.locator('.face-target').focus();
        await press('PageUp');
      }
    },
    async *'take-back'() {
      await page.locator('.face-target').focus();
      for (let i = 0; i < 2; i++) yield () => press('Backspace');
    },
    async *undo() {
      await page.locator('.face-target').focus();
      for (let i = 0; i < TIMES; i++) yield () => press('Control+z');
      for (let i = 0; i < TIMES; i++) yield () => press('Control+Shift+z');
    },
    async *'new-end'() {
      await page.locator('.face-target').focus();
      yield () => press('n');
      yield () => press('Escape', 'Enter');
    },
    async *'whole-face'() {
      // Which of the two comes first hangs on what was done before.
      for (let i = 0; i < 2; i++) yield await click(page.getByRole('button', { name: /^(Whole face|Close in)$/ }));
    },
    come,
    question,
    async *'shots-table'() {
      yield await click(page.getByRole('button', { name: 'Table', exact: true }));
      yield () => press('Escape');
    },
    // A second group of as many beside it: now every shot is read against the others too.
    async *'beside.set'() {
      await page.getByRole('button', { name: /^New group/ }).click();
      await beginGroup(page, 'bare');
      yield* set();
    },
    'beside.pull': pull,
    'beside.come': come,
    'beside.question': question,
  };
}
