/** How a figure comes about, asked for in the product's own page with mouse and keyboard alone. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cellAddress } from '../../src/workbook/cellAddress';
import { english } from '../../src/texts/english';
import type { GridHands } from './gridPage/gridHands';
import { openPlanPage, type PlanPage } from './gridPage/planPage';

const words = english.pane.working;
/** The row of the invented garden's Creek 2, from 0. */
const creek2 = 8;

describe('the working of a cell in the page', { timeout: 240_000 }, () => {
  let open: PlanPage;
  let hands: GridHands;
  let headers: readonly string[];
  beforeAll(async () => {
    open = await openPlanPage();
    hands = open.hands;
    headers = (await hands.shown('A7:AZ7'))[0] ?? [];
  }, 240_000);
  afterAll(() => open.close());

  const section = () => open.pane.section(words.heading);
  const addressOf = (header: string): string => cellAddress(creek2, headers.indexOf(header));
  const says = (text: string | RegExp): Promise<void> =>
    section().getByText(text).filter({ visible: true }).first().waitFor({ timeout: 60_000 });

  test('the seed to sow of a plot, step by step; a change of its length is followed', async () => {
    await hands.goTo(addressOf('Seed to sow'));
    await section().getByText(words.summary).click();
    await says(`Working of Plots ${addressOf('Seed to sow')}`);
    // 24 ft hold 4 rows 5 ft apart, each of 100 plants a foot apart.
    await says(/number of plants 400/);
    await says(words.effects.heading);
    await hands.typeAlong(addressOf('Length'), ['50']);
    await says(`This is still the working of Plots ${addressOf('Seed to sow')}.`);
    await says(/number of plants 200/);
  });

  test('nothing of it sticks out of a narrow pane, and the page had no trouble', async () => {
    await open.page.setViewportSize({ width: 320, height: 700 });
    const width = (): Promise<number> => section().evaluate((one) => one.scrollWidth - one.clientWidth);
    await expect.poll(width, { timeout: 20_000 }).toBeLessThanOrEqual(0);
    expect(open.troubles).toEqual([]);
  });
});
