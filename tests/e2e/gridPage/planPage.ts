/** The product's own page: what a grower does in its pane, and what the Plots sheet beside it shows. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Download, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { cellAddress } from '../../../src/workbook/cellAddress';
import { gridHands, type GridHands } from './gridHands';
import { openGridPage, type GridPage } from './openGridPage';

const entries = join(import.meta.dirname, '../../../src/entries');

/** For a machine under load. */
const timeout = 60_000;
/** The whole table of a small garden and more: rows under it, columns to its right. */
const aroundTable = 'A7:AZ26';
/** Of the first plot, from 0. */
const firstRow = 7;

export interface PaneHands {
  readonly root: Locator;
  section(heading: string): Locator;
  /** Waits until it is said, in sight or to a screen reader. */
  says(text: string | RegExp): Promise<void>;
  press(button: string): Promise<void>;
  /** Presses a button that hands out a file, and takes it. */
  takeFile(button: string): Promise<{ readonly name: string; readonly bytes: Buffer }>;
  openPlan(name: string, bytes: Buffer): Promise<void>;
}

export function paneHands(page: Page): PaneHands {
  const root = page.locator('#pane');
  const press = (name: string): Promise<void> =>
    root.getByRole('button', { name, exact: true }).click({ timeout });
  return {
    root,
    section: (name) => root.locator('section', { has: page.getByRole('heading', { name }) }),
    says: (text) => root.getByText(text).first().waitFor({ timeout, state: 'attached' }),
    press,
    async takeFile(button) {
      const [download] = await Promise.all([
        page.waitForEvent('download', { timeout }) as Promise<Download>,
        press(button),
      ]);
      return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
    },
    async openPlan(name, buffer) {
      const [chooser] = await Promise.all([page.waitForEvent('filechooser'), press('Open a plan')]);
      await chooser.setFiles({ name, mimeType: 'application/octet-stream', buffer });
    },
  };
}

export interface PlanPage extends GridPage {
  readonly hands: GridHands;
  readonly pane: PaneHands;
  readonly plots: PlotsShown;
}

/**
 * The page as it is at first: the invented garden, read and calculated.
 *
 * @param locale of the browser
 * @param calculated what the pane says by then
 */
export async function openPlanPage(
  locale = 'en-US',
  calculated: string | RegExp = /To look at \(\d+\)/,
): Promise<PlanPage> {
  const open = await openGridPage(
    { script: join(entries, 'browser.ts'), frame: join(entries, 'browser.html') },
    locale,
  );
  const hands = gridHands(open.page);
  const pane = paneHands(open.page);
  await pane.says(calculated);
  return { ...open, hands, pane, plots: plotsShown(hands) };
}

/** What Plots shows of a line, by header. */
export type PlotShown = Readonly<Record<string, string>>;

export interface PlotsShown {
  headers(): Promise<readonly string[]>;
  /** Of the line, from 0. */
  addressOf(line: number, header: string): Promise<string>;
  /** By the plot's name, in the order of the sheet; lines without a name are left out. */
  all(): Promise<Record<string, PlotShown>>;
  /** Waits until the plot shows that. */
  show(plot: string, expected: PlotShown): Promise<void>;
  /** Waits until these are the plots, in this order. */
  are(names: readonly string[]): Promise<void>;
}

/** While the Plots sheet is in front. */
function plotsShown(hands: GridHands): PlotsShown {
  const waiting = { timeout, interval: 500 };
  let known: readonly string[] = [];
  const headers = async (): Promise<readonly string[]> => {
    if (known.length === 0) known = (await hands.shown(aroundTable))[0] ?? [];
    return known;
  };
  const all = async (): Promise<Record<string, PlotShown>> => {
    const [first = [], ...lines] = await hands.shown(aroundTable);
    const named = lines.filter(([name]) => name !== undefined && name !== '');
    return Object.fromEntries(
      named.map((line) => [
        line[0] ?? '',
        Object.fromEntries(first.map((header, i) => [header, line[i] ?? ''])),
      ]),
    );
  };
  return {
    headers,
    addressOf: async (line, header) => cellAddress(firstRow + line, (await headers()).indexOf(header)),
    all,
    show: (plot, expected) => expect.poll(async () => (await all())[plot], waiting).toMatchObject(expected),
    are: (names) => expect.poll(async () => Object.keys(await all()), waiting).toEqual(names),
  };
}

/** In place of the invented garden, a plan of its own season and without a plot. */
export async function startEmptyPlan(pane: PaneHands, lastFrost: string, firstFrost: string): Promise<void> {
  await pane.root.getByText('Start again', { exact: true }).click();
  await pane.press('An empty plan');
  await pane.press('Yes: An empty plan');
  await pane.says(/An empty plan is open/);
  const season = pane.section('Season');
  await season.getByLabel('Year of the last frost').fill(lastFrost.slice(0, 4));
  await season.getByLabel('Last frost of spring').fill(lastFrost);
  await season.getByLabel('First frost of fall').fill(firstFrost);
  await pane.press('Put into the sheet');
  await pane.says(/Put into the sheet: .*First frost of fall/);
}
