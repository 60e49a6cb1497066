// How the programs that we start end. Node's own modules only.
import os from 'node:os';

/** A program that fails so soon after its start was never usable; one that runs longer was, and how it ends is its user's affair. */
const EARLY = 5000;

/** Resolves when a child has ended or could not be started: the exit code to pass on, why in words, and whether it failed at its start. */
export function endOf(child, early = EARLY) {
  const began = Date.now();
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ code: 1, why: error.message, isEarly: true }));
    child.on('exit', (code, signal) => {
      const passedOn = code ?? 128 + os.constants.signals[signal];
      const why = code === null ? `it was ended by ${signal}` : `it ended with ${code}`;
      resolve({ code: passedOn, why, isEarly: passedOn !== 0 && Date.now() - began < early });
    });
  });
}
