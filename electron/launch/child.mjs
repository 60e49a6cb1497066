// How the programs that we start end. Node's own modules only.
import os from 'node:os';

/** A program that fails so soon after its start was never usable; one that runs longer was, and how it ends is its user's affair. */
const EARLY = 5000;

/**
 * @typedef {object} End
 * @property {number} code to pass on as our own
 * @property {string} why in words
 * @property {boolean} isEarly whether it failed at its start
 */

/**
 * Resolves when a child has ended or could not be started.
 *
 * @param {import('node:child_process').ChildProcess} child
 * @returns {Promise<End>}
 */
export function endOf(child, early = EARLY) {
  const began = Date.now();
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ code: 1, why: error.message, isEarly: true }));
    child.on('exit', (code, signal) => {
      const passedOn = code ?? 128 + (signal === null ? 0 : os.constants.signals[signal]);
      const why = code === null ? `it was ended by ${signal}` : `it ended with ${code}`;
      resolve({ code: passedOn, why, isEarly: passedOn !== 0 && Date.now() - began < early });
    });
  });
}
