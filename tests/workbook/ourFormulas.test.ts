import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { functionNamespace } from '../../src/templates/sheets';
import { enteredAgain, ourFormulas } from '../../src/workbook/ourFormulas';

describe('a formula that uses our functions', () => {
  test.each([
    ['=CUCURBIT.SEED.NEEDED(100,0.8)', '=CUCURBIT.SEED.NEEDED(100,0.8)'],
    ['=cucurbit.seed.needed(100,0.8)', '=CUCURBIT.seed.needed(100,0.8)'],
    // How Excel keeps it without the add-in: reported in public threads, never seen by us.
    ['=_xldudf_CUCURBIT_SEED_NEEDED(100,0.8)', '=CUCURBIT.SEED.NEEDED(100,0.8)'],
    ['=[2]!_xldudf_CUCURBIT_SEED_NEEDED(100,0.8)', '=CUCURBIT.SEED.NEEDED(100,0.8)'],
    ['=_xldudf_CUCURBIT.SEED.NEEDED(A1)', '=CUCURBIT.SEED.NEEDED(A1)'],
    [
      '=IF(A1="",0,_xldudf_CUCURBIT_PLANTS_DENSITY(A1,_xldudf_CUCURBIT_CROP_VALUE(B1,"row_spacing")))',
      '=IF(A1="",0,CUCURBIT.PLANTS.DENSITY(A1,CUCURBIT.CROP.VALUE(B1,"row_spacing")))',
    ],
    ["='Joe''s'!A1+CUCURBIT.SEED.NEEDED(Plots[[#This Row],['#x]])", null],
  ])('%s is entered as %s', (formula, again) => {
    expect(enteredAgain(formula, 'CUCURBIT.')).toBe(again ?? formula);
  });

  test.each([
    '=1+1',
    '=SUM(A1:A3)',
    '="CUCURBIT.SEED.NEEDED(1)"',
    `='CUCURBIT.SEED.NEEDED(1)'!A1`,
    '=MYCUCURBIT.SEED.NEEDED(1)',
    '=OTHER.CUCURBIT.SEED.NEEDED(1)',
    '=_xldudf_OTHER_SEED_NEEDED(1)',
    '=CUCURBIT.TOTAL',
    '',
  ])('%s is none', (formula) => {
    expect(enteredAgain(formula, 'CUCURBIT.')).toBeNull();
  });

  test('no name of ours has an underscore, which the other way of writing puts for a dot', () => {
    expect([...functions.keys(), functionNamespace].filter((name) => name.includes('_'))).toEqual([]);
  });
});

test('cells one under another are one run; another cell between ends it', () => {
  const ours = '=CUCURBIT.A.B(1)';
  const formulas = [
    [ours, null],
    [ours, '=1'],
    [null, ours],
    ['=_xldudf_CUCURBIT_A_B(1)', null],
  ];
  expect(ourFormulas({ formulas }, { row: 4, column: 2 }, 'CUCURBIT.')).toEqual([
    { row: 4, column: 2, formulas: [ours, ours] },
    { row: 7, column: 2, formulas: [ours] },
    { row: 6, column: 3, formulas: [ours] },
  ]);
});
