import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { crossing } from '../../../src/calc/flowers/crossing';
import { cropNames } from '../../../src/reference/crops';
import { recording } from '../recording';

const cross = (a: string, b: string, saving?: boolean) => crossing(findCrop(a), findCrop(b), saving);

describe('crossing', () => {
  test.each([
    ['zucchini', 'pumpkin', 'cross', 'Colorado State and Iowa State: summer squash crosses with pumpkin'],
    ['pickling cucumber', 'slicing cucumber', 'cross', 'Iowa State: within a species'],
    ['cucumber', 'cantaloupe', 'do not cross', 'Colorado State: cucumbers do not cross with cantaloupes'],
    ['cucumber', 'pumpkin', 'do not cross', 'Colorado State: nor with pumpkins'],
    ['watermelon', 'muskmelon', 'do not cross', 'Colorado State: nor cantaloupes with watermelons'],
    ['butternut squash', 'zucchini', 'may cross', 'winter squash is of three species'],
    ['acorn squash', 'pumpkin', 'may cross', 'bush winter squash is of two species'],
    ['gourd', 'zucchini', 'may cross', 'ornamental gourds are Cucurbita pepo, hard-shell gourds are not'],
    ['gourd', 'gourd', 'may cross', 'two species go by the name'],
    ['triploid watermelon', 'watermelon', 'seedless', 'triploid: no seed'],
    ['triploid watermelon', 'pumpkin', 'do not cross', 'different species'],
  ] as const)('%s and %s: %s (%s)', (a, b, verdict, _source) => {
    expect(cross(a, b).verdict).toBe(verdict);
    expect(cross(b, a).verdict).toBe(verdict);
  });

  test('different species of squash seldom cross (Purdue: between some of them)', () => {
    const maxima = findCrop('winter squash');
    const hubbard = {
      ...maxima,
      figures: { ...maxima.figures, species: { text: 'Cucurbita maxima', grounds: ['robinson-1997'] } },
    };
    expect(crossing(hubbard, findCrop('zucchini'), false)).toMatchObject({
      verdict: 'seldom cross',
      shared: [],
    });
    expect(crossing(hubbard, findCrop('cucumber'), false).verdict).toBe('do not cross');
  });

  test('pollen spoils a parthenocarpic cucumber beside another cucumber, this year (Florida CV268)', () => {
    expect(cross('English cucumber', 'pickling cucumber').spoilsFruit).toBe(true);
    expect(cross('English cucumber', 'English cucumber').spoilsFruit).toBe(false);
    expect(cross('English cucumber', 'pumpkin').spoilsFruit).toBe(false);
    expect(cross('slicer', 'pickling cucumber').spoilsFruit).toBe(false);
  });

  test('bitter fruit is for saved seed of what may be Cucurbita pepo, whatever stands beside it', () => {
    expect(cross('zucchini', 'pumpkin', true).mayTurnBitter).toBe(true);
    expect(cross('cucumber', 'winter squash', true).mayTurnBitter).toBe(true);
    expect(cross('zucchini', 'pumpkin', false).mayTurnBitter).toBe(false);
    expect(cross('zucchini', 'pumpkin').mayTurnBitter).toBe(false);
    expect(cross('cucumber', 'muskmelon', true).mayTurnBitter).toBe(false);
  });

  test('symmetrical; every crop may cross with itself; saving seed changes no verdict', () => {
    const crop = fc.constantFrom(...cropNames);
    fc.assert(
      fc.property(crop, crop, fc.boolean(), (a, b, saving) => {
        const one = cross(a, b, saving);
        const other = cross(b, a, !saving);
        expect(other.verdict).toBe(one.verdict);
        expect([...other.shared].sort()).toEqual([...one.shared].sort());
        expect(other.spoilsFruit).toBe(one.spoilsFruit);
        expect(['cross', 'may cross', 'seedless']).toContain(cross(a, a).verdict);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test('the working ends in the verdict and names the default', () => {
    const { value, steps, assumptions } = recording((record) =>
      crossing(findCrop('zucchini'), findCrop('pumpkin'), undefined, record),
    );
    expect(value).toEqual(cross('zucchini', 'pumpkin'));
    expect(steps.at(-1)).toMatchObject({ step: 'crossing', result: value.verdict });
    expect(assumptions.map(({ assumed, value: given }) => [assumed, given])).toEqual([
      ['saving_seed', false],
    ]);
  });
});
