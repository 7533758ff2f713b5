import { expect, test } from 'vitest';
import { cropNames } from '../../src/reference/crops';
import { practice } from '../../src/reference/practice';
import { sources, unsourcedGrounds } from '../../src/reference/sources';
import { taskDays } from '../../src/reference/tasks';

test('3 and 6 weeks for pumpkins and winter squash (North Carolina HIL-24); thinned after the first true leaf', () => {
  expect(taskDays.sideDressingOfPumpkins.days).toEqual([3 * 7, 6 * 7]);
  expect(taskDays.thinning.from).toBe(practice.firstTrueLeaf.high * 7);
});

test('crops are of the reference; every task has its ground; all is frozen', () => {
  for (const crop of taskDays.sideDressingOfPumpkins.crops) expect(cropNames).toContain(crop);
  const known = new Set<string>([...Object.keys(sources), ...unsourcedGrounds]);
  for (const task of Object.values(taskDays)) {
    expect(known).toContain(task.ground);
    expect(Object.isFrozen(task)).toBe(true);
  }
  expect(Object.isFrozen(taskDays)).toBe(true);
  expect(Object.isFrozen(taskDays.sideDressingOfPumpkins.days)).toBe(true);
});
