/** The functions of what fits and of seed, through the cells: values, what may be left out, and what is refused. */
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';

const run = (id: string, ...args: unknown[]) => functions.get(id)?.run(args);

describe('values', () => {
  // Checks of the project's function list: published, or computed twice; the calculations' own tests say which.
  test.each([
    ['PLANTS.DENSITY', [2, 36], 7260],
    ['PLANTS.DENSITY', [5, 12], 8712],
    ['PLANTS.INROWS', [30, 4, 5, 12, 'onedge'], 31],
    ['PLANTS.INROWS', [1.2, 0.2, 0.2, 20, null, 'metric'], 6],
    ['PLANTS.INHILLS', [60, 26, 6, 1, 'staggered'], 38],
    ['PLANTS.INHILLS', [60, 40, 6, 1, 'staggered'], 67],
    ['PLANTS.INHILLS', [96, 48, 3, 1, 'square', 8], 192],
    ['PLANTS.INBEDS', [100, 40, 4, 2, 2, 12], 1400],
    ['PLANTS.INAREA', [660, 5, 12], 132],
    ['PLANTS.INAREA', [0.6, 1, 20, 'metric'], 3],
    ['PLANTS.FORYIELD', ['100', [[2.5]]], 40],
    ['SEED.NEEDED', [100, 0.8], 125],
    ['SEED.NEEDED', [100, 0.8, 0.9], 139],
    ['SEED.NEEDED', [21, 0.7], 30],
    ['SEED.NEEDED', [56, 0.7, 0.8], 100],
    ['SEED.NEEDED', [100, 0.8, null, 0.95], 135],
    ['SEED.NEEDED', [100, 0.8, null, 0.99], 139],
    ['SEED.NEEDED', [100, 0.8, 0.9, 0.95], 151],
    ['SEED.NEEDED', [100, 0.8, null, 0.95, 400], 136],
    ['SEED.NEEDED', [100, 0.8, null, 0.95, 50], 147],
    ['SEED.NEEDED', [100, 0.8, null, 0.95, 10], 184],
    ['SEED.NEEDED', [100, 0.8, 0.9, 0.95, 400], 153],
    ['SEED.PERHILL', [3, 0.8, null, 0.95], 6],
    ['SEED.WEIGHT', [500, 1000], 0.5],
    ['TRAY.CELLS', [100, 0.85, 1, 0.05], 124],
    ['TRAY.CELLS', [100, 0.85, 1, 0.05, 0.9], 131],
    ['TRAY.CELLS', [100, 0.85, 2, 0.05], 108],
    ['TRAY.CELLS', [100, 0.85, 2, 0.05, 0.9], 111],
  ] as const)('%s(%j) is %d', (id, args, value) => {
    expect(run(id, ...args)).toEqual({ value });
  });

  test.each([
    ['PLANTS.INROWS', [100, 20, 5, 12]],
    ['PLANTS.INHILLS', [60, 26, 6, 3]],
    ['PLANTS.INAREA', [660, 5, 12]],
    ['SEED.NEEDED', [100, 0.8]],
    ['TRAY.CELLS', [100, 0.85]],
  ] as const)('%s(%j): null, an empty text and nothing at all are the same', (id, args) => {
    const parameters = functions.get(id)?.parameters.slice(args.length) ?? [];
    const bare = run(id, ...args);
    expect(bare).toHaveProperty('value');
    expect(run(id, ...args, ...parameters.map(() => null))).toEqual(bare);
    expect(run(id, ...args, ...parameters.map(() => ''))).toEqual(bare);
    expect(run(id, ...args, ...parameters.map(() => undefined))).toEqual(bare);
  });

  test('a text that is a number, a range of one cell and a rich value are that number', () => {
    expect(run('SEED.NEEDED', '100', [['80%']], { type: 'Double', basicValue: 0.9 })).toEqual({ value: 139 });
  });
});

describe('refusals say what is wrong and what to do', () => {
  test.each([
    ['PLANTS.DENSITY', [2, 36, 5, 6], 'PLANTS.DENSITY takes 3 arguments. Leave the others out.'],
    ['PLANTS.DENSITY', [2, 36, null, null], 'PLANTS.DENSITY takes 3 arguments'],
    ['PLANTS.DENSITY', [0, 36], 'The row spacing is 0. It must be above 0 ft.'],
    ['PLANTS.INROWS', [30, 4, 5, 12], 'onedge'],
    ['PLANTS.INROWS', [30, 10, -5, 12], 'above 0 ft'],
    ['PLANTS.INROWS', [1e300, 10, 5, 12], 'It must be at most 1000000 ft.'],
    ['PLANTS.INROWS', [30, 1e7, 5, 12, null, 'metric'], 'at most 1000000 m.'],
    ['PLANTS.INHILLS', [1e300, 40, 6, 3], 'at most 1000000 ft.'],
    ['PLANTS.INBEDS', [100, 1e300, 4, 2, 2, 12], 'at most 1000000 ft.'],
    [
      'PLANTS.INBEDS',
      [100, 40, 4, 2, 20, 12],
      '20 rows in a bed of 4 ft stand 2.4 in apart. Give fewer rows, so that they are at least 4 in apart, or check the width of the bed.',
    ],
    ['PLANTS.INROWS', [1, 10, 5, 24], 'No plant fits'],
    ['PLANTS.INHILLS', [5, 5, 72, 3], 'No hill fits'],
    ['PLANTS.INAREA', [2, 5, 12], 'the area is 2 sq ft and each plant needs 5 sq ft'],
    ['PLANTS.INAREA', [0.2, 1, 50, 'metric'], '1 ha is 10000 sq m'],
    ['PLANTS.FORYIELD', [0, 2], 'The yield wanted is 0. It must be above 0.'],
    ['PLANTS.FORYIELD', [100, null], 'yield per plant is missing'],
    ['SEED.NEEDED', [100, 85], 'write 85 percent as 85%'],
    ['SEED.NEEDED', [100, 'many'], 'not a number'],
    ['SEED.NEEDED', [1.5, 0.8], 'whole number'],
    ['SEED.NEEDED', [100, 0.8, null, null, 400], 'Give an assurance'],
    ['SEED.NEEDED', [null, 0.8], 'missing'],
    ['SEED.NEEDED', [[[1, 2]], 0.8], 'Give one cell'],
    ['SEED.NEEDED', [{ error: '#N/A', message: null }, 0.8], 'Mend that cell first'],
  ] as const)('%s(%j)', (id, args, advice) => {
    expect(run(id, ...args)).toEqual({ error: '#VALUE!', message: expect.stringContaining(advice) });
  });
});
