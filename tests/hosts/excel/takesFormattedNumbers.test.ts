import { afterEach, expect, test, vi } from 'vitest';
import { takesFormattedNumbers } from '../../../src/hosts/excel/takesFormattedNumbers';

afterEach(() => vi.unstubAllGlobals());

test('not where there is no Excel, nor before it says what it has', () => {
  expect(takesFormattedNumbers()).toBe(false);
  vi.stubGlobal('Office', {});
  expect(takesFormattedNumbers()).toBe(false);
});

test.each([
  [['CustomFunctionsRuntime 1.4', 'ExcelApi 1.19'], true],
  [['CustomFunctionsRuntime 1.4'], false],
  [['ExcelApi 1.19'], false],
  [[], false],
])('an Excel with %j: %s', (has, takes) => {
  const isSetSupported = (set: string, version: string): boolean => has.includes(`${set} ${version}`);
  vi.stubGlobal('Office', { context: { requirements: { isSetSupported } } });
  expect(takesFormattedNumbers()).toBe(takes);
});
