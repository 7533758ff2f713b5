/** A daily record in the product's own page: loaded from a file, looked at, put into the sheets, followed by Season. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { threeYears } from '../commands/recordText';
import { openPlanPage, type PaneHands, type PlanPage } from './gridPage/planPage';

describe('the weather in the page', { timeout: 240_000 }, () => {
  let open: PlanPage;
  let pane: PaneHands;
  beforeAll(async () => {
    open = await openPlanPage();
    pane = open.pane;
  }, 240_000);
  afterAll(() => open.close());

  const section = () => pane.section('Weather');
  const frosts = (): Promise<string[]> => section().locator('table.compared td').allTextContents();

  test('a file is read, and what is doubtful in it named by line', async () => {
    const text = threeYears.replace('2021-06-10,25,14', '2021-06-10,14,25');
    await section()
      .locator('input[type=file]')
      .setInputFiles({ name: 'record.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    await pane.says('1095 days, 2021-01-01 to 2023-12-31, in Celsius (as the header says).');
    await pane.says('Line 162: The low (25) is above the high (14).');
    await pane.says('Line 1096: 3 springs count and 3 falls.');
  });

  test('pasted, it goes into the sheets, and its frost dates stand beside those of Season', async () => {
    await open.page.evaluate((text) => navigator.clipboard.writeText(text), threeYears);
    await section().getByLabel('Rows of a daily record').focus();
    for (const key of ['Control+a', 'Control+v']) await open.page.keyboard.press(key);
    await pane.press('Put 1095 days into the Weather sheets');
    await pane.says('1095 days were put into Weather, Weather record.');
    // The middle ones of three springs and three falls, by hand.
    await expect
      .poll(frosts, { timeout: 60_000, interval: 500 })
      .toEqual(['', 'Apr 20, 2027', 'May 2, 2027', 'Oct 11, 2027', 'Oct 10, 2027']);
  });

  test('Season follows it, and gives it up for a date that is typed', async () => {
    await pane.press('Have Season follow the record');
    await pane.says('Season follows the record now');
    const field = pane.root.getByLabel('Last frost of spring');
    await expect.poll(() => field.inputValue(), { timeout: 60_000 }).toBe('2027-04-20');
    await field.fill('2027-05-12');
    await pane.press('Put into the sheet');
    await expect
      .poll(frosts, { timeout: 60_000, interval: 500 })
      .toEqual(['', 'Apr 20, 2027', 'May 12, 2027', 'Oct 11, 2027', 'Oct 11, 2027']);
  });

  test('nothing of it sticks out of a narrow pane, and the page had no trouble', async () => {
    await open.page.setViewportSize({ width: 320, height: 700 });
    const width = (): Promise<number> => section().evaluate((one) => one.scrollWidth - one.clientWidth);
    await expect.poll(width, { timeout: 20_000 }).toBeLessThanOrEqual(0);
    expect(open.troubles).toEqual([]);
  });
});
