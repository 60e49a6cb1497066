import type { Reporter, TestModule } from 'vitest/node';

/** The longest of any file's own limits is three minutes (the kills). [ms] */
const LONGEST = Number(process.env['FISTMELE_HUNG'] ?? 300_000);

/**
 * Ends the run, naming the file, when one says nothing for minutes: a loop without an end takes no notice of a test's own time limit.
 */
export default class Hung implements Reporter {
  private readonly running = new Map<string, number>();

  onTestRunStart(): void {
    setInterval(() => this.look(), LONGEST / 30).unref();
  }
  onTestModuleStart(module: TestModule): void {
    this.running.set(module.relativeModuleId, Date.now());
  }
  onTestModuleEnd(module: TestModule): void {
    this.running.delete(module.relativeModuleId);
  }

  private look(): void {
    const hung = [...this.running].filter(([, since]) => Date.now() - since > LONGEST).map(([file]) => file);
    if (hung.length === 0) return;
    console.error(`\nNot ended after ${LONGEST / 1000} s: ${hung.join(', ')}. The run is given up.`);
    process.exit(1);
  }
}
