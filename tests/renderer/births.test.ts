import { expect, it } from 'vitest';
import { newArcher } from '../../renderer/state/births.ts';

it('begins an archer of whom nothing was asked as not noted, neither learner nor settled', () => {
  expect(newArcher('New archer', 'left')).toMatchObject({ experience: null, drawLength: null, ageGroup: null, holdTime: null });
});
