import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import type { FunctionDefinition } from '../../src/functions/define';
import { explainCall, sayInputs } from '../../src/functions/explain';
import { varyInputs } from '../../src/functions/varyInputs';

function definitionOf(id: string): FunctionDefinition {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  return definition;
}

const varied = (id: string, ...args: unknown[]): unknown =>
  varyInputs(definitionOf(id), args).map(({ name, effect, variations }) => ({
    name,
    effect,
    to: variations.map(({ given, step, answer }) => [
      given ?? step,
      'value' in answer ? answer.value : 'refused',
    ]),
  }));

describe('each input alone, the one that matters most first', () => {
  test('a measure by a tenth (43,560 sq ft an acre over row spacing times plant spacing, by hand)', () => {
    // 43,560 / (2 ft x 3 ft) = 7,260; with one of the two a tenth more 6,600, a tenth less 8,066.67.
    const changes = [
      [expect.closeTo(2.2, 9), expect.closeTo(6600, 6)],
      [expect.closeTo(1.8, 9), expect.closeTo(43560 / 5.4, 6)],
    ];
    expect(varied('PLANTS.DENSITY', 2, 36)).toEqual([
      { name: 'row_spacing', effect: expect.closeTo(43560 / 5.4 - 7260, 6), to: changes },
      {
        name: 'plant_spacing',
        effect: expect.closeTo(43560 / 5.4 - 7260, 6),
        to: [
          [expect.closeTo(39.6, 9), expect.closeTo(6600, 6)],
          [expect.closeTo(32.4, 9), expect.closeTo(43560 / 5.4, 6)],
        ],
      },
    ]);
  });

  test('a count by a whole tenth, a share by a tenth and no further than 1 (plants / germination, rounded up)', () => {
    // 100 / 0.95 = 105.3; 110 / 0.95 = 115.8; 90 / 0.95 = 94.7; 100 / 1; 100 / 0.855 = 116.96.
    expect(varied('SEED.NEEDED', 100, 0.95)).toEqual([
      {
        name: 'plants',
        effect: 11,
        to: [
          [110, 116],
          [90, 95],
        ],
      },
      {
        name: 'germination',
        effect: 11,
        to: [
          [1, 100],
          [expect.closeTo(0.855, 9), 117],
        ],
      },
      // Left out, it is 1: 100 / (0.95 x 0.9) = 116.96.
      { name: 'field_emergence', effect: 11, to: [[0.9, 117]] },
    ]);
  });

  test('a whole step of more than a tenth counts for what a tenth of it does', () => {
    // 3 / 0.5 = 6; a plant more is 33 % and needs 2 seeds more, of which a tenth is 0.6; 3 / 0.45 = 6.7, rounded up 7.
    const [first, ...others] = varyInputs(definitionOf('SEED.NEEDED'), [3, 0.5, 1]);
    expect([first?.name, first?.effect]).toEqual(['germination', 1]);
    const plants = others.find(({ name }) => name === 'plants');
    expect(plants?.effect).toBeCloseTo(0.6, 9);
    expect(plants?.variations.map(({ given, step, share }) => [given, step, share])).toEqual([
      [4, 1, expect.closeTo(1 / 3, 9)],
      [2, -1, expect.closeTo(-1 / 3, 9)],
    ]);
  });

  test('nobody weighs a tenth of a seed (176 seeds of 1,000 to the ounce, by hand)', () => {
    expect(varied('SEED.WEIGHT', 176, 1000)).toContainEqual({
      name: 'seeds',
      effect: expect.closeTo(0.0176, 9),
      to: [
        [194, 0.194],
        [158, 0.158],
      ],
    });
  });

  test('a year by one: a tenth of it means nothing', () => {
    // Packed in 2024 and kept for 5 years: at the start of 2027 2 are left.
    expect(varied('SEED.STORAGELEFT', 'cucumber', 2024, 2027)).toEqual([
      {
        name: 'year_packed',
        effect: 1,
        to: [
          [2025, 3],
          [2023, 1],
        ],
      },
      {
        name: 'year',
        effect: 1,
        to: [
          [2028, 1],
          [2026, 3],
        ],
      },
    ]);
  });

  test('a share that never reaches 1 goes half the way to it', () => {
    const [assurance] = varyInputs(definitionOf('SEED.NEEDED'), [100, 0.8, null, 0.95]).filter(
      ({ name }) => name === 'assurance',
    );
    expect(assurance?.variations.map(({ given }) => given)).toEqual([
      expect.closeTo(0.975, 9),
      expect.closeTo(0.855, 9),
    ]);
  });

  test('a count goes no lower than it may', () => {
    // One plant: a plant fewer is none.
    const plants = varyInputs(definitionOf('SEED.NEEDED'), [1, 0.5]).find(({ name }) => name === 'plants');
    expect(plants?.variations.map(({ given }) => given)).toEqual([2]);
  });

  test('a date by a week; what an answer is refused for stands first', () => {
    // Serials: 2 May 2026 is 46144, 10 October 46305: 161 days apart.
    expect(varied('SEASON.DAYS', 46144, 46305)).toEqual([
      {
        name: 'last_frost',
        effect: 7,
        to: [
          [46151, 154],
          [46137, 168],
        ],
      },
      {
        name: 'first_frost',
        effect: 7,
        to: [
          [46312, 168],
          [46298, 154],
        ],
      },
    ]);
    // Three days of season: a later last frost comes after the first one.
    const [first] = varyInputs(definitionOf('SEASON.DAYS'), [46144, 46147]);
    expect(first?.variations.map(({ answer }) => 'error' in answer)).toEqual([true, false]);
    expect(first?.effect).toBe(Infinity);
  });

  test('nothing of a refusal, nor where there is nothing to vary', () => {
    expect(varied('SEED.NEEDED', 'many', 0.8)).toEqual([]);
    expect(varied('CROP.LIST')).toEqual([]);
  });
});

describe('a range is one input', () => {
  test('temperatures by a degree, single ones too (mean of high and low less the base, by hand)', () => {
    // 52.5 - 50 and 70 - 50 make 22.5; a range a degree up half a degree more a day, the base a degree up one less.
    expect(varied('HEAT.SUM', [[65], [80]], [[40], [60]], 50)).toEqual([
      {
        name: 'base',
        effect: 2,
        to: [
          [51, 20.5],
          [49, 24.5],
        ],
      },
      {
        name: 'highs',
        effect: 1,
        to: [
          [1, 23.5],
          [-1, 21.5],
        ],
      },
      {
        name: 'lows',
        effect: 1,
        to: [
          [1, 23.5],
          [-1, 21.5],
        ],
      },
    ]);
  });

  test('a low does not go above its high', () => {
    const inputs = varyInputs(definitionOf('HEAT.SUM'), [[[65], [60]], [[40], [60]], 50]);
    const stepsOf = (name: string) =>
      inputs.find((input) => input.name === name)?.variations.map(({ step }) => step);
    expect([stepsOf('highs'), stepsOf('lows')]).toEqual([[1], [-1]]);
    const day = varyInputs(definitionOf('HEAT.DAY'), [60, 60, 50]);
    expect(day.find(({ name }) => name === 'low')?.variations.map(({ given }) => given)).toEqual([59]);
  });

  test('frosts by a week, words among them stay; the answer moves along (by hand)', () => {
    // The middle one of 1, 2 and 3 May is 2 May 2026, serial 46144.
    const frosts = [[45413], ['none'], [45779], [46145]];
    const inputs = varyInputs(definitionOf('FROST.SPRINGDATE'), [frosts, 0.375, 2026]);
    const moved = inputs.find(({ name }) => name === 'last_dates');
    expect(moved?.variations.map(({ step, answer }) => [step, answer])).toEqual([
      [7, { value: 46151 }],
      [-7, { value: 46137 }],
    ]);
  });

  test('pack sizes by a tenth in whole seeds, prices by a tenth; packs of another crop are left out of it', () => {
    // One pack of 100 costs 3.50 and is enough for 95 seeds; of 90 seeds it takes two.
    const effects = varied(
      'SEED.PACKCOST',
      95,
      'cucumber',
      [['cucumber'], ['gourd']],
      [[100], ['a few']],
      [[3.5], [2]],
    );
    const prices = [
      [0.1, expect.closeTo(3.85, 9)],
      [-0.1, expect.closeTo(3.15, 9)],
    ];
    expect(effects).toContainEqual({ name: 'pack_prices', effect: expect.closeTo(0.35, 9), to: prices });
    expect(effects).toContainEqual({
      name: 'pack_sizes',
      effect: 3.5,
      to: [
        [0.1, 3.5],
        [-0.1, 7],
      ],
    });
  });

  test('past years by one; one that is not past any more is refused', () => {
    expect(varied('ROTATION.YEARS', 2026, [[2023], [2020]])).toContainEqual({
      name: 'past_years',
      effect: 1,
      to: [
        [1, 1],
        [-1, 3],
      ],
    });
  });

  test('a blank one has nothing to vary', () => {
    expect(varied('ROTATION.YEARS', 2026, [[null], ['']])).toEqual([
      {
        name: 'year',
        effect: 0,
        to: [
          [2027, expect.any(String)],
          [2025, expect.any(String)],
        ],
      },
    ]);
  });

  test('of a daily record the temperatures are varied, its dates are not', () => {
    const record = [[46144], [46145], [46146], [46147]];
    const highs = [[80], [82], [85], [81]];
    const lows = [[55], [56], [60], [58]];
    const found = ['HEAT.DATE', 'HEAT.DATES', 'HEAT.YEARS', 'HEAT.SUCCESSION'].map((id) => {
      const rest =
        id === 'HEAT.YEARS'
          ? [46144, 3, 50]
          : id === 'HEAT.SUCCESSION'
            ? [46144, 46147, 20, 50]
            : [46144, 40, 50];
      return varyInputs(definitionOf(id), [record, highs, lows, ...rest])
        .map(({ name }) => name)
        .sort();
    });
    expect(found[0]).toEqual(['base', 'highs', 'lows', 'start', 'target']);
    expect(found[1]).toEqual(['base', 'highs', 'lows', 'start', 'target']);
    expect(found[2]).toEqual(['base', 'days', 'highs', 'lows', 'start']);
    expect(found[3]).toEqual(['base', 'first', 'heat_between', 'highs', 'last', 'lows']);
  });
});

describe('a call in words', () => {
  test('steps, answer, unit and effects', () => {
    const working = explainCall(definitionOf('PLANTS.DENSITY'), [2, 36]);
    expect(working.lines.map(({ title, result }) => [title, result])).toEqual([
      ['area per plant', '6'],
      ['plants per acre or hectare', '7260'],
      [expect.stringContaining('Farm and Garden Rule-Book'), ''],
    ]);
    expect(working).toMatchObject({ result: '7260', unit: 'per acre', isRefused: false });
    expect(working.effects[0]).toMatchObject({
      name: 'row spacing',
      matters: true,
      changes: [
        { given: '2.2', step: '+10%', answer: '6600' },
        { given: '1.8', step: '-10%', answer: '8066.67' },
      ],
    });
  });

  test('dates are dates, in what was put in, what comes out and what it may become', () => {
    // Set out 14 days after the last frost, a default of the function.
    const setOut = definitionOf('DATE.SETOUT');
    expect(sayInputs(setOut, [46144, undefined])).toEqual(['2026-05-02', '']);
    const { result, unit, effects } = explainCall(setOut, [46144]);
    expect([result, unit]).toEqual(['2026-05-16', '']);
    expect(effects.map(({ name }) => name)).toEqual(['last frost', 'number of days after the last frost']);
    expect(effects[0]?.changes).toMatchObject([
      { given: '2026-05-09', step: '+7 days', answer: '2026-05-23' },
      { given: '2026-04-25', step: '-7 days', answer: '2026-05-09' },
    ]);
    // The function takes parts of a day, but whole days are varied by whole ones: a tenth of 14 is 1.4.
    expect(effects[1]?.changes.map(({ given, step }) => [given, step])).toEqual([
      ['15', '+1, +7.1%'],
      ['13', '-1, -7.1%'],
    ]);
  });

  test('what has no number to vary, and what is not varied beside what is', () => {
    expect(explainCall(definitionOf('CROP.LIST'), [])).toMatchObject({ effects: [], notVaried: [] });
    expect(explainCall(definitionOf('CROP.NAME'), ['zucchini'])).toMatchObject({
      effects: [],
      notVaried: [{ name: 'crop', why: 'word' }],
    });
    expect(explainCall(definitionOf('PLANTS.DENSITY'), [2, 36]).notVaried).toEqual([]);
    const args = [[[46144]], [[80]], [[60]], 46144, 20, 50, undefined, 'mean'];
    expect(explainCall(definitionOf('HEAT.DATE'), args).notVaried).toEqual([
      { name: 'range of dates', why: 'dayOfRecord' },
      { name: 'method', why: 'word' },
    ]);
  });

  test('of a range each number at once', () => {
    const saidOf = (id: string, args: readonly unknown[], name: string): unknown =>
      explainCall(definitionOf(id), args)
        .effects.find((effect) => effect.name === name)
        ?.changes.map(({ given, step, answer }) => [given, step, answer]);
    expect(saidOf('HEAT.SUM', [[[65], [80]], [[40], [60]], 50], 'range of highs')).toEqual([
      ['', 'each +1°', '23.5'],
      ['', 'each -1°', '21.5'],
    ]);
    // A pack of 100 is 3.50, of 90 seeds it takes two.
    const packs = [95, [[100]], [[3.5]]];
    expect(saidOf('SEED.PACKS', packs, 'range of pack sizes')).toEqual([
      ['', 'each +10%, to a whole number', 'in row 1 of 2 110; 1; 3.5 in place of 100; 1; 3.5'],
      ['', 'each -10%, to a whole number', 'in row 2 of 2 total; 2; 7 in place of total; 1; 3.5'],
    ]);
  });

  test('an answer that is a list: a row whole, else the last row that changes, or how many rows there are', () => {
    const changesOf = (id: string, args: readonly unknown[], name: string): unknown =>
      explainCall(definitionOf(id), args)
        .effects.find((effect) => effect.name === name)
        ?.changes.map(({ answer }) => answer);
    // 27 lb: 13 and 9 quarts; a tenth more, 29.7 lb: 14 and 9; less, 24.3 lb: 12 and 8 (2 and 3 lb a quart).
    expect(changesOf('PICKLE.JARS', [27], 'weight of the fruit')).toEqual(['14; 9', '12; 8']);
    // 9 and 23 May and 6 June; every 15 days 9 and 24 May and 8 June; every 13 one more, 17 June.
    const args = [46151, 46190, 14];
    expect(changesOf('DATE.SUCCESSION', args, 'number of days between')).toEqual([
      'in row 3 of 3 2026-06-08 in place of 2026-06-06',
      '4 rows in place of 3, the last 2026-06-17',
    ]);
  });

  test('a row is not announced as a list', () => {
    expect(explainCall(definitionOf('PICKLE.JARS'), [27]).isList).toBe(false);
    expect(explainCall(definitionOf('DATE.SUCCESSION'), [46151, 46190, 14]).isList).toBe(true);
  });

  test('dates in a column of a list are dates', () => {
    const { result, effects } = explainCall(definitionOf('HEAT.DATES'), [
      [[46144], [46145], [46146]],
      [[80], [80], [80]],
      [[60], [60], [60]],
      46144,
      40,
      50,
    ]);
    // 20 degree days a day: 40 on the second, 3 May; 44 on the third.
    expect(result).toBe('2026; 2026-05-03; 1');
    expect(effects.find(({ name }) => name === 'heat wanted')?.changes[0]?.answer).toBe(
      '2026; 2026-05-04; 2',
    );
  });

  test('a list is told by its values, a long one by the first of them and its size', () => {
    // USDA AIB 539: 14 lb fill 7 quarts, 21 at the cautious end. By hand: 27 / 2 = 13.5 and 27 / 3 = 9, whole jars.
    expect(explainCall(definitionOf('PICKLE.JARS'), [27])).toMatchObject({
      result: '13; 9',
      firstOfRow: '13',
    });
    const { result, firstOfRow } = explainCall(definitionOf('CROP.LIST'), []);
    expect(result).toMatch(/^([^;]+; ){11}[^;]+ … \(the first of \d+ rows by 1 column\)$/);
    expect(firstOfRow).toBeNull();
  });

  test('a refusal is the answer, with the steps before it', () => {
    expect(explainCall(definitionOf('SEED.NEEDED'), [100, 85])).toMatchObject({
      isRefused: true,
      result: expect.stringContaining('85%'),
      effects: [],
    });
  });

  test('a range is told by its size, an error by its code, a word as it is', () => {
    const isolate = definitionOf('FLOWER.ISOLATE');
    const column = [['gourd'], ['pumpkin']];
    expect(sayInputs(isolate, ['gourd', { error: '#N/A', message: null }, column, [['one']], true])).toEqual([
      'gourd',
      '#N/A',
      '2 rows by 1 column',
      'one',
      'yes',
    ]);
  });
});

test('no function throws when its working is asked for without any input', () => {
  for (const definition of functions.values()) {
    const { isRefused, effects } = explainCall(definition, []);
    expect(isRefused && effects.length > 0, definition.id).toBe(false);
  }
});
