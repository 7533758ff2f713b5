// @vitest-environment jsdom
/** The picture of the chosen plot in the pane, over the real browser workbook. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { drawPlotForSheet } from '../../src/entries/drawnPlot';
import { paneTools } from '../../src/entries/paneTools';
import { pngParts } from '../../src/entries/pngParts';
import { openGridPane, type GridPane } from './openGridPane';
import { until } from './openPane';

let pane: GridPane;
const plots = [
  { Plot: 'Creek', Crop: 'slicing cucumber', Length: 30, Width: 12 },
  { Plot: 'Melons', Crop: 'seedless watermelon', Length: 40, Width: 20 },
  { Plot: 'Narrow', Crop: 'zucchini', Length: 30, Width: 1 },
  { Plot: 'creek', Crop: 'zucchini', Length: 30, Width: 12 },
];
/** Title, two leads, one caution, a gap, units, headers. */
const firstRow = 7;

beforeEach(async () => {
  pane = await openGridPane(plots, {
    ...paneTools,
    drawPlotForSheet: (plot) => drawPlotForSheet(plot, pngParts()),
  });
}, 120_000);
afterEach(() => pane.close());

const place = () => pane.section('Plots').querySelector('.pictures') as HTMLElement;
const marks = () =>
  place().querySelectorAll('[data-part="plants"] > *, [data-part="pollenizers"] > *').length;
const choose = (index: number): void =>
  pane.root.querySelectorAll<HTMLInputElement>('[type=radio]')[index]?.click();
async function openIt(): Promise<void> {
  const details = place().closest('details');
  if (details === null) throw new Error('no details');
  details.open = true;
  details.dispatchEvent(new Event('toggle'));
  await until(() => expect(place().textContent).not.toBe(''));
}
const shows = (said: string): Promise<void> =>
  until(() =>
    expect(place().querySelector('svg')?.getAttribute('aria-label') ?? place().textContent).toContain(said),
  );

it('is drawn when it is opened, of the plot that is chosen, and follows it', async () => {
  choose(0);
  expect(place().textContent).toBe('');
  await openIt();
  await shows('Creek: slicing cucumber. The plot is 30 ft long and 12 ft wide');
  const [plants] = await pane.column('Plants');
  expect(marks()).toBe(plants);
  expect(place().querySelector('svg')?.getAttribute('role')).toBe('img');
  expect(place().querySelector('details table')?.textContent).toContain(`Plants${String(plants)}`);
  choose(1);
  await shows('Melons: seedless watermelon');
  expect(marks()).toBe((await pane.column('Plants'))[1]);
  await pane.type('Plots', firstRow + 1, 3, { v: 80 });
  await shows('The plot is 80 ft long');
  expect(marks()).toBe((await pane.column('Plants'))[1]);
  choose(2);
  await shows('No row fits: the plot is 1 ft wide');
  expect(marks()).toBe(0);
}, 240_000);

it('without a plot chosen it says what to do', async () => {
  await openIt();
  await shows('Choose a plot in the list');
  pane.button('Put this picture into a sheet').click();
  await until(() => expect(pane.spoken()).toContain('Choose a plot in the list first.'));
});

it('goes into a sheet, and says there and in the pane when it is older than its plot', async () => {
  await pane.press(
    'Put the pictures of all plots into a sheet',
    '2 pictures put into the sheet Plot pictures. Not drawn, to be mended first: Narrow, creek.',
  );
  const notes = () =>
    [...pane.section('Plots').querySelectorAll<HTMLElement>('p.note')]
      .filter(({ hidden, textContent }) => !hidden && textContent !== '')
      .map(({ textContent }) => textContent);
  expect(notes()).toEqual([]);
  await pane.type('Plots', firstRow, 4, { v: 24 });
  await until(() =>
    expect(notes()).toEqual([
      'In their sheet these pictures are older than their plots: Creek. Put them there again.',
    ]),
  );
  choose(0);
  await pane.press('Put this picture into a sheet', '1 picture put into the sheet Plot pictures.');
  await until(() => expect(notes()).toEqual([]));
  choose(2);
  await pane.press('Put this picture into a sheet', 'No row fits: the plot is 1 ft wide');
}, 240_000);
