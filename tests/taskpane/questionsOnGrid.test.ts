// @vitest-environment jsdom
/** Season questions of the pane over the real browser workbook, and a plot sown again. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { crops } from '../../src/reference/crops';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import { run } from '../functions/run';
import { openGridPane, type GridPane } from './openGridPane';
import { enter, until } from './openPane';
import { saidDay } from './saidDay';

let pane: GridPane;
const plots = [
  {
    Plot: 'Creek',
    Crop: 'slicing cucumber',
    Length: 100,
    Width: 20,
    'Days to maturity': 60,
    'Harvest days': 21,
  },
  { Plot: 'Hill', Crop: 'gourd', Length: 60, Width: 26 },
];
beforeEach(async () => {
  pane = await openGridPane(plots);
}, 120_000);
afterEach(() => pane.close());

const question = (heading: string): HTMLElement => {
  const found = [...pane.root.querySelectorAll('details')].find(
    (one) => one.querySelector('summary')?.textContent === heading,
  );
  if (found === undefined) throw new Error(`no question ${heading}`);
  return found;
};
const field = (within: HTMLElement, label: string): HTMLInputElement => {
  const found = [...within.querySelectorAll('label')].find((one) => one.textContent === label);
  return within.querySelector(`#${found?.htmlFor}`) as HTMLInputElement;
};
const answer = (within: HTMLElement): string => within.querySelector('.answer')?.textContent ?? '';
const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);

describe('a question', () => {
  it('about the row for a weekly harvest takes the figures of Crops, or those given', () => {
    const row = question('How much row for a weekly harvest?');
    pane.button('Work out the row').click();
    expect(row.textContent).toContain('This is needed for an answer.');
    enter(field(row, 'Wanted each week'), '50');
    enter(field(row, 'Crop'), 'cucmber');
    expect(row.textContent).toContain(
      '"cucmber" is not known. Near it: cucumber (taken as slicing cucumber)',
    );
    enter(field(row, 'Crop'), 'slicing cucumber');
    pane.button('Work out the row').click();
    const perHundred = run('CROP.VALUE', 'slicing cucumber', 'yield per 100', 'low');
    const weeks = Number(run('CROP.VALUE', 'slicing cucumber', 'harvest days')) / 7;
    const length = Number(run('ROW.FORDEMAND', 50, perHundred, weeks));
    expect(answer(row)).toContain(
      `${Number(length.toFixed(1))} ft of row, at ${String(perHundred)} lb/100 ft over`,
    );
    enter(field(row, 'Yield of 100 of row'), '300');
    enter(field(row, 'Weeks of picking'), '6');
    pane.button('Work out the row').click();
    // 50 a week for 6 weeks are 300, the yield of 100 ft.
    expect(answer(row)).toBe('100 ft of row, at 300 lb/100 ft over 6 weeks of picking.');
    enter(field(row, 'Weeks of picking'), '5');
    expect(answer(row)).toBe('');
  });

  it('says beside its answer when the sheets have changed since, while that makes another', async () => {
    const fits = question('What still fits before frost?');
    const row = question('How much row for a weekly harvest?');
    enter(field(fits, 'Sown outdoors on'), '2027-07-01');
    pane.button('List the crops').click();
    enter(field(row, 'Wanted each week'), '50');
    enter(field(row, 'Crop'), 'slicing cucumber');
    pane.button('Work out the row').click();
    const old = 'The sheets have changed since, and the answer with them. Press "List the crops" again.';
    expect(fits.textContent).not.toContain(old);
    const frost = await pane.workbook.locate('FIRST_FROST');
    if (frost === null) throw new Error('no first frost');
    await pane.type('Season', frost.row, frost.column, { v: serial('2027-09-20') });
    await until(() => expect(fits.textContent).toContain(old));
    expect(row.textContent).not.toContain('The sheets have changed since');
    pane.button('List the crops').click();
    expect(fits.textContent).not.toContain(old);
    await pane.type('Season', frost.row, frost.column, { v: serial('2027-10-10') });
    await until(() => expect(fits.textContent).toContain(old));
    await pane.type('Season', frost.row, frost.column, { v: serial('2027-09-20') });
    await until(() => expect(fits.textContent).not.toContain(old));
  });

  it('about seed for a stand is answered at the assurance of the season, with the weight', () => {
    const seed = question('How much seed for a stand?');
    enter(field(seed, 'Plants wanted'), '100');
    for (const asked of ['Germination', 'Field emergence']) {
      enter(field(seed, asked), '1');
      expect(seed.textContent).toContain('This field is in percent: for 1 as a share, type 100.');
      enter(field(seed, asked), '');
    }
    enter(field(seed, 'Germination'), '80');
    enter(field(seed, 'Field emergence'), '90');
    enter(field(seed, 'Assurance'), '95');
    pane.button('Work out the seed').click();
    // functions.md: 100 plants at 0.8, 0.9 and 0.95 want 151 seeds, as scipy's binomial gives it.
    expect(answer(seed)).toBe('151 seeds, at 80 % germination, 90 % field emergence and 95 % assurance.');
    enter(field(seed, 'Assurance'), '');
    enter(field(seed, 'Crop'), 'zucchini');
    pane.button('Work out the seed').click();
    expect(answer(seed)).toContain(
      `${String(run('SEED.NEEDED', 100, 0.8, 0.9, 0.9))} seeds, at 80 % germination`,
    );
    enter(field(seed, 'Germination'), '');
    enter(field(seed, 'Crop'), 'gourd');
    pane.button('Work out the seed').click();
    expect(answer(seed)).toBe('There is no germination standard for this crop. Give the germination.');
  });

  it('about what still fits counts from the first sowing when the day asked is before it', () => {
    const fits = question('What still fits before frost?');
    const shownFor = (date: string): (string | null)[] => {
      enter(field(fits, 'Sown outdoors on'), date);
      pane.button('List the crops').click();
      return [...fits.querySelectorAll('dl > div')].map((one) => one.textContent);
    };
    // The last frost is on 2 May, and sowing outdoors begins 7 days later.
    const fromFirst = shownFor('2027-05-09');
    expect(fromFirst.length).toBeGreaterThan(5);
    expect(shownFor('2026-11-26')).toEqual(fromFirst);
    expect(fits.textContent).toContain('Sowing outdoors begins on May 9, 2027');
    expect(fits.textContent).toContain('Sown on May 9, 2027');
  });

  it.each(['2027-12-01', '2028-05-20'])('about what still fits says that %s is past this plan', (date) => {
    const fits = question('What still fits before frost?');
    enter(field(fits, 'Sown outdoors on'), date);
    pane.button('List the crops').click();
    expect(answer(fits)).toBe(
      `${saidDay(date)} is after the first frost of this plan, Oct 10, 2027. Check the year, here and in the frost dates of the Season sheet.`,
    );
  });

  it('about what still fits lists the crops by days to spare', () => {
    const fits = question('What still fits before frost?');
    enter(field(fits, 'Sown outdoors on'), '2027-07-01');
    pane.button('List the crops').click();
    const expected = crops
      .map(({ name }) => {
        const figure = (trait: string): unknown => run('CROP.VALUE', name, trait);
        const last = run(
          'DATE.LASTSOWING',
          serial('2027-10-10'),
          figure('days to maturity'),
          figure('harvest days'),
          figure('fall days'),
          figure('frost margin'),
        );
        return { name, last: saidDay(String(last)), days: serial(String(last)) - serial('2027-07-01') };
      })
      .sort((a, b) => b.days - a.days);
    const shown = [...fits.querySelectorAll('dl > div')].map((one) => one.textContent);
    const fitting = expected.filter(({ days }) => days >= 0);
    expect(fitting.length).toBeGreaterThan(0);
    expect(fitting.length).toBeLessThan(crops.length);
    expect(shown).toEqual(
      fitting.map(
        ({ name, last, days }) => `${name}${days} ${days === 1 ? 'day' : 'days'} to spare, until ${last}`,
      ),
    );
    for (const { name } of expected.filter(({ days }) => days < 0)) {
      expect(answer(fits).split('Too late for the whole harvest of: ')[1]).toContain(name);
    }
    enter(field(fits, 'Sown outdoors on'), '2027-04-01');
    pane.button('List the crops').click();
    expect(answer(fits)).toContain('Sowing outdoors begins on May 9, 2027');
  });
});

describe('a plot sown again', () => {
  it('becomes new plots, each on its day, until the last sowing, in one step', async () => {
    pane.root.querySelector<HTMLInputElement>('[type=radio]')?.click();
    const again = question('Sow the chosen plot again later');
    enter(field(again, 'First new sowing'), '2027-05-30');
    enter(field(again, 'Days from one to the next'), '12');
    await pane.press('Add these plots', '3 plots were added below "Creek": Creek 2, Creek 3, Creek 4.');
    expect(await pane.column('Plot')).toEqual(['Creek', 'Creek 2', 'Creek 3', 'Creek 4', 'Hill']);
    // Every 12 days up to the 23rd of June: 10 October less 60, 21, 14 and 14 days.
    const days = [serial('2027-05-30'), serial('2027-06-11'), serial('2027-06-23')];
    expect(await pane.column('Sow or set out on')).toEqual([null, ...days, null]);
    expect((await pane.column('Set out or sow')).slice(0, 4)).toEqual([serial('2027-05-09'), ...days]);
    expect((await pane.column('Length')).slice(0, 4)).toEqual([100, 100, 100, 100]);
    await pane.workbook.undo();
    expect(await pane.column('Plot')).toEqual(['Creek', 'Hill']);
  });

  it('from a numbered one counts on', async () => {
    await pane.type('Plots', 7, 0, { v: 'Creek 2' });
    await until(() => expect(pane.root.querySelector('.line')?.textContent).toContain('Creek 2'));
    pane.root.querySelector<HTMLInputElement>('[type=radio]')?.click();
    const again = question('Sow the chosen plot again later');
    enter(field(again, 'First new sowing'), '2027-05-30');
    enter(field(again, 'Days from one to the next'), '14');
    await pane.press('Add these plots', '2 plots were added below "Creek 2": Creek 3, Creek 4.');
  });

  it('says what is wanting, and nothing more once another plot or day is chosen', async () => {
    const radios = pane.root.querySelectorAll<HTMLInputElement>('[type=radio]');
    radios[1]?.click();
    const again = question('Sow the chosen plot again later');
    pane.button('Add these plots').click();
    expect(again.textContent).toContain('The new plots cannot be dated without this. Fill it in.');
    enter(field(again, 'First new sowing'), '2027-05-30');
    enter(field(again, 'Days from one to the next'), '14');
    enter(field(again, 'Last new sowing'), '2027-05-01');
    pane.button('Add these plots').click();
    await until(() => expect(pane.spoken()).toContain('2027-05-01'));
    enter(field(again, 'Last new sowing'), '2027-05-30');
    expect(pane.spoken()).not.toContain('2027-05-01');
    await pane.press('Add these plots', '1 plot was added below "Hill"');
    radios[0]?.click();
    expect(pane.spoken()).not.toContain('was added');
  });

  it('many times asks first, and adds none or all', async () => {
    pane.root.querySelector<HTMLInputElement>('[type=radio]')?.click();
    const again = question('Sow the chosen plot again later');
    enter(field(again, 'First new sowing'), '2027-05-30');
    // 30 May to 11 June are 13 days.
    enter(field(again, 'Last new sowing'), '2027-06-11');
    enter(field(again, 'Days from one to the next'), '1');
    const asks = again.querySelector<HTMLElement>('.asks');
    pane.button('Add these plots').click();
    expect(asks?.hidden).toBe(false);
    expect(asks?.textContent).toContain('That adds 13 plots below "Creek".');
    pane.button('Add none').click();
    expect(asks?.hidden).toBe(true);
    expect(await pane.column('Plot')).toEqual(['Creek', 'Hill']);

    pane.button('Add these plots').click();
    enter(field(again, 'Last new sowing'), '2027-06-12');
    expect(asks?.hidden).toBe(true);
    pane.button('Add these plots').click();
    await pane.press('Add the plots', '14 plots were added below "Creek"');
    expect(asks?.hidden).toBe(true);
    expect(await pane.column('Plot')).toHaveLength(16);
  });

  it('many times asks no more once another plot is chosen, and of that one when it is asked again', async () => {
    const radios = pane.root.querySelectorAll<HTMLInputElement>('[type=radio]');
    radios[0]?.click();
    const again = question('Sow the chosen plot again later');
    enter(field(again, 'First new sowing'), '2027-05-30');
    enter(field(again, 'Last new sowing'), '2027-06-11');
    enter(field(again, 'Days from one to the next'), '1');
    pane.button('Add these plots').click();
    const asks = again.querySelector<HTMLElement>('.asks');
    expect(asks?.hidden).toBe(false);
    radios[1]?.click();
    await until(() => expect(asks?.hidden).toBe(true));
    pane.button('Add these plots').click();
    expect(asks?.textContent).toContain('below "Hill"');
    expect(await pane.column('Plot')).toEqual(['Creek', 'Hill']);
  });

  it('past the season is written as asked, and said in Notes', async () => {
    pane.root.querySelector<HTMLInputElement>('[type=radio]')?.click();
    const again = question('Sow the chosen plot again later');
    enter(field(again, 'First new sowing'), '2027-07-20');
    enter(field(again, 'Last new sowing'), '2027-07-01');
    enter(field(again, 'Days from one to the next'), '7');
    pane.button('Add these plots').click();
    await until(() => expect(pane.spoken()).toMatch(/2027-07-01/));
    expect(await pane.column('Plot')).toEqual(['Creek', 'Hill']);
    enter(field(again, 'Last new sowing'), '2027-07-20');
    await pane.press('Add these plots', '1 plot was added');
    expect((await pane.column('Notes'))[1]).toContain('Sown after the last date');
  });
});
