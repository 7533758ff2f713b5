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
