import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  bytesOfRow,
  bytesPerRequest,
  cellSteps,
  groupSteps,
  sendSteps,
} from '../../../src/hosts/excel/writeSteps';
import { openTestWorkbook } from './openTestWorkbook';

test('bytes are counted, not characters', () => {
  expect(bytesOfRow(['🎃']) - bytesOfRow(['x'])).toBe(3);
});

test('every cell is in one step, in order, and a step is small against a request', () => {
  const area = { sheet: 'x', row: 5, column: 0, rows: 3000, columns: 2 };
  const contents = Array.from({ length: 3000 }, (_, i) => [i, 'x'.repeat(1000)]);
  const steps = cellSteps(area, contents);
  expect(steps.length).toBeGreaterThan(5);
  for (const step of steps) expect(step.bytes).toBeLessThan(bytesPerRequest / 5);
});

test('steps are packed in order into requests below the limit', () => {
  const sizes = fc.array(fc.integer({ min: 1, max: bytesPerRequest / 2 }), { maxLength: 40 });
  fc.assert(
    fc.property(sizes, (bytes) => {
      const groups = groupSteps(bytes.map((each) => ({ bytes: each, write: () => undefined })));
      expect(groups.flat().map((step) => step.bytes)).toEqual(bytes);
      const totals = groups.map((group) => group.reduce((sum, step) => sum + step.bytes, 0));
      for (const total of totals) expect(total).toBeLessThanOrEqual(bytesPerRequest);
      // No two neighbours would have gone into one.
      totals
        .slice(1)
        .forEach((total, i) => expect(total + (totals[i] ?? 0)).toBeGreaterThan(bytesPerRequest));
    }),
  );
});

test('the estimate is close to what the library sends, and above it', async () => {
  const { standIn } = openTestWorkbook();
  const contents = Array.from({ length: 4000 }, (_, i) => [i, `'text ${i}`, '=1+1', true]);
  const steps = cellSteps({ sheet: 'Kitchen', row: 10, column: 0, rows: 4000, columns: 4 }, contents);
  await sendSteps(standIn.excel, 'write', steps);
  const sent = standIn.takeRequests().reduce((sum, size) => sum + size, 0);
  const estimated = steps.reduce((sum, step) => sum + step.bytes, 0);
  expect(sent).toBeLessThan(estimated);
  expect(sent).toBeGreaterThan(estimated / 2);
});
