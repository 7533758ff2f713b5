/** The picture of a plot in the product's own page: as many marks as its Plants cell says, and into a sheet. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Locator } from 'playwright-core';
import { openPlanPage, type PlanPage } from './gridPage/planPage';

describe('the picture of a plot in the page', { timeout: 240_000 }, () => {
  let open: PlanPage;
  beforeAll(async () => {
    open = await openPlanPage();
  }, 240_000);
  afterAll(() => open.close());

  const pane = () => open.pane.root;
  const picture = (name: RegExp) => pane().getByRole('img', { name });
  /** What the list says of the plot is its Plants cell. */
  const plantsOf = async (plot: string): Promise<number> => {
    const line = await pane().locator('.line', { hasText: plot }).first().textContent();
    return Number(/([\d]+) plants/.exec(line ?? '')?.[1]);
  };
  const marks = (name: RegExp) =>
    picture(name).locator('[data-part="plants"] > *, [data-part="pollenizers"] > *').count();
  const choose = (plot: string): Promise<void> =>
    pane().locator('.line', { hasText: plot }).first().locator('input').check({ timeout: 60_000 });

  test('as many marks as the Plants cell says, in rows, hills and beds', async () => {
    await choose('Creek 2');
    await pane().getByText('Picture of the chosen plot').click();
    await picture(/^Creek 2: /).waitFor({ timeout: 60_000 });
    // 24 ft hold 4 rows 5 ft apart, each of 100 plants a foot apart.
    expect(await plantsOf('Creek 2')).toBe(400);
    expect(await marks(/^Creek 2: /)).toBe(400);
    for (const plot of ['Creek 3', 'Tunnel']) {
      await choose(plot);
      const name = new RegExp(`^${plot}: `);
      await picture(name).waitFor({ timeout: 60_000 });
      expect(await marks(name)).toBe(await plantsOf(plot));
    }
  });

  test('it is enlarged over the page by keyboard, saved, and Escape leads back to the button', async () => {
    const button = pane().getByRole('button', { name: 'Enlarge the picture' });
    await button.focus();
    await open.page.keyboard.press('Enter');
    const dialog = open.page.getByRole('dialog', { name: /^Tunnel: / });
    await dialog.waitFor({ timeout: 60_000 });
    const large = dialog.getByRole('img', { name: /^Tunnel: / });
    const widthOf = async (image: Locator): Promise<number> => (await image.boundingBox())?.width ?? 0;
    expect(await widthOf(large)).toBeGreaterThanOrEqual(960);
    expect(await large.locator('[data-part="plants"] > *').count()).toBe(await plantsOf('Tunnel'));
    // Tab stays within; what it reaches is the buttons and the picture, which the arrows scroll.
    const focused = (): Promise<boolean> => dialog.evaluate((one) => one.contains(document.activeElement));
    expect(await focused()).toBe(true);
    const { name, bytes } = await open.pane.takeFile('Save as a picture file (PNG)');
    expect(name).toBe('picture of Tunnel.png');
    // Width of a PNG: its 17th byte on (ISO/IEC 15948, IHDR). At 300 dots an inch, paper 10 in wide.
    expect(bytes.readUInt32BE(16)).toBeGreaterThanOrEqual(3000);
    await open.page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
    expect(await button.evaluate((one) => one === document.activeElement)).toBe(true);
  });

  test('it goes into a sheet, drawn by what the page brings along', async () => {
    await pane().getByRole('button', { name: 'Put this picture into a sheet' }).click();
    await open.pane.says('1 picture put into the sheet Plot pictures.');
  });

  test('nothing of it sticks out of a narrow pane, and the page had no trouble', async () => {
    for (const width of [600, 400, 320]) {
      await open.page.setViewportSize({ width, height: 700 });
      const beyond = (): Promise<number> => pane().evaluate((one) => one.scrollWidth - one.clientWidth);
      await expect.poll(beyond, { timeout: 20_000 }).toBeLessThanOrEqual(0);
    }
    expect(open.troubles).toEqual([]);
  });
});
