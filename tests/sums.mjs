// What each runner's own report adds up to. A runner that fell over, or found no tests, has failed, whatever its report says.
import fs from 'node:fs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Sum */

/**
 * @param {string} file
 * @param {boolean} isOk
 * @returns {Sum}
 */
export function vitestSum(file, isOk) {
  const report = read(file);
  /** @type {{ status: string, assertionResults: unknown[] }[]} */
  const files = report?.testResults ?? [];
  const brokenFiles = files.filter((test) => test.status === 'failed' && test.assertionResults.length === 0).length;
  return fair(
    {
      passed: report?.numPassedTests ?? 0,
      failed: (report?.numFailedTests ?? 0) + brokenFiles,
      skipped: (report?.numPendingTests ?? 0) + (report?.numTodoTests ?? 0),
    },
    isOk,
  );
}

/**
 * @param {string} file
 * @param {boolean} isOk
 * @returns {Sum}
 */
export function playwrightSum(file, isOk) {
  const report = read(file);
  const { expected = 0, flaky = 0, unexpected = 0, skipped = 0 } = report?.stats ?? {};
  return fair({ passed: expected, failed: unexpected + flaky + (report?.errors?.length ?? 0), skipped }, isOk);
}

/**
 * @param {Sum} sum
 * @param {boolean} isOk
 */
function fair(sum, isOk) {
  const isHollow = sum.passed + sum.failed === 0;
  return (!isOk || isHollow) && sum.failed === 0 ? { ...sum, failed: 1 } : sum;
}

/** @param {string} file */
function read(file) {
  try {
    return JSON.parse(fs.readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}
