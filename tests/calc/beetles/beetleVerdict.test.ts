import fc from 'fast-check';
import { expect, test } from 'vitest';
import { beetleStages, beetleVerdict } from '../../../src/calc/beetles/beetleVerdict';
import { cropNames } from '../../../src/reference/crops';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

// Thresholds as in beetleThreshold.test, each with its source there.
test.each([
  [29, 30, 'cucumber', false],
  [30, 30, 'cucumber', true],
  [0, 30, 'cucumber', false],
  [149, 30, 'watermelon', false],
  [150, 30, 'watermelon', true],
])('%d beetles on %d plants of %s: at the threshold is %s', (beetles, plants, crop, isAt) => {
  expect(beetleVerdict(beetles, plants, crop, 'seedling', undefined).isAtThreshold).toBe(isAt);
});

test('25 plants are enough (judgement), and plants past about 5 leaves are told apart', () => {
  expect(beetleVerdict(1, 24, 'cucumber', 'cotyledon', undefined)).toMatchObject({
    isTooFew: true,
    isOlder: false,
  });
  expect(beetleVerdict(1, 25, 'cucumber', 'older', undefined)).toMatchObject({
    isTooFew: false,
    isOlder: true,
  });
});

test('one beetle more never takes the threshold back; the same count on twice the plants is half as many', () => {
  const counts = fc.integer({ min: 0, max: 1000 });
  fc.assert(
    fc.property(
      counts,
      fc.integer({ min: 1, max: 300 }),
      fc.constantFrom(...cropNames),
      fc.constantFrom(...beetleStages),
      (beetles, plants, crop, stage) => {
        const verdict = beetleVerdict(beetles, plants, crop, stage, undefined);
        const more = beetleVerdict(beetles + 1, plants, crop, stage, undefined);
        expect(Number(more.isAtThreshold)).toBeGreaterThanOrEqual(Number(verdict.isAtThreshold));
        expect(verdict.isAtThreshold).toBe(beetles >= verdict.threshold * plants);
        const { mean } = beetleVerdict(beetles, 2 * plants, crop, stage, undefined);
        expect(mean).toBe(verdict.mean / 2);
      },
    ),
    seeded,
  );
});

test('refusals', () => {
  expect(refusalOf(() => beetleVerdict(-1, 30, 'cucumber', 'seedling', true))).toMatchObject({
    name: 'beetles',
    atLeast: 0,
  });
  expect(refusalOf(() => beetleVerdict(1.5, 30, 'cucumber', 'seedling', true))).toMatchObject({
    code: 'notWhole',
  });
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => beetleVerdict(1, bad, 'cucumber', 'seedling', true))).toMatchObject({
      name: 'plants',
      atLeast: 1,
    });
  }
  expect(refusalOf(() => beetleVerdict(1, 30, 'tomato', 'seedling', true))).toMatchObject({
    code: 'unknownName',
  });
});

test('working: threshold, mean, verdict, and where the caution comes from', () => {
  const { value, steps, remarks } = recording((record) =>
    beetleVerdict(60, 30, 'cucumber', 'seedling', true, record),
  );
  expect(steps.map(({ step }) => step)).toEqual(['beetleThreshold', 'beetlesPerPlant', 'beetleVerdict']);
  expect(steps.at(-1)).toMatchObject({ result: value.isAtThreshold });
  expect(remarks).toContain('pesticides');
  expect(remarks).toContain('beetlesMatterEarly');
});
