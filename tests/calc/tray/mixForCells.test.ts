import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mixForCells } from '../../../src/calc/tray/mixForCells';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('72 cells of 4.38 cu in: 0.1825 cu ft; 50 of 70 ml: 3.5 litres (hand computed: 315.36 / 1,728; 3,500 / 1,000)', () => {
  expect(mixForCells(72, 4.38, us)).toBeCloseTo(0.1825, 12);
  expect(mixForCells(50, 70, metric)).toBe(3.5);
});

test('both systems fill the same cells: 28.316846592 litres a cu ft, 16.387064 ml a cu in (NIST Handbook 44)', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e5 }), fc.integer({ min: 1, max: 1e4 }), (cells, hundredths) => {
      const cubicInches = hundredths / 100;
      const litres = mixForCells(cells, cubicInches * 16.387064, metric);
      expect(litres / (mixForCells(cells, cubicInches, us) * 28.316846592)).toBeCloseTo(1, 12);
    }),
    seeded,
  );
});

test('refusals name the argument and its unit', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => mixForCells(bad, 4, us))).toMatchObject({ code: 'outOfRange', name: 'cells' });
    expect(refusalOf(() => mixForCells(72, bad, us))).toMatchObject({ name: 'cell_volume', unit: 'cuIn' });
    expect(refusalOf(() => mixForCells(72, bad, metric))).toMatchObject({ unit: 'ml' });
  }
  expect(refusalOf(() => mixForCells(7.5, 4, us))).toMatchObject({ code: 'notWhole' });
});

test('the working has the one step and says that mix settles', () => {
  const { value, steps, remarks } = recording((record) => mixForCells(72, 4.38, us, record));
  expect(steps).toEqual([
    {
      step: 'mixForCells',
      inputs: { cells: 72, cell_volume: 4.38, cellVolumePerMixVolume: 1728 },
      result: value,
      unit: 'cuFt',
    },
  ]);
  expect(remarks).toEqual(['mixSettles']);
});
