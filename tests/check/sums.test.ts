import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { playwrightSum, vitestSum } from '../sums.mjs';

/** A runner's report as it lies on the disk; null for none at all. */
function reported(report: object | string | null): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-sums-'));
  onTestFinished(() => fs.rmSync(folder, { recursive: true }));
  const file = path.join(folder, 'report.json');
  if (report !== null) fs.writeFileSync(file, typeof report === 'string' ? report : JSON.stringify(report));
  return file;
}
const vitestReport = (passed: number, failed: number, pending = 0) => ({
  numPassedTests: passed,
  numFailedTests: failed,
  numPendingTests: pending,
  numTodoTests: 0,
});

describe("A runner's sum", () => {
  it('is what its report says', () => {
    expect(vitestSum(reported(vitestReport(12, 0, 2)), true)).toEqual({ passed: 12, failed: 0, skipped: 2 });
    expect(vitestSum(reported(vitestReport(12, 3)), false)).toEqual({ passed: 12, failed: 3, skipped: 0 });
    expect(playwrightSum(reported({ stats: { expected: 7, unexpected: 1, flaky: 0, skipped: 1 }, errors: [] }), false)).toEqual({
      passed: 7,
      failed: 1,
      skipped: 1,
    });
  });

  it('counts a file that could not be read as a failure, and a test that passed only at the second try', () => {
    const broken = { ...vitestReport(5, 0), testResults: [{ status: 'failed', assertionResults: [] }] };
    expect(vitestSum(reported(broken), false)).toEqual({ passed: 5, failed: 1, skipped: 0 });
    expect(playwrightSum(reported({ stats: { expected: 7, unexpected: 0, flaky: 1, skipped: 0 } }), true)).toMatchObject({
      failed: 1,
    });
    expect(
      playwrightSum(reported({ stats: { expected: 7 }, errors: [{ message: 'the host did not start' }] }), false),
    ).toMatchObject({ failed: 1 });
  });

  it('is a failure when the runner fell over, found nothing, or wrote no report', () => {
    for (const [report, isOk] of [
      [vitestReport(12, 0), false],
      [vitestReport(0, 0), true],
      [vitestReport(0, 0, 4), true],
      ['{ cut sho', true],
      [null, true],
    ] as const) {
      expect(vitestSum(reported(report), isOk), JSON.stringify(report)).toMatchObject({ failed: 1 });
    }
    expect(playwrightSum(reported(null), true)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});
