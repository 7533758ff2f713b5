import { expect, test } from 'vitest';
import { areaOfReference, isDeadReference } from '../../../src/hosts/excel/areaOfReference';

test.each([
  ['=Season!$B$4', { sheet: 'Season', row: 3, column: 1, rows: 1, columns: 1 }],
  ["='My season'!$AB$10", { sheet: 'My season', row: 9, column: 27, rows: 1, columns: 1 }],
  ["='Joe''s 2nd & last'!$A$1:$C$2", { sheet: "Joe's 2nd & last", row: 0, column: 0, rows: 2, columns: 3 }],
  ['=Čočka!$A$1', { sheet: 'Čočka', row: 0, column: 0, rows: 1, columns: 1 }],
  ['=#REF!$B$4', null],
  ['=#REF!', null],
  ['="plots 1"', null],
  ['=SUM(Season!$B$4)', null],
  ['=0.5', null],
])('%s', (formula, area) => {
  expect(areaOfReference(formula)).toEqual(area);
});

/** What Excel leaves of a name whose sheet, row or column was deleted: general knowledge, not tried. */
test.each([
  ['=#REF!$B$4', true],
  ['=#REF!#REF!', true],
  ['=#REF!', true],
  ["='My season'!#REF!", true],
  ['=Season!#REF!', true],
  ['=Season!$B$4', false],
  ['=#REF!+1', false],
  ['=SUM(#REF!)', false],
  ['="#REF!"', false],
])('%s is dead: %s', (formula, isDead) => {
  expect(isDeadReference(formula)).toBe(isDead);
});
