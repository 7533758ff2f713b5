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
    to: variations.map(({ given, answer }) => [given, 'value' in answer ? answer.value : 'refused']),
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

  test('a count by one, a share by a tenth and no further than 1 (on average plants / germination, rounded up)', () => {
    // 100 / 0.95 = 105.3; 101 / 0.95 = 106.3; 99 / 0.95 = 104.2; 100 / 1; 100 / 0.855 = 116.96.
    expect(varied('SEED.NEEDED', 100, 0.95)).toEqual([
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
      {
        name: 'plants',
        effect: 1,
        to: [
          [101, 107],
          [99, 105],
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
    expect(first?.variations.map(({ answer }) => 'refused' in answer)).toEqual([true, false]);
    expect(first?.effect).toBe(Infinity);
  });

  test('nothing of a refusal nor of a list', () => {
    expect(varied('SEED.NEEDED', 'many', 0.8)).toEqual([]);
    expect(varied('CROP.LIST')).toEqual([]);
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
    expect(working.effects[0]).toEqual({
      name: 'row spacing',
      matters: true,
      changes: [
        { given: '2.2', answer: '6600' },
        { given: '1.8', answer: '8066.67' },
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
    expect(effects[0]?.changes).toEqual([
      { given: '2026-05-09', answer: '2026-05-23' },
      { given: '2026-04-25', answer: '2026-05-09' },
    ]);
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
