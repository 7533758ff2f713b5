// @vitest-environment jsdom
/** The weather in the pane over the real browser workbook, with its engine and our functions. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import type { ReadValue } from '../../src/workbook/port';
import { recordText, threeYears } from '../commands/recordText';
import { openGridPane, type GridPane } from './openGridPane';
import { enter, until } from './openPane';

let pane: GridPane;

const plots = [
  { Plot: 'Creek', Crop: 'slicing cucumber', Length: 100, Width: 20, 'Sow or set out on': 46520 },
  { Plot: 'Tray', Crop: 'muskmelon', Length: 60, Width: 26, Start: 'transplant' },
];

beforeEach(async () => {
  pane = await openGridPane(plots);
}, 120_000);
afterEach(() => pane.close());

const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);
const section = (): HTMLElement => pane.section('Weather');
const area = (): HTMLInputElement => pane.field('Rows of a daily record, or the text of its file');
const paste = (text: string): void => enter(area(), text);
const doubts = (): string[] =>
  [...section().querySelectorAll('.problems li')].map((one) => one.textContent ?? '');
const choose = (label: string, value: string): void => {
  const field = pane.field(label);
  field.value = value;
  field.dispatchEvent(new Event('input', { bubbles: true }));
};
const named = async (name: string): Promise<ReadValue> => {
  expect(await pane.workbook.settle(20_000)).toEqual([]);
  const found = await pane.workbook.locate(name);
  return found === null ? null : ((await pane.workbook.read(found)).values[0]?.[0] ?? null);
};
const cells = (): string[] => [...section().querySelectorAll('table td')].map((one) => one.textContent ?? '');
const result = (label: string): string =>
  [...section().querySelectorAll('dt')].find((one) => one.textContent === label)?.nextElementSibling
    ?.textContent ?? 'none';
const putIn = (days: number): Promise<void> =>
  pane.press(
    `Put ${days} days into the Weather sheets`,
    `${days} days were put into Weather, Weather record.`,
  );

describe('a record that is pasted', () => {
  it('is looked at first: what was found, and what is doubtful, by line', () => {
    paste(threeYears.replace('2021-06-10,25,14', '2021-06-10,14,25'));
    expect(pane.spoken()).toContain('1095 days, 2021-01-01 to 2023-12-31, in Celsius (as the header says).');
    expect(doubts()).toContain(
      'Line 162: The low (25) is above the high (14). Both were left empty: which is right is not to be known.',
    );
    expect(pane.button('Put 1095 days into the Weather sheets').hidden).toBe(false);
  });

  it('takes the place of what is marked, at once', () => {
    enter(area(), 'Date,High,Low\nold', true);
    area().setSelectionRange(14, 17);
    const event = new Event('paste', { cancelable: true });
    const clipboardData = { getData: (type: string) => (type === 'text/plain' ? '2021-07-01,90,60' : '') };
    area().dispatchEvent(Object.assign(event, { clipboardData }));
    expect([area().value, event.defaultPrevented]).toEqual(['Date,High,Low\n2021-07-01,90,60', true]);
    expect(pane.spoken()).toContain(
      '1 day, 2021-07-01 to 2021-07-01, in Fahrenheit (going by the temperatures',
    );
  });

  it('that cannot be used has no button, and says first why', () => {
    paste('Date,High\n2021-01-01,12\n');
    expect(pane.spoken()).toContain('This record cannot be used as it is.');
    expect(doubts()[0]).toBe(
      'Line 1: No column holds the low. Name it in the header, such as Low or Minimum temperature.',
    );
    expect(section().querySelector<HTMLButtonElement>('button.main')?.hidden).toBe(true);
    pane.button('Empty the record field').click();
    expect([area().value, doubts()]).toEqual(['', []]);
  });

  it('takes the units and the hemisphere that are chosen', () => {
    paste('Date,High,Low\n2021-01-01,12,2\n');
    expect(doubts()[0]).toContain('Fahrenheit or Celsius?');
    choose('Temperatures in', 'metric');
    expect(pane.spoken()).toContain('1 day, 2021-01-01 to 2021-01-01, in Celsius (as you chose).');
    paste(threeYears);
    choose('The place lies in the', 'south');
    expect(doubts()[0]).toContain('The warm half of the year is that of the north.');
  });
});

describe('a record of one July in the sheets', () => {
  it('is answered in words wherever it is too short', async () => {
    paste(recordText('2021-07-01', '2021-07-31', []));
    await putIn(31);
    await until(() => expect(result('Frost-free days, middle')).toBe('no year counts'));
    expect(result('Days between those dates')).toBe('no frost date');
    expect(result('slicing cucumber')).toBe('cannot be told');
    expect(section().textContent).toContain(
      'In no year does the record run from the sowing that is compared to the last one.',
    );
    expect(section().textContent).not.toMatch(/#(?:REF|VALUE|NUM|N\/A)/);
  });
});

describe('a record in the sheets', () => {
  beforeEach(async () => {
    paste(threeYears);
    await putIn(1095);
  }, 120_000);

  it('is a table of dates and numbers', async () => {
    const { headers, rows } = await pane.table('Weather');
    expect(headers).toEqual(['Date', 'High', 'Low']);
    expect([rows[0], rows.length]).toEqual([[serial('2021-01-01'), 12, 2], 1095]);
    expect(await named('RECORD_UNITS')).toBe('metric');
    expect(area().value).toBe('');
  });

  it('shows its frost dates beside those of Season, which follows when asked', async () => {
    // Of three springs and falls the middle ones, for the 2027 of the season.
    await until(() =>
      expect(cells().slice(1)).toEqual(['Apr 20, 2027', 'May 2, 2027', 'Oct 11, 2027', 'Oct 10, 2027']),
    );
    await pane.press('Have Season follow the record', 'Season follows the record now');
    expect(await named('LAST_FROST')).toBe(serial('2027-04-20'));
    expect(await named('FIRST_FROST')).toBe(serial('2027-10-11'));
    await until(() =>
      expect(section().textContent).toContain('Season follows the record. A date typed there'),
    );
  });

  it('goes on saying that few seasons stand behind the dates', async () => {
    await until(() =>
      expect(section().textContent).toContain('Out of 3 seasons: under 20 one more can move'),
    );
    expect(result('How far to trust the dates')).toBe('few seasons');
  });

  it('gives other dates for another risk', async () => {
    await pane.press('Have Season follow the record', 'Season follows the record now');
    enter(pane.field('Risk those dates carry'), '10');
    await pane.press('Put into the sheet', 'Risk those dates carry');
    // By hand: 50 + 0.8 x 10 days after 1 March; 214 + 0.2 x 10.
    expect(await named('LAST_FROST')).toBe(serial('2027-04-28'));
    expect(await named('FIRST_FROST')).toBe(serial('2027-10-03'));
  });

  it('shows what the sheet makes of it', async () => {
    // Last frosts 10, 20, 30 April; first 1, 11, 21 October: each year has 174 days between.
    await until(() => expect(result('Frost-free days, middle')).toBe('174'));
    expect(result('Frost-free days, least')).toBe('174');
    // Before Season's 10 October it froze in one fall of three.
    expect(result("Frost before Season's first frost")).toBe('33.3 %');
    expect(result('slicing cucumber')).toMatch(
      /^\d+ °C days over \d+ days, above [\d.]+ \(HortTechnology 6\(1\):27-30\)$/,
    );
    // From Season's day to sow outdoors, by the last year of the record. Days of 25 °C over the base of 15.5 from June
    // on: 14 of them in midsummer are 133 degree days, so the second sowing is 14 days after the first of June.
    expect(section().textContent).toContain('By the heat of 2023: May 9, 2027; Jun 15, 2027; Jun 29, 2027.');
  });

  it('is compared with a plot that is sown where it grows', async () => {
    const plot = pane.field('Compare a plot') as unknown as HTMLSelectElement;
    expect([...plot.options].map(({ text }) => text)).toEqual(['choose', 'Creek']);
    plot.selectedIndex = 1;
    plot.dispatchEvent(new Event('change'));
    await until(() =>
      expect(pane.spoken()).toContain('Put into the sheet: Crop that gathers heat, Sown on.'),
    );
    expect(await named('HEAT_SOWING')).toBe(46520);
    expect(await named('HEAT_CROP')).toBe('slicing cucumber');
  });

  it('tells sources apart where a crop stands twice', async () => {
    await until(() => expect(result('slicing cucumber')).toMatch(/degrees|days/));
    const said = [...section().querySelectorAll('dt')]
      .filter((one) => one.textContent === 'slicing cucumber')
      .map((one) => /\((.*)\)$/.exec(one.nextElementSibling?.textContent ?? '')?.[1]);
    expect(said).toHaveLength(2);
    expect(new Set(said).size).toBe(2);
  });

  it('gives way to another only when that is said, whole, shorter or longer', async () => {
    const two = recordText('2021-07-24', '2023-07-23', [
      '2021-10-01',
      '2022-04-20',
      '2022-10-11',
      '2023-04-24',
    ]);
    paste(two);
    pane.button('Put 730 days into the Weather sheets').click();
    await until(() =>
      expect(section().textContent).toContain(
        'The Weather sheets hold a record of 1095 days, Jan 1, 2021 to Dec 31, 2023. Put this one in its place?',
      ),
    );
    pane.button('Leave the old one').click();
    expect((await pane.table('Weather')).rows[0]?.[0]).toBe(serial('2021-01-01'));
    pane.button('Put 730 days into the Weather sheets').click();
    await until(() => expect(pane.root.getAttribute('aria-busy')).toBe('false'));
    await pane.press('Put it in its place', '730 days were put in place of the old record.');
    const { rows } = await pane.table('Weather');
    expect([rows[0]?.[0], rows[729]?.[0], rows[730]?.[0], rows.length]).toEqual([
      serial('2021-07-24'),
      serial('2023-07-23'),
      null,
      1095,
    ]);
    await pane.workbook.settle(20_000);
    // Springs of 20 and 24 April: the mean.
    expect(await named('WEATHER_LAST_FROST')).toBe(serial('2027-04-22'));
  });

  it('leaves a formula of somebody in Season, and says so', async () => {
    const place = await pane.workbook.locate('FIRST_FROST');
    if (place === null) throw new Error('no FIRST_FROST');
    await pane.type(place.sheet, place.row, place.column, { f: '=DATE(2027,10,8)' });
    await pane.press(
      'Have Season follow the record',
      'Formulas of yours stand in Season at First frost of fall, so they stay. Empty those cells first.',
    );
    expect(await named('LAST_FROST')).toBe(46509);
  });

  it('where it freezes in too few years for the risk leaves Season, and says what to do', async () => {
    paste(recordText('2020-07-24', '2023-07-23', ['2021-04-10']));
    pane.button('Put 1095 days into the Weather sheets').click();
    await until(() => expect(section().textContent).toContain('Put this one in its place?'));
    await pane.press('Put it in its place', '1095 days were put in place of the old record.');
    await until(() => expect(section().textContent).toContain('Frost comes in fewer years than that'));
    await pane.press('Have Season follow the record', 'Season was left as it is. Frost comes in fewer years');
    expect(await named('LAST_FROST')).toBe(46509);
  });
});
