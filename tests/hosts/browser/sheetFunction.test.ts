/** Ranges are turned into rows once a calculation, and never answered with from the calculation before. */
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { functions } from '../../../src/functions';
import { settleMs } from '../../contract/contractWorkbook';
import { openTyped, type TypedWorkbook } from './typing';

const open: TypedWorkbook[] = [];
afterEach(() => {
  for (const { workbook } of open.splice(0)) workbook.dispose();
});
function opened(...given: Parameters<typeof openTyped>): TypedWorkbook {
  const typed = openTyped(...given);
  open.push(typed);
  return typed;
}

describe('a range', () => {
  it('is one object for all formulas of a calculation, and another one after an edit', async () => {
    const seen: unknown[] = [];
    const { type, workbook } = opened(undefined, [
      { id: 'TEST.SEE', run: ([rows]) => ({ value: seen.push(rows) }) },
    ]);
    await type('Kitchen', 0, 0, [[{ v: 1 }], [{ v: 2 }]]);
    const call = { f: '=CUCURBIT.TEST.SEE(A1:A2)' };
    await type('Kitchen', 0, 1, [[call], [call], [call]]);
    expect(await workbook.settle(settleMs)).toEqual([]);
    expect(seen).toEqual(Array.from({ length: 3 }, () => [[1], [2]]));
    expect(new Set(seen).size).toBe(1);
    await type('Kitchen', 1, 0, [[{ v: 7 }]]);
    expect(await workbook.settle(settleMs)).toEqual([]);
    expect(seen.slice(3)).toEqual(Array.from({ length: 3 }, () => [[1], [7]]));
    expect(new Set(seen).size).toBe(2);
  });
});

describe('FLOWER.ISOLATE in every line', () => {
  const lines = 4;
  const crop = fc.constantFrom(
    'English cucumber',
    'pickling cucumber',
    'seedless watermelon',
    'seeded watermelon',
    'pumpkin',
    '',
  );
  const flowerType = fc.constantFrom('', 'monoecious', 'parthenocarpic', 'triploid');
  const edit = fc.oneof(
    fc.record({ row: fc.nat(lines - 1), column: fc.constant(0), v: crop }),
    fc.record({ row: fc.nat(lines - 1), column: fc.constant(1), v: flowerType }),
  );

  it('says after each edit what the function says of the cells as they are then', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 6 }), async (edits) => {
        const { type, workbook } = opened(undefined, [...functions.values()]);
        const cells = Array.from({ length: lines }, () => ['pumpkin', '']);
        const formula = (row: number): string =>
          `=CUCURBIT.FLOWER.ISOLATE(A${row},B${row},A$1:A$${lines},B$1:B$${lines})`;
        await type(
          'Kitchen',
          0,
          0,
          cells.map((line, i) => [...line.map((v) => ({ v })), { f: formula(i + 1) }]),
        );
        for (const { row, column, v } of edits) {
          (cells[row] as string[])[column] = v;
          await type('Kitchen', row, column, [[{ v }]]);
          expect(await workbook.settle(settleMs)).toEqual([]);
          const area = { sheet: 'Kitchen', row: 0, column: 2, rows: lines, columns: 1 };
          const crops = cells.map(([name]) => [name]);
          const types = cells.map(([, type]) => [type]);
          const said = cells.map(([name, type]) => {
            const outcome = functions.get('FLOWER.ISOLATE')?.run([name, type, crops, types]);
            return [outcome !== undefined && 'value' in outcome ? outcome.value : outcome];
          });
          expect((await workbook.read(area)).values).toEqual(said);
        }
        for (const typed of open.splice(0)) typed.workbook.dispose();
      }),
      { numRuns: 15 },
    );
  }, 240_000);
});
