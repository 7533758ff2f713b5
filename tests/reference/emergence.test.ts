import { expect, test } from 'vitest';
import { emergence, emergenceSource } from '../../src/reference/emergence';
import { minimumGermination } from '../../src/reference/seedStandards';
import { sources } from '../../src/reference/sources';

test('the days of the table of Harrington and Minges, as Knott’s Handbook 1997 has it', () => {
  const days = Object.fromEntries(
    Object.entries(emergence).map(([kind, knots]) => [
      kind,
      Object.fromEntries(
        (knots ?? []).flatMap(({ celsius, days: of }) => (of === null ? [] : [[celsius, of]])),
      ),
    ]),
  );
  expect(days).toEqual({
    cucumber: { 15: 13, 20: 6, 25: 4, 30: 3, 35: 3 },
    melon: { 20: 8, 25: 4, 30: 3 },
    watermelon: { 20: 12, 25: 5, 30: 4, 35: 3 },
  });
});

test('kinds of the regulation, rising temperatures, shares, a source, frozen', () => {
  for (const [kind, knots = []] of Object.entries(emergence)) {
    expect(Object.keys(minimumGermination)).toContain(kind);
    knots.slice(1).forEach((knot, i) => expect(knot.celsius).toBeGreaterThan(knots[i]?.celsius ?? NaN));
    for (const { normal } of knots) expect(normal > 0 && normal <= 1).toBe(true);
    expect(Object.isFrozen(knots) && knots.every(Object.isFrozen)).toBe(true);
  }
  expect(Object.keys(sources)).toContain(emergenceSource);
});
