/** Functions and crops in the product's own page: looked up, put into a cell, compared, and read on pages of their own. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wrapperFiles } from '../functions/describedFunctions';
import type { GridHands } from './gridPage/gridHands';
import { openPlanPage, type PlanPage } from './gridPage/planPage';

const source = join(import.meta.dirname, '../../src');
interface Pages {
  writePages(): Promise<Readonly<Record<string, string>>>;
}
const FunctionPages = createRequire(import.meta.url)(join(source, 'entries/functionPagesPlugin.cjs')) as new (
  said: object,
) => Pages;

describe('the guide in the page', { timeout: 240_000 }, () => {
  let open: PlanPage;
  let hands: GridHands;
  beforeAll(async () => {
    const writing = new FunctionPages({ files: wrapperFiles, readme: 'README.md' }).writePages();
    open = await openPlanPage();
    hands = open.hands;
    const pages = await writing;
    const styles = ['taskpane/colours.css', 'entries/functionPages.css'].map((file) =>
      readFileSync(join(source, file), 'utf8'),
    );
    await open.page.context().route('**/functions/**', (route) => {
      const [, name = ''] = new URL(route.request().url()).pathname.split('/functions/');
      return name === 'pages.css'
        ? route.fulfill({ contentType: 'text/css', body: styles.join('\n') })
        : route.fulfill({ contentType: 'text/html', body: pages[name] ?? 'no such page' });
    });
  }, 240_000);
  afterAll(() => open.close());

  const pane = () => open.pane.root;
  const section = (name: string) =>
    pane().locator('section', { has: open.page.getByRole('heading', { name, exact: true, level: 2 }) });
  const says = (text: string | RegExp): Promise<void> => open.pane.says(text);
  const press = (name: string): Promise<void> => open.pane.press(name);
  const shows = (cell: string, value: string): Promise<void> =>
    expect.poll(() => hands.shown(cell), { timeout: 60_000, interval: 500 }).toEqual([[value]]);

  test('a function is found, its formula put into an empty cell and undone, and never over another', async () => {
    await press('Show the functions');
    await section('Functions').getByLabel('Search the functions').fill('acre spacing');
    await section('Functions')
      .getByRole('button', { name: /^PLANTS\.DENSITY/ })
      .click();
    // Under the table of plots.
    await hands.goTo('B40');
    await press('Put into the selected cell');
    await says('=CUCURBIT.PLANTS.DENSITY(2,36) stands in Plots B40 now.');
    // 43,560 sq ft an acre / (2 ft x 3 ft); of 4 ft half of it.
    await shows('B40', '7260');
    await section('Functions').getByLabel('row_spacing').fill('4');
    await hands.goTo('B40');
    await press('Put into the selected cell');
    await says('Plots B40 is not empty');
    await shows('B40', '7260');
    // Empty again once it is undone.
    await hands.press('Control+z');
    await press('Put into the selected cell');
    await shows('B40', '3630');
  });

  test('selected cells are taken for an argument', async () => {
    await hands.typeAlong('B41', ['36']);
    await hands.goTo('B41');
    await section('Functions').getByLabel('row_spacing').fill('4');
    await section('Functions')
      .locator('.field', { has: open.page.getByLabel('plant_spacing') })
      .getByRole('button')
      .click();
    await hands.goTo('C41');
    await press('Put into the selected cell');
    await shows('C41', '3630');
  });

  test('what an argument cannot be is said beside its field, and nothing is written', async () => {
    const spacing = section('Functions').getByLabel('row_spacing');
    await spacing.fill('eighty');
    await hands.goTo('D41');
    await press('Put into the selected cell');
    await says('Nothing was written. The row spacing is "eighty", which is not a number.');
    expect(await spacing.getAttribute('aria-invalid')).toBe('true');
    await spacing.fill('4');
    await expect.poll(() => spacing.getAttribute('aria-invalid')).toBeNull();
    await hands.goTo('D41');
    await press('Put into the selected cell');
    await shows('D41', '3630');
  });

  test('by keyboard alone a function is found and opened', async () => {
    await section('Functions').getByLabel('Search the functions').fill('bees');
    await open.page.keyboard.press('ArrowDown');
    await open.page.keyboard.press('Enter');
    await expect.poll(() => open.page.evaluate('document.activeElement.textContent')).toBe('DATE.COVEROFF');
    await section('Functions').getByLabel('Search the functions').fill('plants density');
    await open.page.keyboard.press('Enter');
    await expect.poll(() => open.page.evaluate('document.activeElement.textContent')).toBe('PLANTS.DENSITY');
  });

  test('its page opens beside the workbook, and leads to the others', async () => {
    const [page] = await Promise.all([
      open.page.context().waitForEvent('page'),
      section('Functions')
        .getByRole('link', { name: /^Everything on PLANTS\.DENSITY/ })
        .click(),
    ]);
    await page.getByRole('heading', { name: 'PLANTS.DENSITY', level: 1 }).waitFor();
    expect(await page.locator('output').first().textContent()).toBe('7260');
    const example = page.locator('section', { has: page.getByRole('heading', { name: 'An example' }) });
    const formula = (await example.locator('code').textContent()) ?? '';
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320);
    await page.getByRole('link', { name: 'All functions' }).click();
    await page.getByRole('link', { name: 'SEED.NEEDED' }).click();
    await page.getByRole('heading', { name: 'SEED.NEEDED', level: 1 }).waitFor();
    await page.getByRole('link', { name: 'Esta página en español' }).click();
    await page.getByText('Semillas que sembrar para una población de plantas').first().waitFor();
    await page.getByRole('link', { name: 'This page in English' }).click();
    await page.getByText('Seeds to sow for a stand of plants').first().waitFor();
    await page.close();

    // As the page advises: its formula copied, and pasted into an empty cell.
    await open.page.bringToFront();
    await open.page.evaluate((text) => navigator.clipboard.writeText(text), formula);
    await hands.goTo('B43');
    await hands.press('Control+v');
    await shows('B43', '7260');
  });

  test('crops stand side by side in a wide pane, one under the other in a narrow one', async () => {
    await press('Show the crops');
    await section('Crops').getByLabel('Search the crops').fill('pickle');
    for (const name of ['pickling cucumber', 'bush cucumber']) {
      await section('Crops')
        .getByRole('checkbox', { name: new RegExp(`^${name}`) })
        .check();
    }
    const tops = (): Promise<number[]> =>
      section('Crops')
        .locator('.side-by-side')
        .first()
        .locator('> div')
        .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top));
    await open.page.setViewportSize({ width: 600, height: 900 });
    await expect.poll(async () => new Set(await tops()).size, { timeout: 20_000 }).toBe(1);
    await open.page.setViewportSize({ width: 320, height: 900 });
    await expect.poll(async () => new Set(await tops()).size, { timeout: 20_000 }).toBe(2);
    for (const name of ['Crops', 'Functions']) {
      const over = await section(name).evaluate((one) => one.scrollWidth - one.clientWidth);
      expect(over, name).toBeLessThanOrEqual(0);
    }
    expect(open.troubles).toEqual([]);
  });
});
