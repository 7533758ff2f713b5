/** What a picture is drawn from, against the worksheet functions of the same cells. */
import { describe, expect, test } from 'vitest';
import { plotPlaces, type PlotAsked } from '../../src/functions/plotPlaces';
import { run } from './run';

const valueOf = (asked: PlotAsked) => {
  const answer = plotPlaces(asked);
  if ('wrong' in answer) throw new Error(answer.wrong);
  return answer.value;
};
const rows: PlotAsked = {
  layout: 'rows',
  units: 'us',
  cells: { length: 100, width: 20, row_spacing: 5, plant_spacing: 12 },
  pollenizers: 100,
};

test('rows: the number of the function, and the ground as it was typed', () => {
  const found = valueOf(rows);
  expect(found).toMatchObject({ plants: run('PLANTS.INROWS', 100, 20, 5, 12), length: 100, width: 20 });
  expect(found.rows.map(({ across }) => across)).toEqual([2.5, 7.5, 12.5, 17.5]);
  expect(found.spread).toHaveLength(100);
});

test('hills, in metres, with a row spacing and without', () => {
  const cells = { length: 18, width: 8, hill_spacing: 1.8, plants_per_hill: 3 };
  const found = valueOf({ layout: 'hills', units: 'metric', cells, pollenizers: 0 });
  expect(found.plants).toBe(run('PLANTS.INHILLS', 18, 8, 1.8, 3, null, null, 'metric'));
  const apart = valueOf({
    layout: 'hills',
    units: 'metric',
    cells: { ...cells, row_spacing: 2.5 },
    pollenizers: 0,
  });
  expect(apart.plants).toBe(run('PLANTS.INHILLS', 18, 8, 1.8, 3, null, 2.5, 'metric'));
  expect(apart.rows.map(({ across }) => across)).toEqual([1.25, 3.75, 6.25]);
});

test('beds, a number typed as text too', () => {
  const cells = { length: '60', width: 16, bed_width: 4, path_width: 0, rows_per_bed: 2, plant_spacing: 24 };
  const found = valueOf({ layout: 'beds', units: 'us', cells, pollenizers: 12 });
  expect(found.plants).toBe(run('PLANTS.INBEDS', 60, 16, 4, 0, 2, 24));
  expect(found.layout).toMatchObject({ kind: 'beds', bedWidth: 4, rowsPerBed: 2 });
});

test('up to 10,000 plants are told one by one (judgement)', () => {
  const of = (length: number) => valueOf({ ...rows, cells: { ...rows.cells, length }, pollenizers: 3 });
  expect([of(2500).plants, of(2500).spread?.length]).toEqual([10_000, 3]);
  expect([of(2501).plants, of(2501).spread]).toEqual([10_004, null]);
  // A hill of more plants than there is memory.
  const crowded = { length: 10, width: 10, hill_spacing: 5, plants_per_hill: 1e12 };
  expect(valueOf({ layout: 'hills', units: 'us', cells: crowded, pollenizers: 0 })).toMatchObject({
    plants: 4e12,
    layout: { hill: null },
  });
});

describe('what the functions refuse is refused in their words', () => {
  test.each([
    ['PLANTS.INROWS', [100, 4, 5, 12], { ...rows, cells: { ...rows.cells, width: 4 } }],
    ['PLANTS.INROWS', ['', 20, 5, 12], { ...rows, cells: { ...rows.cells, length: null } }],
    ['PLANTS.INROWS', [100, 20, 'wide', 12], { ...rows, cells: { ...rows.cells, row_spacing: 'wide' } }],
  ] as const)('%s %j', (id, args, asked) => {
    const answer = plotPlaces(asked);
    expect('wrong' in answer ? `#VALUE! ${answer.wrong}` : answer).toBe(run(id, ...args));
  });

  test('more pollenizers than plants, and more rows than a picture shows', () => {
    expect(plotPlaces({ ...rows, pollenizers: 401 })).toEqual({
      wrong: expect.stringContaining('at most 400 plants'),
    });
    const many = { ...rows.cells, width: 1_000_000, row_spacing: 0.001 };
    expect(plotPlaces({ ...rows, cells: many })).toEqual({
      wrong: expect.stringContaining('a picture shows at most 1000'),
    });
  });
});
