// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { reachExcel } from '../../../src/hosts/excel/reachExcel';

/** The library's globals, as far as reaching Excel needs them. */
function library(host: string | null, api = '1.9'): object {
  const isSetSupported = (set: string, version: string): boolean => set === 'ExcelApi' && version <= api;
  return {
    HostType: { Excel: 'Excel' },
    context: { requirements: { isSetSupported } },
    onReady: () => Promise.resolve({ host, platform: null }),
  };
}
const excel = { run: vi.fn() };
const onSlow = vi.fn();
let script: HTMLElement;

beforeEach(() => {
  vi.useFakeTimers();
  onSlow.mockReset();
  script = document.createElement('script');
  vi.stubGlobal('Excel', excel);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a library that is there already', async () => {
  vi.stubGlobal('Office', library('Excel'));
  const reached = await reachExcel(script, onSlow);
  if (typeof reached === 'string') throw new Error(reached);
  expect(reached.excel).toBe(excel);
  expect(reached.isSetSupported('ExcelApi', '1.9')).toBe(true);
  expect(reached.isSetSupported('ExcelApi', '9.9')).toBe(false);
  vi.advanceTimersByTime(60_000);
  expect(onSlow).not.toHaveBeenCalled();
});

test('a library that comes late is waited for, and the wait is told once', async () => {
  const reached = reachExcel(script, onSlow);
  vi.advanceTimersByTime(60_000);
  expect(onSlow).toHaveBeenCalledTimes(1);
  vi.stubGlobal('Office', library('Excel'));
  script.dispatchEvent(new Event('load'));
  expect(await reached).toMatchObject({ excel });
});

test('an Excel that does not answer is told too', () => {
  vi.stubGlobal('Office', { ...library('Excel'), onReady: () => new Promise(() => undefined) });
  void reachExcel(script, onSlow);
  vi.advanceTimersByTime(60_000);
  expect(onSlow).toHaveBeenCalledTimes(1);
});

test.each(['error', 'load'])(
  'a library that is blocked, whether it fails or comes empty (%s)',
  async (event) => {
    const reached = reachExcel(script, onSlow);
    script.dispatchEvent(new Event(event));
    expect(await reached).toBe('blocked');
  },
);

test.each([
  ['no program at all', null],
  ['another program', 'Word'],
])('%s is outside', async (_, host) => {
  vi.stubGlobal('Office', library(host));
  expect(await reachExcel(script, onSlow)).toBe('outside');
});

test('an Excel below the floor of the manifest is old', async () => {
  vi.stubGlobal('Office', library('Excel', '1.8'));
  expect(await reachExcel(script, onSlow)).toBe('old');
});
