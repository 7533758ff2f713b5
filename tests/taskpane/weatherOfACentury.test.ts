// @vitest-environment jsdom
/** A hundred years of days given in the pane, against ten: by what is done, not by a clock. */
import { afterEach, expect, it, vi } from 'vitest';
import { paneTools } from '../../src/entries/paneTools';
import { functions } from '../../src/functions';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import type { LiveWorkbook } from '../../src/workbook/port';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import { recordText } from '../commands/recordText';
import { enter, fillFake, openPaneOver } from './openPane';

let close = (): void => undefined;
afterEach(() => close());

/** Puts the record of years up to 2025 in, and counts what it took. */
async function putYears(count: number) {
  const done = { looks: 0, changes: 0, calls: 0 };
  const counted = [...functions.values()].map((one) => ({
    ...one,
    run(args: unknown[]) {
      done.calls += 1;
      return one.run(args);
    },
  }));
  const memory = createMemoryWorkbook({ functions: counted });
  const workbook: LiveWorkbook = {
    ...memory,
    async apply(change, progress) {
      done.changes += 1;
      await memory.apply(change, progress);
    },
    reenterFormulas: () => Promise.reject(new Error('nobody asked for it')),
    selection: () => Promise.resolve(null),
    onSelection: () => () => undefined,
    onChange: () => () => undefined,
    reveal: () => Promise.resolve(),
  };
  await fillFake(workbook, []);
  const pane = await openPaneOver(workbook, {
    ...paneTools,
    readWeather(text, choices) {
      done.looks += 1;
      return paneTools.readWeather(text, choices);
    },
  });
  close = () => pane.handle.dispose();
  const first = 2026 - count;
  const frosts = Array.from({ length: count }, (_, i) => [`${first + i}-04-20`, `${first + i}-10-11`]).flat();
  const text = recordText(`${first}-01-01`, '2025-12-31', frosts);
  const days = text.split('\n').length - 1;
  Object.assign(done, { looks: 0, changes: 0, calls: 0 });
  enter(pane.field('Rows of a daily record, or the text of its file'), text);
  pane.button(`Put ${days} days into the Weather sheets`).click();
  const said = `${days} days were put into Weather, Weather record.`;
  await vi.waitFor(() => expect(pane.spoken()).toContain(said), { timeout: 240_000, interval: 100 });
  const dateOf = async (name: string) => {
    const area = await workbook.locate(name);
    return area === null ? null : (await workbook.read(area)).values[0]?.[0];
  };
  const table = await workbook.readTable('Weather');
  const last = await dateOf('WEATHER_LAST_FROST');
  const seasons = await dateOf('YEARS_WITH_FROSTS');
  return { done, rows: table?.rows.length, last, seasons };
}

it('takes one look, one change, and as many calls as ten years', async () => {
  const last = serialOfDay(dayOfIso('2027-04-20') ?? NaN);
  const few = await putYears(10);
  close();
  expect(few).toMatchObject({ rows: 3653, last, seasons: 10, done: { looks: 1, changes: 1 } });
  const many = await putYears(100);
  // 25 of the hundred years up to 2025 are leap years.
  expect(many).toMatchObject({ rows: 36_525, last, seasons: 100, done: few.done });
}, 600_000);
