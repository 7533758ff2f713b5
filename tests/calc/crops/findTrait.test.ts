import { expect, test } from 'vitest';
import { findTrait } from '../../../src/calc/crops/findTrait';
import { traits } from '../../../src/reference/crops';
import { refusalOf } from '../refusal';

test('every trait is found in any capitals and spaces', () => {
  for (const trait of Object.keys(traits)) {
    expect(findTrait(` ${trait.toUpperCase().replace(' ', '  ')} `)).toBe(trait);
  }
});

test('an unknown one is refused with the nearest', () => {
  expect(refusalOf(() => findTrait('row spaceing'))).toMatchObject({
    code: 'unknownName',
    kind: 'figure',
    given: 'row spaceing',
    nearest: ['row spacing'],
  });
  expect(refusalOf(() => findTrait('toString'))).toMatchObject({ code: 'unknownName' });
});
