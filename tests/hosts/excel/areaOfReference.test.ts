import { expect, test } from 'vitest';
import { areaOfReference } from '../../../src/hosts/excel/areaOfReference';

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
