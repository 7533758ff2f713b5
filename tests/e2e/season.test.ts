/** A season's plan in the product's own page: questions answered, a plot sown again, out as a file and in again, other units. */
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { GridHands } from './gridPage/gridHands';
import {
  openPlanPage,
  startEmptyPlan,
  type PaneHands,
  type PlanPage,
  type PlotShown,
  type PlotsShown,
} from './gridPage/planPage';

const typed = [
  'Plot,Crop,Layout,Length,Width,Row spacing,Plant spacing,Hill spacing,Plants per hill,Germination,Days to maturity,Harvest days,Yield per 100,Price',
  'Creek,slicing cucumber,rows,100,20,5,12,,,85%,60,21,130,1.1',
  'Hill,zucchini,hills,60,26,,,6,3,80%,,,,',
].join('\n');

/** In the page. Playwright's own clock replaces the timers too, and the grid's run wild when that happens under them. */
function pretendThatNowIs(moment: string): void {
  const ahead = Date.parse(moment) - Date.now();
  const Real = Date;
  globalThis.Date = class extends Real {
    constructor(...given: []) {
      if (given.length === 0) super(Real.now() + ahead);
      else super(...given);
    }
    static override now(): number {
      return Real.now() + ahead;
    }
  } as DateConstructor;
}

describe('a season in the page', { timeout: 240_000 }, () => {
  let open: PlanPage;
  let hands: GridHands;
  let pane: PaneHands;
  let plots: PlotsShown;
  beforeAll(async () => {
    open = await openPlanPage();
    ({ hands, pane, plots } = open);
    // The questions take the day on which the plan is opened for today.
    await open.page.evaluate(pretendThatNowIs, '2027-07-01T12:00:00Z');
    await startEmptyPlan(pane, '2027-05-02', '2027-10-10');
    await pane.root.getByText('Paste plots from a sheet or a file', { exact: true }).click();
    await pane.root.getByLabel('Rows copied from a sheet, or the text of a CSV file').fill(typed);
    await pane.press('Put 2 plots into the sheet');
    await pane.says('2 plots were put into the sheet.');
  }, 240_000);
  afterAll(() => open.close());

  const question = (heading: string): Locator =>
    pane.root.locator('details', { has: open.page.getByRole('heading', { name: heading, exact: true }) });
  const fill = (of: Locator, label: string, text: string): Promise<void> =>
    of.getByLabel(label, { exact: true }).fill(text);
  /** Waits until the pane has read the first plot calculated. */
  const lists = (first: RegExp): Promise<void> =>
    expect.poll(() => pane.root.locator('.line').first().textContent(), { timeout: 60_000 }).toMatch(first);
  const answers = (of: Locator, text: string): Promise<void> =>
    expect.poll(() => of.locator('.answer').textContent(), { timeout: 60_000 }).toBe(text);
  const pressInPane = async (keys: 'Control+z' | 'Control+y'): Promise<void> => {
    await pane.root.getByRole('button', { name: 'New plot' }).focus();
    await hands.press(keys);
  };

  test('the questions of the season are answered, and nothing is written', async () => {
    // 4 rows 5 ft apart in 20 ft, 100 plants a foot apart in 100 ft.
    await plots.show('Creek', { Plants: '400' });
    await lists(/^Creek .*100 × 20 ft, 400 plants/);
    const before = await plots.all();
    const row = question('How much row for a weekly harvest?');
    await row.locator('summary').click();
    await fill(row, 'Wanted each week', '50');
    await fill(row, 'Crop', 'slicing cucumber');
    await pane.press('Work out the row');
    // 138 lb of 100 ft, the low end of the Nebraska vegetable guide; 14 to 21 days of picking (North Carolina
    // AG-552), 18 in the middle. 50 lb a week for 18/7 weeks are 128.6 lb: 0.932 times 100 ft.
    await answers(row, '93.2 ft of row, at 138 lb/100 ft over 2.6 weeks of picking.');
    await fill(row, 'Yield of 100 of row', '300');
    await fill(row, 'Weeks of picking', '6');
    await pane.press('Work out the row');
    // 50 lb a week for 6 weeks are the 300 lb of 100 ft.
    await answers(row, '100 ft of row, at 300 lb/100 ft over 6 weeks of picking.');

    const seed = question('How much seed for a stand?');
    await seed.locator('summary').click();
    await fill(seed, 'Plants wanted', '100');
    await fill(seed, 'Germination', '80');
    await fill(seed, 'Field emergence', '90');
    await fill(seed, 'Assurance', '95');
    await pane.press('Work out the seed');
    // The least number whose binomial chance of 100 at 0.72 is 95 %, by scipy.
    await answers(seed, '151 seeds, at 80 % germination, 90 % field emergence and 95 % assurance.');
    expect(await plots.all()).toEqual(before);
  });

  test('what still fits before frost is asked for today', async () => {
    const fits = question('What still fits before frost?');
    await fits.locator('summary').click();
    expect(await fits.getByLabel('Sown outdoors on').inputValue()).toBe('2027-07-01');
    await pane.press('List the crops');
    // Back from 10 October by the middle of the published days to maturity, 18 harvest days for pickles and 21 for
    // squash, 14 days of slower growth and 14 clear of frost: 53 + 18 + 28 and 50 + 21 + 28, both 99 days.
    await expect
      .poll(() => fits.locator('dl > div').allTextContents(), { timeout: 60_000 })
      .toEqual([
        'pickling cucumber2 days to spare, until Jul 3, 2027',
        'summer squash2 days to spare, until Jul 3, 2027',
      ]);
    // Bush cucumbers, the next, want 56 + 18 + 28 = 102 days: until 30 June, a day ago.
    const answer = await fits.locator('.answer').textContent();
    expect(answer).toMatch(/^Sown on Jul 1, 2027, 2 crops fit before frost:/);
    expect(answer).toMatch(
      /Too late for the whole harvest of: slicing cucumber, bush cucumber, bush winter squash, /,
    );
    expect(answer).toContain('The Crops sheet lacks a figure for: English cucumber.');
  });

  /** Sowings every 12 days up to the last one, 23 June: 10 October less 60, 21, 14 and 14 days. */
  const sowings: Readonly<Record<string, PlotShown>> = {
    'Creek 2': {
      'Sow or set out on': '2027-05-30',
      'Set out or sow': '2027-05-30',
      'First pick': '2027-07-29',
    },
    'Creek 3': {
      'Sow or set out on': '2027-06-11',
      'Set out or sow': '2027-06-11',
      'First pick': '2027-08-10',
    },
    // After the longest day 14 days more.
    'Creek 4': {
      'Sow or set out on': '2027-06-23',
      'Set out or sow': '2027-06-23',
      'First pick': '2027-09-05',
    },
  };

  test('a plot sown again stands in the sheet as new plots, in one step to undo', async () => {
    await pane.root.getByRole('radio', { name: /^Creek\s/ }).check();
    const again = question('Sow the chosen plot again later');
    await again.locator('summary').click();
    await fill(again, 'First new sowing', '2027-05-30');
    await fill(again, 'Days from one to the next', '12');
    await pane.press('Add these plots');
    await pane.says(/^3 plots were added below "Creek": Creek 2, Creek 3, Creek 4\./);
    await plots.are(['Creek', 'Creek 2', 'Creek 3', 'Creek 4', 'Hill']);
    await plots.show('Creek', { 'Sow or set out on': '', 'Last sowing': '2027-06-23' });
    for (const [plot, shown] of Object.entries(sowings))
      await plots.show(plot, { ...shown, Length: '100', Plants: '400' });
    await pressInPane('Control+z');
    await plots.are(['Creek', 'Hill']);
    await pressInPane('Control+y');
    await plots.are(['Creek', 'Creek 2', 'Creek 3', 'Creek 4', 'Hill']);
    expect(open.troubles).toEqual([]);
  });

  test('saved as .xlsx and opened again, the same plots are there', async () => {
    const before = await plots.all();
    const { bytes } = await pane.takeFile('Save as .xlsx');
    await startEmptyPlan(pane, '2026-05-20', '2026-09-20');
    await plots.are([]);
    await pane.openPlan('season.xlsx', bytes);
    await pane.says(/season\.xlsx is open, with 5 plots/);
    for (const [plot, shown] of Object.entries(sowings)) await plots.show(plot, shown);
    await expect.poll(() => plots.all(), { timeout: 60_000, interval: 500 }).toEqual(before);
    expect(await pane.root.getByLabel('Last frost of spring').inputValue()).toBe('2027-05-02');
  });

  test('other units convert what was typed, there and back; a formula is left and named', async () => {
    // A grid that is put away while it still checks its pick lists says so in the console; nothing hangs on it.
    const ofPutAway = open.troubles.length;
    const width = await plots.addressOf(0, 'Width');
    await hands.typeAlong(width, ['=D8/5']);
    await plots.show('Creek', { Width: '20', Plants: '400' });
    const before = await plots.all();
    const units = pane.section('Season').getByLabel('Units', { exact: true });
    await units.selectOption('metric');
    await pane.press('Put into the sheet');
    // Length, row spacing, plant spacing, yield and price of four plots, three widths; of the hills length, width and spacing.
    await pane.says(
      /^Convert the 26 numbers typed into Plots, into Prices and over the figures of Crops as well\?/,
    );
    expect(await plots.all()).toEqual(before);
    await pane.press('Convert them');
    await pane.says(
      /26 numbers were converted\. Not converted, for formulas of yours stand there: Plots E8\./,
    );
    // 0.3048 m a foot, 2.54 cm an inch, 0.45359237 kg a pound; a pound's price is 0.4536 of a kilogram's.
    const metric = {
      Length: '30.48',
      'Row spacing': '1.524',
      'Plant spacing': '30.48',
      'Yield per 100': '193.46',
    };
    // The formula reads the length, which is in metres now: the same land, the same plants.
    await plots.show('Creek', { ...metric, Width: '6.096', Price: '2.4251', Plants: '400' });
    await plots.show('Creek 2', { ...metric, Width: '6.096', Plants: '400' });
    await plots.show('Hill', { Length: '18.288', Width: '7.9248', 'Hill spacing': '1.8288' });
    expect((await hands.shown('D6:E6')).flat()).toEqual(['m', 'm']);
    await lists(/30\.48 × 6\.096 m, 400 plants/);
    await units.selectOption('us');
    await pane.press('Put into the sheet');
    await pane.press('Convert them');
    await pane.says(/26 numbers were converted\./);
    await plots.show('Creek', { Length: '100', Width: '20' });
    await expect.poll(() => plots.all(), { timeout: 60_000, interval: 500 }).toEqual(before);
    // Still a formula.
    await hands.typeAlong(await plots.addressOf(0, 'Length'), ['50']);
    await plots.show('Creek', { Length: '50', Width: '10' });
    expect(open.troubles.slice(ofPutAway)).toEqual([]);
  });
});
