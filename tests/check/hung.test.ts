import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { root } from '../../electron/launch/bootstrap.mjs';

it('A test file that never ends is named, and the run ends with 1', () => {
  fs.mkdirSync(path.join(root, '.cache'), { recursive: true });
  const folder = fs.mkdtempSync(path.join(root, '.cache/hung-'));
  onTestFinished(() => fs.rmSync(folder, { recursive: true }));
  fs.writeFileSync(
    path.join(folder, 'endless.test.ts'),
    "import { it } from 'vitest';\nit('goes round', () => { for (;;); }, 100);\n",
  );
  const vitest = path.join(root, 'node_modules/vitest/vitest.mjs');
  const { status, stderr } = spawnSync(
    process.execPath,
    [vitest, 'run', `--root=${folder}`, '--pool=threads', `--reporter=${path.join(root, 'tests/hung.ts')}`],
    { cwd: folder, encoding: 'utf8', env: { ...process.env, FISTMELE_HUNG: '2000' }, timeout: 60_000 },
  );
  expect(stderr).toContain('Not ended after 2 s: endless.test.ts');
  expect(status).toBe(1);
});
