import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainName } from '../../../src/calc/crops/plainName';

test.each([
  ['  Summer  SQUASH ', 'summer squash'],
  ['summer\u00a0squash', 'summer squash'],
  ['jack-o\u2019-lantern', "jack-o'-lantern"],
  ['Melón chino', 'melon chino'],
  ['CALABACI\u0301N', 'calabacin'],
  ['', ''],
])('%j is compared as %j (hand made)', (typed, plain) => {
  expect(plainName(typed)).toBe(plain);
});

test('a plain name is its own plain name', () => {
  fc.assert(
    fc.property(fc.string(), (typed) => {
      expect(plainName(plainName(typed))).toBe(plainName(typed));
    }),
    { seed: 20261125, numRuns: 500 },
  );
});
