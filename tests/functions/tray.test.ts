import { expect, test } from 'vitest';
import { leftOut, run } from './run';

test('TRAY.CELLS: 124 and 131 cells, 108 and 111 with two seeds (computed in cellsNeeded.test)', () => {
  for (const nothing of leftOut) {
    expect(run('TRAY.CELLS', 100, 0.85, 1, 0.05, nothing)).toBe(124);
    expect(run('TRAY.CELLS', 100, 0.85, nothing, nothing, nothing)).toBe(118);
  }
  expect(run('TRAY.CELLS', 100, 0.85, 1, 0.05, 0.9)).toBe(131);
  expect(run('TRAY.CELLS', [['100']], '85%', 2, '5%')).toBe(108);
  expect(run('TRAY.CELLS', { type: 'Double', basicValue: 100 }, 0.85, 2, 0.05, '90 %')).toBe(111);
});

test('refusals say what to do', () => {
  expect(run('TRAY.CELLS', 100, 0.85, 0)).toBe(
    '#VALUE! The number of seeds per cell is 0. It must be at least 1 seed.',
  );
  expect(run('TRAY.CELLS', 100, 0.85, 1, 1)).toBe(
    '#VALUE! The share of culls is 1. It must be at least 0 and below 1.',
  );
  expect(run('TRAY.CELLS', 100, 0.85, 1, 5)).toMatch(/write 5 percent as 5%/);
  expect(run('TRAY.CELLS', 'tray', 0.85)).toMatch(/not a number\. Type digits/);
  expect(run('TRAY.CELLS', 100, { error: '#N/A' })).toMatch(/Mend that cell first/);
  expect(run('TRAY.CELLS', [[1, 2]], 0.85)).toMatch(/Give one cell/);
  expect(run('TRAY.CELLS', 100)).toBe('#VALUE! The germination is missing. Fill it in.');
});

test('TRAY.COUNT: 131 cells in trays of 72 are 2 (hand computed)', () => {
  expect(run('TRAY.COUNT', 131, 72)).toBe(2);
  expect(run('TRAY.COUNT', [['144']], { type: 'Double', basicValue: 72 })).toBe(2);
  expect(run('TRAY.COUNT', 131)).toBe('#VALUE! The number of cells per tray is missing. Fill it in.');
  expect(run('TRAY.COUNT', 131, 7.2)).toMatch(/cells per tray is 7\.2\. Give a whole number/);
  expect(run('TRAY.COUNT', 0, 72)).toBe('#VALUE! The number of cells is 0. It must be at least 1 cell.');
});

test('TRAY.MIX: 72 cells of 4.38 cu in are 0.1825 cu ft, 50 of 70 ml are 3.5 litres (hand computed)', () => {
  for (const nothing of leftOut) expect(run('TRAY.MIX', 72, 4.38, nothing)).toBeCloseTo(0.1825, 12);
  expect(run('TRAY.MIX', 50, '70', 'Metric')).toBe(3.5);
  expect(run('TRAY.MIX', 72, -1)).toBe('#VALUE! The cell volume is -1. It must be above 0 cu in.');
  expect(run('TRAY.MIX', 72, { error: '#REF!' })).toMatch(/Mend that cell first/);
});
