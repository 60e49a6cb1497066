import fc from 'fast-check';

// The same examples each time, so that a run tells of the code and not of its luck: `npm run soak` draws others, and a seed it names
// is run again with FISTMELE_SEED. A property that fails in an example of seconds could shrink it for hours, so it ends in good time.
fc.configureGlobal({
  seed: Number(process.env['FISTMELE_SEED'] ?? 20_261_125),
  interruptAfterTimeLimit: 60_000,
  markInterruptAsFailure: true,
});
