// @vitest-environment jsdom
/** The working of cells over the real browser workbook: its engine says what every formula gives. */
import axe from 'axe-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { homeworkProblems } from '../../src/functions/homeworkProblems';
import { makeHomework } from '../../src/templates/makeHomework';
import { english } from '../../src/texts/english';
import { cellAddress } from '../../src/workbook/cellAddress';
import type { Area } from '../../src/workbook/port';
import { run } from '../functions/run';
import { openGridPane, type GridPane } from './openGridPane';
import { until } from './openPane';
import { workingTools } from './workingTools';

const words = english.pane.working;
const plots = [
  { Plot: 'A', Crop: 'zucchini', Length: 40, Width: 8, Germination: 0.85 },
  { Plot: 'B', Crop: 'pumpkin', Layout: 'hills', Length: 60, Width: 30 },
  { Plot: 'C', Crop: 'watermelon', Length: 40, Width: 8, Start: 'transplant', 'Flower type': 'triploid' },
  { Plot: 'D', Crop: 'no such crop', Length: 40, Width: 8 },
];

let pane: GridPane;
let tools: Awaited<ReturnType<typeof workingTools>>;
let reads: Area[];
beforeEach(async () => {
  reads = [];
  tools = await workingTools((at) => reads.push(at));
  pane = await openGridPane(plots, tools);
}, 120_000);
afterEach(() => pane.close());

const section = (): HTMLElement => pane.section(words.heading);
const content = (): string => section().querySelector('.working')?.textContent ?? '';
const status = (): string => section().querySelector('[role=status]')?.textContent ?? '';
function box(): HTMLDetailsElement {
  const details = section().querySelector('details');
  if (details === null) throw new Error('nothing to open');
  return details;
}
const cellOf = async (row: number, header: string, table = 'Plots'): Promise<Area> => {
  const { area, headers } = await pane.table(table);
  const column = area.column + headers.indexOf(header);
  return { sheet: area.sheet, row: area.row + 1 + row, column, rows: 1, columns: 1 };
};
test('every formula of a plan comes to what the grid shows, and nothing in it is left unfollowed', async () => {
  expect(await pane.workbook.settle(60_000)).toEqual([]);
  let calls = 0;
  for (const info of await pane.workbook.sheets()) {
    const { used } = info;
    if (used === null) continue;
    const { formulas } = await pane.workbook.read(used);
    const seen = new Set<string>();
    for (const [i, row] of formulas.entries()) {
      for (const [j, formula] of row.entries()) {
        const key = `${formula} ${used.column + j} ${info.name === 'Plots' ? i : ''}`;
        if (formula === null || !formula.includes('CUCURBIT.') || seen.has(key)) continue;
        seen.add(key);
        const at = { sheet: info.name, row: used.row + i, column: used.column + j, rows: 1, columns: 1 };
        const working = await tools.readWorking(pane.workbook, at);
        if (typeof working !== 'object' || working === null || 'filledBy' in working)
          throw new Error(`${info.name} ${i} ${j}: ${working}`);
        calls += working.calls.length;
        expect(working.another, `${info.name} ${at.row + 1}:${at.column + 1} ${formula}`).toBeUndefined();
        expect(working.notFollowed, formula).toEqual([]);
        for (const call of working.calls) {
          expect(call.sentence, call.id).not.toBeNull();
          expect(call.working, call.id).not.toBeNull();
        }
      }
    }
  }
  expect(calls).toBeGreaterThan(60);
}, 240_000);

test('closed it reads nothing; opened it shows the selected cell, and follows', async () => {
  await pane.workbook.reveal(await cellOf(0, 'Seed to sow'));
  await new Promise((resolve) => setTimeout(resolve, 400));
  expect(reads).toEqual([]);

  box().open = true;
  await until(() => expect(status()).toMatch(/^Working of Plots [A-Z]+8$/));
  // 8 ft hold 2 rows 4 ft apart (the crop's own), of 40 ft each.
  const [plants = null] = await pane.column('Plants');
  const [seed = null] = await pane.column('Seed to sow');
  expect(seed).toBe(run('SEED.NEEDED', plants, 0.85, null, 0.9));
  expect(content()).toContain(`Plants wanted, whole, 1 or more${plants}Plots`);
  expect(content()).toContain(
    'Chance that the seed is enough, above 0, below 1; left out: an average0.9Season',
  );
  // TRAY.CELLS and SEED.PERHILL are for other plots.
  const idle = section().querySelectorAll<HTMLDetailsElement>('.working details');
  expect([...idle].map(({ textContent }) => /^[A-Z.]+/.exec(textContent ?? '')?.[0])).toEqual([
    'TRAY.CELLS',
    'SEED.PERHILL',
  ]);
  expect(content().indexOf('SEED.NEEDED')).toBeGreaterThan(0);
  for (const each of idle) each.open = true;

  const length = await cellOf(0, 'Length');
  await pane.workbook.reveal(length);
  await until(() =>
    expect(status()).toMatch(/uses none of these functions. This is still the working of Plots/),
  );
  await pane.type(length.sheet, length.row, length.column, { v: 80 });
  await until(() => expect(content()).not.toContain(`Plants wanted, whole, 1 or more${plants}Plots`));
  const [more = null] = await pane.column('Seed to sow');
  expect(Number(more)).toBeGreaterThan(Number(seed));
  await until(() => expect(content()).toContain(`shows${String(more)}`));
  // What was unfolded stays so.
  expect(section().querySelectorAll('.working details[open]')).toHaveLength(2);
}, 120_000);

test('while the selection moves on only the last cell is read', async () => {
  box().open = true;
  await until(() => expect(status()).not.toBe(words.reading));
  reads.length = 0;
  for (const header of ['Plants', 'Seed to sow', 'Set out or sow', 'First pick', 'Last sowing']) {
    await pane.workbook.reveal(await cellOf(0, header));
  }
  const last = await cellOf(0, 'Last sowing');
  await until(() => expect(content()).toContain('DATE.LASTSOWING'));
  expect(new Set(reads.map(({ column }) => column))).toEqual(new Set([last.column]));
}, 120_000);

test('an input is a link to where it stands', async () => {
  box().open = true;
  await pane.workbook.reveal(await cellOf(0, 'Seed to sow'));
  await until(() => expect(content()).toContain('SEED.NEEDED'));
  const link = [...section().querySelectorAll('button')].find(({ textContent }) =>
    textContent?.endsWith('ASSURANCE'),
  );
  link?.focus();
  link?.click();
  const there = await pane.workbook.locate('ASSURANCE');
  await until(async () => expect(await pane.workbook.selection()).toEqual(there));
  await until(() => expect(status()).toContain('This is still the working of Plots'));
  expect(document.activeElement).toBe(link);
}, 120_000);

test("formulas of people's own: nested, with functions of the program, with what cannot be followed", async () => {
  box().open = true;
  const put = async (row: number, f: string): Promise<void> => {
    await pane.type('Scratch', row, 0, { f });
    await pane.workbook.settle(20_000);
    await pane.workbook.reveal({ sheet: 'Scratch', row, column: 0, rows: 1, columns: 1 });
    await until(() => expect(status()).toBe(`Working of Scratch A${row + 1}`));
  };
  // 43,560 / 6 sq ft = 7,260 plants an acre.
  await put(0, '=ROUNDUP(CUCURBIT.SEED.NEEDED(CUCURBIT.PLANTS.DENSITY(2,36),80%)/1000,0)');
  // 7,260 / 0.8 = 9,075, so 10 of a thousand.
  expect(content()).toContain('Scratch A1 shows10');
  expect(content().indexOf('PLANTS.DENSITY')).toBeLessThan(content().indexOf('SEED.NEEDED'));
  expect(content()).toContain('what PLANTS.DENSITY gives');
  expect(section().querySelector('ol.steps')?.textContent).toContain('row spacing 2, plant spacing 36');

  // 43,560 / (2.2 x 3) = 6,600; / 0.8 = 8,250, so 9 of a thousand.
  expect(content()).toContain('2.2 (+10%) gives 6600, the whole formula 9');
  expect(content()).toContain(words.effects.ofWhole);

  await put(1, '=CUCURBIT.PLANTS.DENSITY(ABS(-2),36)');
  expect(content()).toContain('ABS(-2): worked out by the spreadsheet program.');
  expect(content()).toContain(words.inputs.notKnown);

  await put(2, '=CUCURBIT.SEED.NEEDED(100,85)');
  expect(content()).toContain(words.call.refuses);
  expect(content()).toContain('85%');
}, 120_000);

describe('a line of a homework', () => {
  const offered = (name: string): HTMLButtonElement | undefined =>
    [...section().querySelectorAll('button')].find(
      (button) => button.textContent === `Show the working of ${name}` && !button.hidden,
    );

  test('tells its answer only when asked, whatever stands in it, and each line for itself', async () => {
    const given = homeworkProblems(17, 3, 'us');
    if ('wrong' in given) throw new Error(given.wrong);
    await makeHomework(pane.workbook, { number: 17, units: 'us' }, given.value, false, 'homework');
    box().open = true;
    const at = (row: number, header: string): Promise<Area> => cellOf(row, header, 'Homework');
    // A wrong answer, so that the formula of the verdict comes to its check.
    const answer = await at(0, 'Answer');
    await pane.type(answer.sheet, answer.row, answer.column, { v: 400 });
    for (const header of ['Verdict', 'Problem', 'Answer', 'Steps', 'No']) {
      await pane.workbook.reveal(await at(0, header));
      await until(() => expect(offered('17-1')).toBeDefined());
      expect(status()).toBe('The working of 17-1 tells the right answer.');
      expect(content(), header).toBe('');
    }
    offered('17-1')?.focus();
    offered('17-1')?.click();
    // 360 / (0.8 x 0.9) seeds.
    await until(() => expect(content()).toContain('500'));
    expect(status()).toBe('Working of 17-1');
    expect(content()).toContain(`Problem 17-1 ${given.value[0]?.text}SEED.NEEDED`);
    expect(content()).toContain('0.9Homework');
    expect(offered('17-1')).toBeUndefined();
    expect(document.activeElement).toBe(section().querySelector('.working'));
    await pane.workbook.reveal(await at(0, 'Verdict'));
    await new Promise((resolve) => setTimeout(resolve, 400));
    expect(content()).toContain('SEED.NEEDED');

    await pane.workbook.reveal(await at(1, 'Answer'));
    await until(() => expect(offered('17-2')).toBeDefined());
    expect(content()).toBe('');
    // A cell beside the table stands in no line.
    const last = await at(1, 'Argument 7');
    await pane.workbook.reveal({ ...last, column: last.column + 1 });
    await until(() => expect(status()).toMatch(/uses none of these functions\.$/));
    expect(content()).toBe('');
  }, 120_000);

  test('nor does a check that somebody wrote', async () => {
    box().open = true;
    await pane.type('Scratch', 0, 0, { f: '=CUCURBIT.CHECK.SLIP(100,"SEED.NEEDED",100,0.8)' });
    await pane.workbook.settle(20_000);
    await pane.workbook.reveal({ sheet: 'Scratch', row: 0, column: 0, rows: 1, columns: 1 });
    await until(() => expect(offered('Scratch A1')).toBeDefined());
    expect(content()).toBe('');
    offered('Scratch A1')?.click();
    // 100 / 0.8.
    await until(() => expect(content()).toContain('125'));
  }, 120_000);
});

test('a cell that a list fills names the cell whose formula it is, and goes there', async () => {
  box().open = true;
  const scratch = (row: number, column: number): Area => ({
    sheet: 'Scratch',
    row,
    column,
    rows: 1,
    columns: 1,
  });
  await pane.type('Scratch', 1, 1, { f: '=CUCURBIT.CHECK.WORKING("PLANTS.DENSITY",2,36)' });
  await pane.type('Scratch', 2, 0, { v: 'beside it' });
  await pane.type('Scratch', 9, 1, { v: 'below it' });
  await pane.type('Scratch', 0, 1, { f: '=1+1' });
  await pane.workbook.settle(20_000);
  await pane.workbook.reveal(scratch(2, 2));
  await until(() =>
    expect(status()).toBe('Scratch C3 is a part of the list that the formula in Scratch B2 gives.'),
  );
  const go = [...section().querySelectorAll('button')].find(
    ({ textContent }) => textContent === 'Show the working of Scratch B2',
  );
  go?.click();
  await until(() => expect(status()).toBe('Working of Scratch B2'));
  expect(content()).toContain('CHECK.WORKING');
  // Back among the list its working stays.
  await pane.workbook.reveal(scratch(2, 2));
  await until(() => expect(status()).toContain('is a part of the list'));
  expect(content()).toContain('CHECK.WORKING');
  expect(go?.hidden).toBe(true);
  for (const [row, column] of [
    [2, 0],
    [9, 1],
    [1, 0],
  ] as const) {
    await pane.workbook.reveal(scratch(row, column));
    await until(() =>
      expect(status()).toContain(`Scratch ${cellAddress(row, column)} uses none of these functions`),
    );
  }
}, 120_000);

test('reads well to a screen reader', async () => {
  box().open = true;
  await pane.workbook.reveal(await cellOf(0, 'Seed to sow'));
  await until(() => expect(content()).toContain('SEED.NEEDED'));
  // jsdom has no layout and no colours: those are looked at elsewhere.
  const { violations } = await axe.run(section(), {
    rules: { 'color-contrast': { enabled: false }, region: { enabled: false } },
  });
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
}, 120_000);
