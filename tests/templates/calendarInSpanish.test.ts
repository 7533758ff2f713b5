/** The work on a plot is the same in both languages, whatever its crop is called there. */
import { afterAll, expect, test, vi } from 'vitest';
import type { Line } from '../../src/workbook/readLines';

afterAll(() => {
  globalThis.cucurbitLanguage = undefined;
});

/** Tasks of a plot of each crop, set down as Plots of that language has it; all modules read anew in the language. */
async function tasksIn(language: string): Promise<readonly (readonly [crop: string, tasks: string[]])[]> {
  globalThis.cucurbitLanguage = language;
  vi.resetModules();
  const { calendarTasks } = await import('../../src/functions/calendarTasks');
  const { crops } = await import('../../src/reference/crops');
  const { readPlot } = await import('../../src/templates/readPlotDates');
  const { wordOfCrop } = await import('../../src/templates/sayCrop');
  const { catalogue } = await import('../../src/texts/catalogue');
  const { columns } = catalogue.sheets.plots;
  return crops.map(({ name }) => {
    const values: Line['values'] = {
      [columns.plot.header]: 'P1',
      [columns.takenAs.header]: wordOfCrop(name),
      [columns.start.header]: 'seed',
      [columns.setOutOrSow.header]: 46_150,
      [columns.coverOff.header]: 46_185,
      [columns.firstPick.header]: 46_250,
      [columns.lastPick.header]: 46_270,
      [columns.lastSowing.header]: 46_180,
    };
    const line: Line = { values, formulas: new Set(), isBlank: false };
    const intervals = new Map([[wordOfCrop(name), 3]]);
    const { dates } = readPlot(line, 1, { units: {}, intervals, firstFrost: 46_300 });
    const { tasks } = calendarTasks([dates]);
    const said = tasks.map(
      ({ code, day, lastDay, turn, picks }) =>
        `${code} ${turn?.nth ?? ''}/${turn?.of ?? ''} ${day}-${lastDay ?? ''} ${picks?.everyDays ?? ''}`,
    );
    return [name, said];
  });
}

test('every crop has the same work on the same days in both languages', async () => {
  const english = await tasksIn('en');
  expect(await tasksIn('es')).toEqual(english);
  // NC State HIL-24 side-dresses pumpkins and winter squash twice; the others once: common practice, no source.
  const twice = english.filter(
    ([, tasks]) => tasks.filter((task) => task.startsWith('sideDress')).length === 2,
  );
  expect(twice.map(([crop]) => crop).sort()).toEqual([
    'bush winter squash',
    'pumpkin',
    'small pumpkin',
    'winter squash',
  ]);
});
