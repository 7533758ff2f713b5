/** Native functions in the browser's engine, against the values that Excel gives. What differs is listed here. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import type { BrowserWorkbook } from '../../src/hosts/browser/openWorkbook';
import { operate } from '../../src/workbook/expressions';
import { isCellError, type ReadValue } from '../../src/workbook/port';
import { sampleHeaders, sampleSheet, semantics } from '../hosts/file/semantics';
import { change, settleMs } from './contractWorkbook';

/** By formula: what the engine gives instead. Templates keep clear of these. */
const deviations: Readonly<Record<string, ReadValue>> = {
  // A reference to an empty cell stays empty as a result, where Excel shows 0.
  '=IF(TRUE,NO_VALUE)': null,
  // Numbers are joined with 16 digits, and small ones with an exponent.
  '=1/3&""': '0.3333333333333333',
  '=1E-7&""': '1E-7',
  // A text as a condition is true, or passed over.
  '=IF("x",1,2)': 1,
  '=AND("x",TRUE)': true,
  // The least of no number. Ask with COUNTIFS first.
  '=MINIFS(Sample[Nothing],Sample[Plot],"*")': Infinity,
  '=MINIFS(Sample[Plot],Sample[Length],">0")': Infinity,
  // Column names with parentheses, brackets, # or ' are not understood; names are told apart by case.
  '=Sample[[#This Row],[Row (ft)]]': '#VALUE!',
  "=Sample[[#This Row],[It''s '[1'] '#2]]": '#VALUE!',
  "=SUM(Sample[[It''s '[1'] '#2]])": '#VALUE!',
  '=Sample[[#This Row],[row (FT)]]': '#VALUE!',
};

const place = { row: 1, column: sampleHeaders.length };

describe('native functions in the browser', () => {
  let workbook: BrowserWorkbook;
  const met = new Set<string>();
  beforeAll(async () => {
    workbook = openHeadless({ functions: [], namespace: 'CUCURBIT.', firstSheet: 'First' });
    await workbook.apply(change({ newSheets: [sampleSheet(operate(1, '+', 1))] }));
  });
  afterAll(() => workbook.dispose());

  test.each(Object.entries(semantics))('%s', async (_, cases) => {
    for (const [expression, wanted] of cases) {
      const cells = [{ sheet: 'Sample', ...place, contents: [[{ compute: expression }]] }];
      await workbook.apply(change({ cells }));
      expect(await workbook.settle(settleMs)).toEqual([]);
      const read = await workbook.read({ sheet: 'Sample', ...place, rows: 1, columns: 1 });
      const formula = read.formulas[0]?.[0] ?? '';
      const value = read.values[0]?.[0] ?? null;
      const got = isCellError(value) ? value.error : value;
      const isKept = formula in deviations;
      if (isKept) met.add(formula);
      const expected = isKept ? deviations[formula] : wanted;
      if (typeof expected === 'number') expect(got, formula).toBeCloseTo(expected, 12);
      else expect(got, formula).toBe(expected);
    }
  });

  test('every deviation was met', () => {
    expect([...met].sort()).toEqual(Object.keys(deviations).sort());
  });
});
