/** The product's own page, used as a grower uses it, with mouse and keyboard alone. */
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeFunctions } from '../functions/describedFunctions';
import { run } from '../functions/run';
import type { GridHands } from './gridPage/gridHands';
import { openPlanPage, type PaneHands, type PlanPage, type PlotsShown } from './gridPage/planPage';

/** Lines of the invented garden, from 0. */
const creek2 = 1;
const underTable = 12;

describe('the browser workbook', () => {
  let open: PlanPage;
  let hands: GridHands;
  let pane: PaneHands;
  let plots: PlotsShown;
  beforeAll(async () => {
    open = await openPlanPage();
    ({ hands, pane, plots } = open);
  }, 240_000);
  afterAll(() => open.close());

  const put = async (label: string, value: string): Promise<void> => {
    await pane.root.getByLabel(label).fill(value);
    await pane.press('Put into the sheet');
  };

  test('opens filled and calculated, with what to look at named', async () => {
    await pane.says('May 16, 2027');
    await pane.says(/Germination below the federal standard/);
    expect((await plots.headers()).slice(0, 3)).toEqual(['Plot', 'Crop', 'Layout']);
    expect(open.troubles).toEqual([]);
  });

  test('the filling that the page opens with cannot be undone', async () => {
    await hands.goTo('A8');
    await hands.press('Control+z');
    await hands.press('Control+z');
    await plots.show('Creek 1', { 'Set out or sow': '2027-05-16' });
  });

  test('a frost date changed in the pane moves the dates in Plots', async () => {
    // Last frost 2 May: out 14 days later, started 3 weeks before that.
    await plots.show('Creek 1', { 'Start transplants': '2027-04-25', 'Set out or sow': '2027-05-16' });
    await put('Last frost of spring', '2027-05-12');
    // Ten days later each; sown plots wait 7 days.
    await plots.show('Creek 1', { 'Start transplants': '2027-05-05', 'Set out or sow': '2027-05-26' });
    await plots.show('Creek 2', { 'Start transplants': '', 'Set out or sow': '2027-05-19' });
    await pane.says('May 26, 2027');
  });

  test('what the pane put into the sheet is undone and done again from the pane', async () => {
    const frost = (): Promise<string> => pane.root.getByLabel('Last frost of spring').inputValue();
    await pane.root.getByRole('button', { name: 'Refresh the sheets' }).focus();
    await hands.press('Control+z');
    // Over the foot of the pane: nothing moves.
    const said = open.page.locator('.undone', { hasText: /^Undone: / });
    const { y, height } = (await said.boundingBox()) ?? { y: 0, height: 0 };
    expect([y + height, height > 20]).toEqual([open.page.viewportSize()?.height, true]);
    expect(await said.evaluate((one) => getComputedStyle(one).position)).toBe('fixed');
    await expect.poll(frost, { timeout: 60_000 }).toBe('2027-05-02');
    await plots.show('Creek 1', { 'Set out or sow': '2027-05-16' });
    await pane.root.getByRole('button', { name: 'Refresh the sheets' }).focus();
    await hands.press('Control+y');
    await expect.poll(frost, { timeout: 60_000 }).toBe('2027-05-12');
    await plots.show('Creek 1', { 'Set out or sow': '2027-05-26' });
  });

  test('frosts the wrong way round are refused beside the field, and nothing is written', async () => {
    await put('First frost of fall', '2027-04-01');
    await pane.says(/Nothing was written/);
    await pane.press('Drop my changes');
    await plots.show('Creek 1', { 'Set out or sow': '2027-05-26' });
  });

  test('a germination typed into Plots changes the seed to sow', async () => {
    // 24 ft hold 4 rows 5 ft apart, each of 100 plants a foot apart; the season's assurance is 90 %.
    const seed = (germination: number): string => String(run('SEED.NEEDED', 400, germination, 0.9, 0.9));
    await plots.show('Creek 2', { Plants: '400', 'Seed to sow': seed(0.85) });
    await hands.typeAlong(await plots.addressOf(creek2, 'Germination'), ['60%']);
    await plots.show('Creek 2', { Germination: '60%', 'Seed to sow': seed(0.6) });
  });

  const typed = ['Lane', 'pickling cucumber', '', '50', '10'];
  const spacings = ['5', '12'];
  const lane = {
    'Taken as': 'pickling cucumber',
    // 2 rows of 50.
    Plants: '100',
    // The federal standard of germination stands in for the blank; no field loss.
    'Seed to sow': String(run('SEED.NEEDED', 100, run('SEED.STANDARD', 'cucumber'), null, 0.9)),
    'Set out or sow': '2027-05-19',
  };

  test('a plot typed under the last line is computed, undone and done again cell by cell', async () => {
    const before = await plots.all();
    await hands.typeAlong(await plots.addressOf(underTable, 'Plot'), typed);
    await hands.typeAlong(await plots.addressOf(underTable, 'Row spacing'), spacings);
    await plots.show('Lane', lane);
    const after = await plots.all();
    const cells = [...typed, ...spacings].filter((text) => text !== '').length;
    for (let step = 1; step < cells; step++) await hands.press('Control+z');
    await plots.show('Lane', { Crop: '', Length: '', Plants: '', Notes: 'Choose a crop.' });
    // The first cell made the line, so its undoing takes the line's formulas along.
    await hands.press('Control+z');
    expect((await hands.shown('A20:AZ20')).flat().join('')).toBe('');
    expect(await plots.all()).toEqual(before);
    for (let step = 1; step <= cells; step++) await hands.press('Control+y');
    await plots.show('Lane', lane);
    expect(await plots.all()).toEqual(after);
  }, 240_000);

  test('the keyboard alone leaves the grid and comes back to it', async () => {
    const isInPane = (): Promise<unknown> =>
      open.page.evaluate("document.getElementById('pane').contains(document.activeElement)");
    await hands.goTo('B3');
    expect(await isInPane()).toBe(false);
    await hands.press('F6');
    expect(await isInPane()).toBe(true);
    await hands.press('ArrowDown');
    expect(await hands.where()).toBe('B3');
    await hands.press('F6');
    expect(await isInPane()).toBe(false);
    await hands.press('ArrowDown');
    await expect.poll(hands.where).toBe('B4');
  });

  test('refreshing says what it did and keeps what was typed', async () => {
    const before = await plots.all();
    await pane.press('Refresh the sheets');
    await pane.says(
      /Refreshed: Season, Plots, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges/,
    );
    await plots.show('Lane', lane);
    expect(await plots.all()).toEqual(before);
  });

  test('a text for a length is explained in the pane, which leads to it', async () => {
    await hands.typeAlong(await plots.addressOf(underTable, 'Length'), ['fifty']);
    const finding = pane.root.getByRole('button', {
      name: /The length of the plot is "fifty", which is not a number/,
    });
    await finding.waitFor({ timeout: 60_000 });
    await open.page.getByRole('tab', { name: 'Season' }).click();
    await finding.click();
    const cause = await plots.addressOf(underTable, 'Length');
    await expect.poll(hands.where).toBe(cause);
    await pane.says(`Selected cell ${cause}: The length of the plot is "fifty"`);
    expect((await hands.shown(await plots.addressOf(underTable, 'Plants'))).flat()).toEqual(['#VALUE!']);
    expect((await plots.all())['Arbor']).toMatchObject({ Plants: '16' });
    expect(open.troubles).toEqual([]);
  });

  test('a function typed into a cell or the formula bar is listed with its sentence, then its arguments', async () => {
    const { page } = open;
    const offered = () => page.locator('[data-u-comp="sheets-formula-editor"] li');
    const needed = offered().filter({ hasText: 'CUCURBIT.SEED.NEEDED' });
    const readme = await readFile('README.md', 'utf8');
    const ofSeason = (await describeFunctions())
      .filter(({ id }) => /^SE(ASON|ED)\./.test(id))
      .sort((one, other) => readme.indexOf(`| ${one.id} `) - readme.indexOf(`| ${other.id} `));
    await page.getByRole('tab', { name: 'Scratch' }).click();
    await hands.goTo('B2');
    await page.keyboard.type('=CUCURBIT.SE', { delay: 30 });
    await needed.waitFor({ timeout: 60_000 });
    // The grid offers ten at a time, in the order of README.
    expect(await offered().allInnerTexts()).toEqual(
      ofSeason.slice(0, 10).map(({ id, description }) => `CUCURBIT.${id}\n${description}`),
    );
    await needed.click();
    const signature = 'CUCURBIT.SEED.NEEDED(plants,germination,[field_emergence],[assurance],[tested])';
    await page.getByText(signature).waitFor({ timeout: 60_000 });
    await page.keyboard.type('100,0.8)', { delay: 30 });
    await hands.press('Enter');
    await expect.poll(hands.where, { timeout: 60_000 }).toBe('B3');
    await expect.poll(() => hands.shown('B2'), { timeout: 60_000, interval: 500 }).toEqual([['125']]);

    await hands.goTo('B3');
    await page.locator('[data-u-comp="formula-bar"]').click({ position: { x: 300, y: 12 }, delay: 200 });
    await page.waitForFunction("document.activeElement.id.endsWith('FORMULA_BAR')");
    await page.keyboard.type('=CUCURBIT.SEED.NE', { delay: 30 });
    await needed.waitFor({ timeout: 60_000 });
    expect(open.troubles).toEqual([]);
  }, 240_000);
});
