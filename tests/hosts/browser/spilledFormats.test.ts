/** What the grid shows of a list of dates that spills. */
import { expect, test } from 'vitest';
import { settleMs } from '../../contract/contractWorkbook';
import { openTyped } from './typing';

test('every date of a spilled list is shown as one, as long as no other format stands in its cell', async () => {
  const { workbook, engine, type } = openTyped();
  const sheet = engine.workbook.getActiveSheet();
  const shown = (): unknown[] => [0, 1, 2].map((row) => sheet.getCell(row, 0)?.v ?? null);

  await type('Kitchen', 0, 0, [[{ f: '=CUCURBIT.TEST.DAYS()', v: null }]]);
  expect(await workbook.settle(settleMs)).toEqual([]);
  // 46023 is 2026-01-01 by the spreadsheet's own count, plus 121 and 135 days.
  expect(shown()).toEqual(['2026-05-02', '2026-05-16', null]);

  await type('Kitchen', 1, 0, [[{ s: { n: { pattern: '0.0' } } }]]);
  expect(await workbook.settle(settleMs)).toEqual([]);
  expect(shown()).toEqual(['2026-05-02', '46158.0', null]);

  await type('Kitchen', 0, 0, [[{ f: '=CUCURBIT.TEST.DOUBLE(3)', v: null }]]);
  expect(await workbook.settle(settleMs)).toEqual([]);
  expect(shown()[1]).toBeNull();
  workbook.dispose();
});
