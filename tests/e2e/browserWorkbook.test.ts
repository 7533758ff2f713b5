/** The product's own page, as a grower opens it: calculated, changed from the pane, refreshed, refused. */
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openGridPage, type GridPage } from './gridPage/openGridPage';

const entries = join(import.meta.dirname, '../../src/entries');

describe('the browser workbook', () => {
  let open: GridPage;
  beforeAll(async () => {
    open = await openGridPage({
      script: join(entries, 'browser.ts'),
      frame: join(entries, 'browser.html'),
    });
    await open.page.waitForSelector('#pane h1', { timeout: 120_000 });
  }, 240_000);
  afterAll(() => open.close());

  const says = async (text: string | RegExp): Promise<void> =>
    open.page.locator('#pane').getByText(text).first().waitFor({ timeout: 60_000, state: 'attached' });
  const pane = () => open.page.locator('#pane');

  test('opens filled and calculated, with what to look at named', async () => {
    await says('2027-05-16');
    await says(/To look at \(\d+\)/);
    await says(/Germination below the federal standard/);
    expect(open.troubles).toEqual([]);
  });

  test('a frost date changed in the pane moves the dates in the sheet', async () => {
    await pane().getByLabel('Last frost of spring').fill('2027-05-12');
    await pane().getByRole('button', { name: 'Put into the sheet' }).click();
    // Ten days later, hand computed: 14 days after 12 May.
    await says('2027-05-26');
  });

  test('frosts the wrong way round are refused beside the field, and nothing is written', async () => {
    await pane().getByLabel('First frost of fall').fill('2027-04-01');
    await pane().getByRole('button', { name: 'Put into the sheet' }).click();
    await says(/Nothing was written/);
    await pane().getByRole('button', { name: 'Drop my changes' }).click();
    await says('2027-05-26');
  });

  test('refreshing says what it did', async () => {
    await pane().getByRole('button', { name: 'Refresh the sheets' }).click();
    await says(/Refreshed: Season, Plots, Crops, Crop ranges/);
    expect(open.troubles).toEqual([]);
  });
});
