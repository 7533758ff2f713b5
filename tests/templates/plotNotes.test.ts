/** What Notes says of a plot, computed by the file host. */
import { describe, expect, it, test, vi } from 'vitest';
import { functions } from '../../src/functions';
import { RunList } from '../../src/hosts/browser/runList';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { demoSeason } from '../../src/templates/demoGarden';
import { findInPlots } from '../../src/templates/findInPlots';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { Finding } from '../../src/workbook/findFindings';
import type { CellValue, WorkbookPort } from '../../src/workbook/port';
import { dayOfIso, isoOfDay, serialOfDay } from '../../src/workbook/serialDate';
import type { InputRow } from '../../src/workbook/template';
import { settleMs } from '../contract/contractWorkbook';
import { run } from '../functions/run';
import { openTyped } from '../hosts/browser/typing';

const { remarks } = english.sheets.plots;
const noStandard = 'The reference has no germination standard for this crop: fill in Germination.';

async function notesOf(plot: InputRow): Promise<string> {
  return String((await lineOf(plot))['Notes']);
}

async function findingsOf(plot: InputRow): Promise<readonly Finding[]> {
  return findInPlots(await filledWith(plot));
}

async function lineOf(plot: InputRow): Promise<Readonly<Record<string, unknown>>> {
  const table = await (await filledWith(plot)).readTable('Plots');
  return Object.fromEntries((table?.headers ?? []).map((header, i) => [header, table?.rows[0]?.[i]]));
}

async function filledWith(plot: InputRow): Promise<WorkbookPort> {
  const workbook = createFileWorkbook({ functions: [...functions.values()] });
  await fillIn(workbook, [{ Plot: 'field', Length: 50, Width: 20, 'Yield per 100': 100, ...plot }]);
  return workbook;
}

async function fillIn(workbook: WorkbookPort, inputs: readonly InputRow[]): Promise<void> {
  await fillSheets(
    workbook,
    allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? inputs : [],
      form: demoSeason,
    })),
    'test',
  );
}

test('a yield of 0 is said, and no other', async () => {
  expect(await notesOf({ Crop: 'gourd', Germination: 0.9, 'Yield per 100': 0 })).toContain(remarks.noYield);
  expect(await notesOf({ Crop: 'gourd', Germination: 0.9, 'Yield per 100': 1 })).not.toContain(
    remarks.noYield,
  );
  expect(await notesOf({ Crop: 'gourd', Germination: 0.9, 'Yield per 100': null })).not.toContain(
    remarks.noYield,
  );
});

test('a yield of 0 promises no published one where there is none', async () => {
  const noted = await notesOf({ Crop: 'slicing cucumber', 'Yield per 100': 0 });
  expect(noted).toContain('A blank takes the published one, if there is one.');
});

describe('germination against the federal standard (7 CFR 201.31: muskmelon 75 %, gourd not listed)', () => {
  it.each<[string, InputRow, string]>([
    ['below it', { Crop: 'muskmelon', Germination: 0.74 }, remarks.belowStandard],
    ['under 0, which is no germination', { Crop: 'muskmelon', Germination: -0.5 }, remarks.misfit],
    ['at it', { Crop: 'muskmelon', Germination: 0.75 }, ''],
    ['left blank', { Crop: 'muskmelon' }, ''],
    ['of a crop without one', { Crop: 'gourd', Germination: 0.3 }, ''],
    ['of a crop without one, left blank', { Crop: 'gourd' }, noStandard],
    ['of a crop that is not known', { Crop: 'gord', Germination: 0.3 }, remarks.cropUnknown],
  ])('%s', async (_, plot, expected) => {
    expect((await notesOf(plot)).trim()).toBe(expected);
  });
});

describe('a name', () => {
  const plots = (names: readonly string[]): InputRow[] =>
    names.map((Plot) => ({ Plot, Crop: 'slicing cucumber', Length: 50, Width: 20 }));
  const saidIn = async (workbook: WorkbookPort): Promise<readonly unknown[]> => {
    const { headers = [], rows = [] } = (await workbook.readTable('Plots')) ?? {};
    const [name, shared, notes] = ['Plot', 'Same name', 'Notes'].map((header) => headers.indexOf(header));
    return rows.map((row) => [
      row[name ?? -1],
      row[shared ?? -1],
      String(row[notes ?? -1]).includes(remarks.sameName),
    ]);
  };

  it('that several plots have is told at each of them', async () => {
    const workbook = createFileWorkbook({ functions: [...functions.values()] });
    await fillIn(workbook, plots(['east', 'west', 'East', '>1']));
    expect(await saidIn(workbook)).toEqual([
      ['east', 'shared', true],
      ['west', '', false],
      ['East', 'shared', true],
      ['>1', '', false],
    ]);
  });

  it('that is changed asks all plots whether they share it, and Notes only where the answer is another', async () => {
    const calculated = async (count: number, to: string): Promise<number> => {
      const { workbook, type } = openTyped(undefined, [...functions.values()]);
      await fillIn(workbook, plots(Array.from({ length: count }, (_, i) => `plot ${i}`)));
      await workbook.settle(settleMs);
      const { area } = (await workbook.readTable('Plots')) ?? {};
      const next = vi.spyOn(RunList.prototype, 'pop');
      await type('Plots', (area?.row ?? 0) + 1, 0, [[{ v: to }]]);
      await workbook.settle(settleMs);
      const times = next.mock.calls.length;
      next.mockRestore();
      workbook.dispose();
      return times;
    };
    const few = await calculated(3, 'another');
    expect(await calculated(13, 'another')).toBe(few + 10);
    // The notes of both plots.
    expect(await calculated(13, 'plot 5')).toBe(few + 10 + 2);
  });
});

test('a crop with spaces around and in its name is taken as its type', async () => {
  expect(await lineOf({ Crop: '  Summer  squash ' })).toMatchObject({
    'Taken as': 'summer squash',
    'Seed to sow': (await lineOf({ Crop: 'summer squash' }))['Seed to sow'],
  });
});

describe('a triploid watermelon', () => {
  it('alone is told of pollen and of the seed for its pollenizers, in words that go together', async () => {
    const notes = await notesOf({ Crop: 'seedless watermelon', Germination: 0.9 });
    expect(notes).toBe(
      `${english.verdicts['no pollenizer']} ${remarks.pollenizerSeed} ${remarks.pollenizerYield} `,
    );
    expect(notes).not.toMatch(/Add one/);
  });
});

describe('the last cucurbits of a plot, sown on 9 May 2027', () => {
  const said = (count: unknown) =>
    `Full seasons since the last cucurbits, where 2 to 3 are advised: ${String(count)}.`;
  const notesAfter = async (last: CellValue, more: InputRow = {}): Promise<string> =>
    (await notesOf({ Crop: 'slicing cucumber', 'Last cucurbits': last, ...more })).trim();

  // Counted by ROTATION.YEARS, which tests of its own hold to the arithmetic; 2 to 3: North Carolina AG-552.
  it.each([2026, 2025, 2024])('in %i are told with the seasons between', async (year) => {
    expect(await notesAfter(year)).toBe(said(run('ROTATION.YEARS', 2027, [[year]])));
  });

  it.each([
    ['three seasons before', 2023],
    ['long ago', 1900],
    ['not known', null],
    ['not known, as a blank text', ''],
  ])('%s: nothing is said', async (_, last) => {
    expect(await notesAfter(last)).toBe('');
  });

  it.each([
    ['the year itself', 2027],
    ['a later year', 2030],
    ['a year of two digits', 24],
    ['half a year', 2024.5],
    ['words', 'none'],
    ['several years in one cell', '2019; 2023'],
  ])('%s: says what to type, at its cell', async (_, last) => {
    const plot = { Crop: 'slicing cucumber', 'Last cucurbits': last };
    expect(await notesAfter(last)).toBe(remarks.lastCucurbitsUnfit);
    expect(await findingsOf(plot)).toMatchObject([
      { kind: 'error', header: 'Last cucurbits', text: remarks.lastCucurbitsUnfit },
    ]);
  });

  it('count from the year of a day of one’s own', async () => {
    const startsOn = { 'Sow or set out on': serialOfDay(dayOfIso('2028-06-01') ?? NaN) };
    expect(await notesAfter(2026, startsOn)).toMatch(/: 1\./);
  });
});

describe('fruit that keeps for months (University of California, Davis: pumpkin and winter squash 2 to 6)', () => {
  it.each<[string, boolean]>([
    ['pumpkin', true],
    ['bush winter squash', true],
    ['zucchini', false],
    ['watermelon', false],
    ['gourd', false],
  ])('%s: %s', async (crop, isTold) => {
    expect((await notesOf({ Crop: crop })).includes(remarks.storesLong)).toBe(isTold);
  });
});

describe('a day of one’s own to sow or set out (the season allows sowing from 9 May, setting out from 16 May)', () => {
  const day = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);
  const cucumber = { Crop: 'slicing cucumber', 'Days to maturity': 60, 'Harvest days': 21 };

  it.each<[string, InputRow, string]>([
    ['before it', { 'Sow or set out on': day('2027-05-08') }, remarks.startsEarly],
    ['on it', { 'Sow or set out on': day('2027-05-09') }, ''],
    [
      'before it, for transplants',
      { Start: 'transplant', 'Sow or set out on': day('2027-05-15') },
      remarks.startsEarly,
    ],
    // 10 October less 60, 21, 14 and 14 days is 23 June: two weeks of slower growth, two clear of frost.
    ['on the last one', { 'Sow or set out on': day('2027-06-23') }, ''],
    ['past the last one', { 'Sow or set out on': day('2027-06-24') }, remarks.sowsTooLate],
  ])('%s', async (_, plot, expected) => {
    expect((await notesOf({ ...cucumber, ...plot })).trim()).toBe(expected);
  });

  it('moves every date that follows from it', async () => {
    const line = await lineOf({ ...cucumber, Start: 'transplant', 'Sow or set out on': day('2027-06-01') });
    expect(line).toMatchObject({
      'Set out or sow': day('2027-06-01'),
      // 3 weeks before it.
      'Start transplants': day('2027-05-11'),
    });
    const basis = run('CROP.VALUE', 'slicing cucumber', 'days counted from');
    expect(isoOfDay(Number(line['First pick']) - serialOfDay(0))).toBe(
      run('DATE.FIRSTPICK', day('2027-06-01'), 60, 'transplant', basis),
    );
    expect((await lineOf({ ...cucumber, Start: 'transplant' }))['Set out or sow']).toBe(day('2027-05-16'));
  });
});
