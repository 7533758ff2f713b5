import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cropNamed } from '../../../src/calc/crops/cropNamed';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { isolationVerdict } from '../../../src/calc/flowers/isolationVerdict';
import { cropNames, flowerTypes } from '../../../src/reference/crops';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const english = findCrop('English cucumber');
const triploid = findCrop('triploid watermelon');
const none = (names: readonly unknown[]): null[] => names.map(() => null);

describe('isolationVerdict', () => {
  test.each([
    [['English cucumber', 'pickling cucumber'], 'pollen on the sheet'],
    [['English cucumber', 'Slicer'], 'pollen on the sheet'],
    [['English cucumber', 'zucchini', 'muskmelon', 'pumpkin', 'watermelon'], 'pollen next door'],
    [['English cucumber', null, 'no such crop'], 'pollen next door'],
    [['English cucumber', 'greenhouse cucumber'], 'pollen next door'],
  ] as const)(
    'parthenocarpic cucumber among %j: %s (Florida CV268: keep cucumber pollen out)',
    (names, verdict) => {
      expect(isolationVerdict(english, undefined, names, none(names), undefined)).toBe(verdict);
      expect(isolationVerdict(english, undefined, names, none(names), true)).toBe('clear');
    },
  );

  test('the flower types of the range count: a parthenocarpic slicer gives no pollen, a gynoecious lot does', () => {
    const names = ['English cucumber', 'cucumber'];
    expect(isolationVerdict(english, undefined, names, [null, 'parthenocarpic'], false)).toBe(
      'pollen next door',
    );
    expect(isolationVerdict(english, undefined, names, [null, 'gynoecious'], false)).toBe(
      'pollen on the sheet',
    );
  });

  test.each([
    [['seedless watermelon', 'English cucumber', 'muskmelon'], 'no pollenizer'],
    [['seedless watermelon', 'triploid watermelon'], 'no pollenizer'],
    [['seedless watermelon', 'watermelon'], 'clear'],
    [['seedless watermelon', ' SEEDED watermelon '], 'clear'],
  ] as const)('triploid watermelon among %j: %s (Delaware, Johnson)', (names, verdict) => {
    expect(isolationVerdict(triploid, undefined, names, none(names), false)).toBe(verdict);
  });

  test('a screen brings no pollen; a watermelon typed as triploid is one, in its own line and in the range', () => {
    expect(isolationVerdict(triploid, undefined, ['triploid watermelon'], [null], true)).toBe(
      'no pollenizer',
    );
    const watermelon = findCrop('watermelon');
    expect(isolationVerdict(watermelon, 'triploid', ['watermelon'], ['triploid'], false)).toBe(
      'no pollenizer',
    );
    expect(isolationVerdict(triploid, 'monoecious', ['seedless watermelon'], ['monoecious'], false)).toBe(
      'no pollenizer',
    );
  });

  test('everything else is clear, parthenocarpic squash too', () => {
    const names = [...cropNames];
    for (const name of names.filter((one) => one !== english.name)) {
      expect(isolationVerdict(findCrop(name), undefined, names, none(names), false)).toBe('clear');
    }
    expect(isolationVerdict(findCrop('zucchini'), 'parthenocarpic', names, none(names), false)).toBe('clear');
    expect(isolationVerdict(findCrop('pumpkin'), undefined, [], [], undefined)).toBe('clear');
  });

  test('ranges of unequal length are refused', () => {
    expect(refusalOf(() => isolationVerdict(english, undefined, ['cucumber'], [], false))).toEqual({
      code: 'unequalLists',
      name: 'all_crops',
      count: 1,
      otherName: 'all_flower_types',
      otherCount: 0,
    });
  });

  test('agrees with a plain restatement of the rule; order does not matter; nothing given is changed', () => {
    const line = fc.record({
      name: fc.option(fc.constantFrom(...cropNames, 'no such crop')),
      type: fc.option(fc.constantFrom(...flowerTypes)),
    });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
        const names = lines.map(({ name }) => name);
        const types = lines.map(({ type }) => type);
        const before = JSON.stringify([names, types]);
        const hasPollen = lines.some(
          ({ name, type }) =>
            name !== null &&
            cropNamed(name)?.figures.species?.text === 'Cucumis sativus' &&
            (type ?? (name === 'English cucumber' ? 'parthenocarpic' : 'monoecious')) !== 'parthenocarpic',
        );
        const hasSeeded = lines.some(({ name, type }) => name === 'watermelon' && type !== 'triploid');
        const verdicts = [english, triploid].map((crop) =>
          isolationVerdict(crop, undefined, names, types, false),
        );
        expect(verdicts).toEqual([
          hasPollen ? 'pollen on the sheet' : 'pollen next door',
          hasSeeded ? 'clear' : 'no pollenizer',
        ]);
        expect(isolationVerdict(english, undefined, [...names].reverse(), [...types].reverse(), false)).toBe(
          verdicts[0],
        );
        expect(JSON.stringify([names, types])).toBe(before);
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });

  test('a table of 1,000 lines is read once for all its verdicts', () => {
    const names = Array.from({ length: 1000 }, (_, i) => cropNames[i % cropNames.length] ?? null);
    let reads = 0;
    const counted = new Proxy(names, {
      get(target, key, receiver) {
        if (typeof key === 'string' && /^\d+$/.test(key)) reads += 1;
        return Reflect.get(target, key, receiver) as unknown;
      },
    });
    const types = none(names);
    for (let line = 0; line < 1000; line++) {
      expect(isolationVerdict(english, undefined, counted, types, false)).toBe('pollen on the sheet');
      expect(isolationVerdict(triploid, undefined, counted, types, false)).toBe('clear');
    }
    expect(reads).toBe(1000);
    // Other flower types are other lists.
    const shut = names.map(() => 'parthenocarpic');
    expect(isolationVerdict(english, undefined, counted, shut, false)).toBe('pollen next door');
    expect(isolationVerdict(english, undefined, counted, types, false)).toBe('pollen on the sheet');
    expect(reads).toBe(2000);
  });

  test('working: the last step is the verdict, counts are noted, recording changes nothing', () => {
    const names = ['English cucumber', 'cucumber', 'bush cucumber'];
    const { value, steps, assumptions, remarks } = recording((record) =>
      isolationVerdict(english, undefined, names, none(names), undefined, record),
    );
    expect(steps.map(({ result }) => result)).toEqual([2, value]);
    expect(value).toBe(isolationVerdict(english, undefined, names, none(names), undefined));
    expect(assumptions.map(({ assumed }) => assumed)).toEqual(['screened']);
    expect(remarks).toEqual(['neighborsUnknown']);
  });
});
