// @vitest-environment jsdom
/** A change of units in the pane, over the real browser workbook. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { openGridPane, type GridPane } from './openGridPane';
import { enter, until } from './openPane';

let pane: GridPane;
const plots = [
  { Plot: 'Creek', Crop: 'slicing cucumber', Length: 100, Width: 24, 'Plant spacing': 12, Price: 1.1 },
  {
    Plot: 'Hill',
    Crop: 'gourd',
    Length: 60,
    Width: 26,
    'Row spacing': 5,
    'Yield per 100': 130,
    'Harvest days': 20,
  },
];
const firstRow = 7;

beforeEach(async () => {
  pane = await openGridPane(plots);
  const crops = await pane.table('Crops');
  const at = (header: string): number => crops.headers.indexOf(header);
  await pane.type('Crops', crops.area.row + 1, at('row spacing'), { v: 5 });
  await pane.type('Crops', crops.area.row + 1, at('soil at planting'), { v: 60 });
  await pane.type('Plots', firstRow, 4, { f: '=10+10' });
  await pane.workbook.settle(20_000);
}, 120_000);
afterEach(() => pane.close());

const typed = async (): Promise<unknown> => ({
  length: await pane.column('Length'),
  width: await pane.column('Width'),
  rowSpacing: await pane.column('Row spacing'),
  plantSpacing: await pane.column('Plant spacing'),
  harvestDays: await pane.column('Harvest days'),
  yieldPer100: await pane.column('Yield per 100'),
  price: await pane.column('Price'),
  cropRows: (await pane.column('row spacing', 'Crops'))[0],
  cropSoil: (await pane.column('soil at planting', 'Crops'))[0],
});

it('converts what was typed, in one step, and names the formulas it left', async () => {
  const before = await typed();
  const plants = await pane.column('Plants');
  enter(pane.field('Units'), 'metric');
  pane.button('Put into the sheet').click();
  await until(() => expect(document.activeElement).toBe(pane.button('Convert them')));
  expect(pane.section('Season').textContent).toContain(
    'Convert the 9 numbers typed into Plots, into Prices and over',
  );
  expect(await typed()).toEqual(before);
  await pane.press(
    'Convert them',
    '9 numbers were converted. Not converted, for formulas of yours stand there: Plots E8.',
  );
  // 0.3048 m a foot, 2.54 cm an inch, 0.45359237 kg a pound; 193.46 of 193.4613, 2.4251 of 2.425085, 15.5556 of 15.5555...
  expect(await typed()).toEqual({
    length: [30.48, 18.288],
    width: [20, 7.9248],
    rowSpacing: [null, 1.524],
    plantSpacing: [30.48, null],
    harvestDays: [null, 20],
    yieldPer100: [null, 193.46],
    price: [2.4251, null],
    cropRows: 1.524,
    cropSoil: 15.5556,
  });
  // As many plants as before where every length went along.
  expect((await pane.column('Plants'))[1]).toBe(plants[1]);
  enter(pane.field('Units'), 'us');
  pane.button('Put into the sheet').click();
  await until(() => expect(document.activeElement).toBe(pane.button('Convert them')));
  await pane.press('Convert them', '9 numbers were converted.');
  expect(await typed()).toEqual(before);
  await pane.workbook.undo();
  await pane.workbook.undo();
  expect(await typed()).toEqual(before);
  expect(await pane.column('Plants')).toEqual(plants);
});

it('only changes the units, or leaves them, when told so', async () => {
  const before = await typed();
  enter(pane.field('Units'), 'metric');
  pane.button('Put into the sheet').click();
  await until(() => expect(document.activeElement).toBe(pane.button('Convert them')));
  pane.button('Leave the units').click();
  expect(pane.field('Units').value).toBe('us');
  enter(pane.field('Units'), 'metric');
  pane.button('Put into the sheet').click();
  await until(() => expect(document.activeElement).toBe(pane.button('Convert them')));
  await pane.press('Only change the units', 'Put into the sheet: Units.');
  expect(await typed()).toEqual(before);
});
