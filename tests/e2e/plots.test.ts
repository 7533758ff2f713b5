/** Plots in the product's own page: made, pasted, changed, moved and removed from the pane, each undone; and the sheet beside it. */
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

/**
 * Plants by hand: whole rows in the width, whole places in the length. Seeds: the least number whose binomial chance
 * of that many plants is 90 %, the season's assurance, summed up in Python.
 */
const bank: PlotShown = {
  'Taken as': 'summer squash',
  // 3 rows 3.5 ft apart in 12 ft, 22 plants 21 in apart in 40 ft.
  Plants: '66',
  // Of 75 in 100 that germinate.
  'Seed to sow': '95',
};
const east: PlotShown = {
  'Taken as': 'pickling cucumber',
  // 2 rows 5 ft apart in 10 ft, 50 plants a foot apart.
  Plants: '100',
  'Seed to sow': '132',
};
const west: PlotShown = { Plants: '50', 'Seed to sow': '68' };
const pond: PlotShown = {
  'Taken as': 'gourd',
  // 4 hills 8 ft apart in 32 ft, in 2 rows; 2 plants in each.
  Plants: '16',
};

describe('plots in the page', { timeout: 240_000 }, () => {
  let open: PlanPage;
  let hands: GridHands;
  let pane: PaneHands;
  let plots: PlotsShown;
  beforeAll(async () => {
    open = await openPlanPage();
    ({ hands, pane, plots } = open);
    await startEmptyPlan(pane, '2027-05-02', '2027-10-10');
  }, 240_000);
  afterAll(() => open.close());

  const form = (name: string): Locator => pane.root.getByRole('form', { name, exact: true });
  const field = (of: string, label: string): Locator => form(of).getByLabel(label, { exact: true });
  /** What is said at a field. */
  const saidAt = async (of: string, label: string): Promise<string> =>
    (await form(of)
      .locator('.field', { has: open.page.getByText(label, { exact: true }) })
      .textContent()) ?? '';
  const listed = (name: string): Locator => pane.root.getByRole('radio', { name: new RegExp(`^${name}\\s`) });
  const rows = async (): Promise<string[]> =>
    (await pane.root.locator('.line').allTextContents()).map((text) => text.replace(/\s+/g, ' ').trim());
  const lists = (names: readonly string[]): Promise<void> =>
    expect
      .poll(async () => (await rows()).map((row, i) => row.startsWith(`${names[i] ?? '-'} `)), {
        timeout: 60_000,
      })
      .toEqual(names.map(() => true));
  /** In the sheet and in the pane. */
  const are = async (names: readonly string[]): Promise<void> => {
    await plots.are(names);
    await lists(names);
  };
  /** In the pane, at a button: a text field keeps these keys for its text. */
  const pressInPane = async (keys: 'Control+z' | 'Control+y'): Promise<void> => {
    await pane.root.getByRole('button', { name: 'New plot' }).focus();
    await hands.press(keys);
  };
  const paste = async (text: string): Promise<void> => {
    const area = pane.root.getByLabel('Rows copied from a sheet, or the text of a CSV file');
    if (!(await area.isVisible()))
      await pane.root.getByText('Paste plots from a sheet or a file', { exact: true }).click();
    await open.page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
    await area.focus();
    for (const keys of ['Control+a', 'Control+v']) await open.page.keyboard.press(keys);
  };

  test('a crop that is chosen says which figures stand for blanks; they are computed with and not written', async () => {
    await pane.press('New plot');
    await field('New plot', 'Plot').fill('Bank');
    await field('New plot', 'Crop').fill('zucchini');
    await field('New plot', 'Length').fill('40');
    await field('New plot', 'Width').fill('12');
    await form('New plot').getByText('Spacing, seed, flowers, days and yield').click();
    const stands = (value: string): string =>
      `Blank stands for ${value}: the figure for summer squash in the Crops sheet.`;
    // The middle of what Illinois Extension gives: rows 3 to 4 ft apart, plants 18 to 24 in, 45 to 55 days.
    expect(await saidAt('New plot', 'Row spacing')).toContain(stands('3.5 ft'));
    expect(await saidAt('New plot', 'Plant spacing')).toContain(stands('21 in'));
    expect(await saidAt('New plot', 'Days to maturity')).toContain(stands('50 days'));
    // 7 CFR 201.31.
    expect(await saidAt('New plot', 'Germination')).toContain(stands('75 %'));
    await pane.press('Put the new plot into the sheet');
    await pane.says('"Bank" was added.');
    await plots.show('Bank', {
      ...bank,
      Crop: 'zucchini',
      'Row spacing': '',
      'Plant spacing': '',
      'Days to maturity': '',
      Germination: '',
      // A week after the last frost, and 50 days on.
      'Set out or sow': '2027-05-09',
      'First pick': '2027-06-28',
    });
    expect((await plots.all())['Bank']?.['Assumed']).toMatch(
      /^Row spacing\. Plant spacing\. Germination\. .*Days to maturity\. /,
    );
    await expect
      .poll(rows, { timeout: 60_000 })
      .toEqual([expect.stringMatching(/^Bank .*zucchini, 40 × 12 ft, 66 plants, 95 seeds$/)]);
    await pressInPane('Control+z');
    await are([]);
    await pane.says('No plot yet. Make one here, or type a line in the sheet.');
    await pressInPane('Control+y');
    await are(['Bank']);
    await plots.show('Bank', bank);
  });

  test('rows copied from a sheet are looked at first: what is wrong is said by line, and nothing is written', async () => {
    const lines = (crop: string, length: string): string =>
      [
        'Crop\tPlot\tLength\tWidth\tGermination\tPlants',
        `pickling cucumber\tEast\t${length}\t10\t80%\t7`,
        `${crop}\tWest\t50\t5\t80%\t7`,
      ].join('\n');
    const before = await plots.all();
    await paste(lines('pickeling cucumber', 'fifty'));
    await pane.says('Line 2, column Length: "fifty" is not a number.');
    await pane.says(/Line 3, column Crop: "pickeling cucumber" is not known\. Near it: pickling cucumber/);
    await pane.says(/The sheet computes these itself, so they are left out: Plants\./);
    expect(await plots.all()).toEqual(before);
    await paste(lines('pickling cucumber', '50'));
    await pane.press('Put 2 plots into the sheet');
    await pane.says('2 plots were put into the sheet.');
    await are(['Bank', 'East', 'West']);
    await plots.show('East', { ...east, Crop: 'pickling cucumber', Length: '50', Germination: '80%' });
    await plots.show('West', west);
    await pressInPane('Control+z');
    await are(['Bank']);
    await pressInPane('Control+y');
    await are(['Bank', 'East', 'West']);
    await plots.show('East', east);
  });

  test('the text of a CSV file goes in as well, a comma in a name too', async () => {
    await paste(
      'Plot,Crop,Layout,Length,Width,Row spacing,Hill spacing,Plants per hill\n"Pond, north",gourd,hills,32,16,8,8,2\n',
    );
    await pane.press('Put 1 plot into the sheet');
    await pane.says('1 plot was put into the sheet.');
    await are(['Bank', 'East', 'West', 'Pond, north']);
    await plots.show('Pond, north', { ...pond, Layout: 'hills', 'Hill spacing': '8' });
    await pressInPane('Control+z');
    await are(['Bank', 'East', 'West']);
  });

  test('a plot is changed where something was typed, and undone', async () => {
    await listed('West').check();
    await pane.press('Change');
    await expect.poll(() => field('Change West', 'Length').inputValue()).toBe('50');
    await field('Change West', 'Width').fill('-5');
    await pane.press('Put the plot into the sheet');
    await pane.says('Nothing was written. Mend the marked fields first.');
    expect(await saidAt('Change West', 'Width')).toContain(
      '-5 does not fit. It must be above 0 and at most 1000000.',
    );
    await plots.show('West', { ...west, Width: '5' });
    await field('Change West', 'Width').fill('10');
    await pane.press('Put the plot into the sheet');
    await pane.says('Put into the sheet: Width.');
    // As East then, by its sides.
    await plots.show('West', { ...east, Width: '10' });
    await plots.show('East', east);
    await pressInPane('Control+z');
    await plots.show('West', { ...west, Width: '5' });
    await expect
      .poll(rows, { timeout: 60_000 })
      .toContainEqual(expect.stringContaining('50 × 5 ft, 50 plants'));
  });

  test('a plot is duplicated, moved and removed by buttons, and each is one step to undo', async () => {
    const before = await plots.all();
    await listed('East').check();
    await pane.press('Duplicate');
    await pane.says('"East" was duplicated as "East 2", right below it.');
    await are(['Bank', 'East', 'East 2', 'West']);
    await plots.show('East 2', { ...east, Length: '50', Germination: '80%' });
    await pane.press('Move down');
    await pane.says('"East 2" is line 4 of 4 now.');
    await are(['Bank', 'East', 'West', 'East 2']);
    await pane.press('Move up');
    await pane.says('"East 2" is line 3 of 4 now.');
    await are(['Bank', 'East', 'East 2', 'West']);
    await pane.press('Remove');
    await pane.says('Remove "East 2" with all that stands in its line?');
    await pane.press('Keep it');
    await are(['Bank', 'East', 'East 2', 'West']);
    await pane.press('Remove');
    await pane.press('Remove it');
    await pane.says(/^"East 2" was removed\./);
    await are(['Bank', 'East', 'West']);
    for (const names of [
      ['Bank', 'East', 'East 2', 'West'],
      ['Bank', 'East', 'West', 'East 2'],
      ['Bank', 'East', 'East 2', 'West'],
      ['Bank', 'East', 'West'],
    ]) {
      await pressInPane('Control+z');
      await are(names);
    }
    expect(await plots.all()).toEqual(before);
  });

  test('all of it goes by the keyboard alone', async () => {
    const { keyboard } = open.page;
    const button = (name: string): Locator => pane.root.getByRole('button', { name, exact: true });
    /** From where the keyboard is. */
    const walk = async (key: 'Tab' | 'Shift+Tab', to: Locator): Promise<void> => {
      for (let step = 0; step < 200; step++) {
        if (await to.evaluate((one) => one === document.activeElement)) return;
        await keyboard.press(key);
      }
      throw new Error(`${key} does not lead to ${String(to)}`);
    };
    // To look at the sheet leaves the pane; F6 leads back to where the keyboard was in it.
    await plots.show('East', east);
    await hands.press('F6');
    await walk('Tab', button('New plot'));
    await keyboard.press('Enter');
    for (const [label, text] of [
      ['Plot', 'Lane'],
      ['Crop', 'pickling cucumber'],
      ['Length', '50'],
      ['Width', '10'],
      ['Germination', '80'],
    ] as const) {
      await walk('Tab', field('New plot', label));
      await keyboard.type(text);
    }
    await walk('Tab', button('Put the new plot into the sheet'));
    await keyboard.press('Enter');
    await pane.says('"Lane" was added.');
    await are(['Bank', 'East', 'West', 'Lane']);
    await plots.show('Lane', east);

    // Up to the list, and along it.
    await hands.press('F6');
    await walk('Shift+Tab', listed('Lane'));
    await keyboard.press('ArrowUp');
    expect(await listed('West').isChecked()).toBe(true);
    await walk('Tab', button('Move up'));
    await keyboard.press('Enter');
    await pane.says('"West" is line 2 of 4 now.');
    await keyboard.press('Control+z');
    await are(['Bank', 'East', 'West', 'Lane']);
    await hands.press('F6');
    await walk('Tab', button('Move down'));
    await keyboard.press('Enter');
    await pane.says('"West" is line 4 of 4 now.');
    await are(['Bank', 'East', 'Lane', 'West']);

    await hands.press('F6');
    await walk('Shift+Tab', button('Duplicate'));
    await keyboard.press('Enter');
    await pane.says('"West" was duplicated as "West 2", right below it.');
    await are(['Bank', 'East', 'Lane', 'West', 'West 2']);
    await hands.press('F6');
    await walk('Tab', button('Remove'));
    await keyboard.press('Enter');
    await expect.poll(() => button('Remove it').evaluate((one) => one === document.activeElement)).toBe(true);
    await keyboard.press('Enter');
    await pane.says(/^"West 2" was removed\./);
    await are(['Bank', 'East', 'Lane', 'West']);

    await hands.press('F6');
    await walk('Tab', button('Change'));
    await keyboard.press('Enter');
    await walk('Tab', field('Change West', 'Width'));
    await keyboard.press('Control+a');
    await keyboard.type('10');
    await keyboard.press('Enter');
    await pane.says('Put into the sheet: Width.');
    await plots.show('West', east);
    await hands.press('Control+z');
    await plots.show('West', west);
    expect(open.troubles).toEqual([]);
  });

  test('what is typed into the grid shows in the pane, also in a form that is open', async () => {
    await listed('East').check();
    await pane.press('Change');
    await expect.poll(() => field('Change East', 'Length').inputValue()).toBe('50');
    await hands.typeAlong(await plots.addressOf(1, 'Length'), ['60']);
    // 2 rows of 60 plants; their seeds as those above.
    await plots.show('East', { Plants: '120', 'Seed to sow': '158' });
    await expect.poll(() => field('Change East', 'Length').inputValue(), { timeout: 60_000 }).toBe('60');
    await expect
      .poll(rows, { timeout: 60_000 })
      .toContainEqual(expect.stringContaining('pickling cucumber, 60 × 10 ft, 120 plants, 158 seeds'));
    await pane.press('Close without writing');
    await hands.typeAlong(await plots.addressOf(1, 'Plot'), ['Meadow']);
    await lists(['Bank', 'Meadow', 'Lane', 'West']);
    expect(open.troubles).toEqual([]);
  });
});
