// @vitest-environment jsdom
/** The plots of the pane over the real browser workbook, with its engine and our functions. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { crops } from '../../src/reference/crops';
import type { BrowserWorkbook } from '../../src/hosts/browser/openWorkbook';
import { cellAddress } from '../../src/workbook/cellAddress';
import type { ReadValue } from '../../src/workbook/port';
import { run } from '../functions/run';
import { openGridPane, type GridPane } from './openGridPane';
import { enter, until } from './openPane';

let pane: GridPane;
let workbook: BrowserWorkbook;

const plots = [
  { Plot: 'Creek', Crop: 'slicing cucumber', Length: 100, Width: 20, Price: 1.1 },
  { Plot: 'Hill', Crop: 'zucchini', Layout: 'hills', Length: 60, Width: 26 },
  { Plot: '007', Crop: 'gourd', Length: 30, Width: 10 },
];
/** Title, two leads, one caution, a gap, units, headers. */
const firstRow = 7;

beforeEach(async () => {
  pane = await openGridPane(plots);
  workbook = pane.workbook;
}, 120_000);
afterEach(() => pane.close());

const table = () => pane.table('Plots');
const column = (header: string): Promise<readonly ReadValue[]> => pane.column(header);
const names = (): Promise<readonly ReadValue[]> => column('Plot');
const columnIndex = async (header: string): Promise<number> => (await table()).headers.indexOf(header);
const type = (row: number, at: number, cell: { v?: string | number; f?: string }): Promise<void> =>
  pane.type('Plots', firstRow + row, at, cell);
const press = (button: string, said: string): Promise<void> => pane.press(button, said);
const radios = (): HTMLInputElement[] => [...pane.root.querySelectorAll<HTMLInputElement>('[type=radio]')];
const choose = (index: number): void => radios()[index]?.click();
const shown = (): string[] =>
  [...pane.root.querySelectorAll('.line')].map((line) => line.textContent?.replace(/\s+/g, ' ').trim() ?? '');

describe('the list', () => {
  it('shows each plot with its crop, size, plants and seed, and what wants looking at', () => {
    const plants = run(
      'PLANTS.INROWS',
      100,
      20,
      run('CROP.VALUE', 'slicing cucumber', 'row spacing'),
      run('CROP.VALUE', 'slicing cucumber', 'plant spacing'),
    );
    expect(shown()).toHaveLength(3);
    expect(shown()[0]).toMatch(
      new RegExp(`^Creek .*slicing cucumber, 100 × 20 ft, ${String(plants)} plants, \\d+ seeds$`),
    );
    expect(shown()[2]).toMatch(/^007 to mend gourd, 30 × 10 ft/);
  });

  it('follows what is typed in the grid', async () => {
    await type(0, 0, { v: 'Brook' });
    await type(3, 0, { v: 'Lane' });
    await until(() =>
      expect(shown().map((line) => line.split(' ')[0])).toEqual(['Brook', 'Hill', '007', 'Lane']),
    );
  });
});

it('names the functions near one that there is not, as the command does', async () => {
  const near = 'There is no function CUCURBIT.SEED.NEDED. Near it: CUCURBIT.SEED.NEEDED.';
  await type(0, await columnIndex('Days to spare'), { f: '=CUCURBIT.SEED.NEDED(100,0.8)' });
  await until(() => expect(pane.section('To look at').textContent).toContain(`Days to spare: ${near}`));
  const { area } = await table();
  await pane.type('Scratch', 0, 0, { f: '=CUCURBIT.SEED.NEDED(100,0.8)' });
  await workbook.settle(20_000);
  await workbook.reveal({ ...area, sheet: 'Scratch', row: 0, column: 0, rows: 1, columns: 1 });
  await until(() => expect(pane.spoken()).toContain(`Selected cell A1: ${near}`));
});

it('says of a formula that reads itself where the circle is, as Excel warns', async () => {
  const said = 'This formula, or one that it reads, leads back to its own cell, so it has no result.';
  // Plants of Creek read its Length.
  const plants = cellAddress(firstRow, await columnIndex('Plants'));
  await type(0, await columnIndex('Length'), { f: `=${plants}` });
  await until(() => expect(pane.section('To look at').textContent).toContain(`Length: ${said}`));
  await pane.type('Scratch', 3, 0, { f: '=B4*2' });
  await pane.type('Scratch', 3, 1, { f: '=A4*2+1' });
  await workbook.settle(20_000);
  await workbook.reveal({ sheet: 'Scratch', row: 3, column: 0, rows: 1, columns: 1 });
  await until(() => expect(pane.spoken()).toContain(`Selected cell A4: ${said}`));
});

describe('what stands in for a blank', () => {
  it('is said beside the field, for the crop and the layout chosen, and not written', async () => {
    pane.button('New plot').click();
    expect(pane.described('Row spacing')).not.toContain('Blank stands for');
    enter(pane.field('Crop'), 'Zucchini');
    expect(pane.described('Crop')).toContain('Taken as summer squash, whose figures stand in for blanks.');
    const figure = (trait: string): string => String(run('CROP.VALUE', 'zucchini', trait));
    expect(pane.described('Row spacing')).toContain(
      `Blank stands for ${figure('row spacing')} ft: the figure for summer squash in the Crops sheet.`,
    );
    expect(pane.described('Days to maturity')).toContain(
      `Blank stands for ${figure('days to maturity')} days`,
    );
    expect(pane.described('Germination')).toContain('Blank stands for 75 %');
    expect(pane.described('Hill spacing')).not.toContain('Blank stands for');
    enter(pane.field('Layout'), 'hills');
    expect(pane.described('Hill spacing')).toContain(`Blank stands for ${figure('hill spacing')} ft`);
    expect(pane.described('Row spacing')).toContain(`Blank stands for ${figure('hill row spacing')} ft`);
    expect(pane.described('Plant spacing')).not.toContain('Blank stands for');
    enter(pane.field('Crop'), 'gourd');
    expect(pane.described('Crop')).not.toContain('Taken as');
    expect(pane.described('Germination')).toContain('The Crops sheet has no figure for gourd');
  });

  it('is what somebody typed over the figure in Crops', async () => {
    const crops = await workbook.readTable('Crops');
    const row = crops?.rows.findIndex(([name]) => name === 'gourd') ?? 0;
    const at = crops?.headers.indexOf('row spacing') ?? 0;
    await pane.type('Crops', (crops?.area.row ?? 0) + 1 + row, at, { v: 9.5 });
    choose(2);
    pane.button('Change').click();
    await until(() => expect(pane.described('Row spacing')).toContain('Blank stands for 9.5 ft'));
  });
});

describe('a plot', () => {
  it('is added under the last, computed, and undone in one step', async () => {
    pane.button('New plot').click();
    await until(() => expect(document.activeElement).toBe(pane.field('Plot')));
    enter(pane.field('Plot'), 'Lane');
    enter(pane.field('Crop'), 'pickling cucumber');
    enter(pane.field('Length'), '50');
    enter(pane.field('Width'), '10');
    enter(pane.field('Germination'), '85');
    await press('Put the new plot into the sheet', '"Lane" was added.');
    expect(await names()).toEqual(['Creek', 'Hill', '007', 'Lane']);
    expect((await column('Germination'))[3]).toBe(0.85);
    expect((await column('Row spacing'))[3]).toBeNull();
    expect((await column('Plants'))[3]).toBe(
      run(
        'PLANTS.INROWS',
        50,
        10,
        run('CROP.VALUE', 'pickling cucumber', 'row spacing'),
        run('CROP.VALUE', 'pickling cucumber', 'plant spacing'),
      ),
    );
    expect(radios().findIndex(({ checked }) => checked)).toBe(3);
    await workbook.undo();
    expect(await names()).toEqual(['Creek', 'Hill', '007']);
  });

  it('offers each crop, then the names of the trade with what each is taken as, and takes any', async () => {
    pane.button('New plot').click();
    const offered = [...pane.root.querySelectorAll(`#${pane.field('Crop').getAttribute('list')} option`)];
    const names = crops.map(({ name }) => name);
    expect(offered.map((option) => option.textContent).slice(0, names.length)).toEqual(names);
    expect(offered.map((option) => [option.getAttribute('value'), option.textContent])).toEqual(
      expect.arrayContaining([
        ['cantaloupe', 'cantaloupe (taken as muskmelon)'],
        ['zucchini', 'zucchini (taken as summer squash)'],
      ]),
    );
    expect(offered).toHaveLength(names.length + crops.flatMap(({ synonyms }) => synonyms).length);
    enter(pane.field('Plot'), 'Lane');
    for (const [typed, near] of [
      ['zuchini', 'Near it: zucchini (taken as summer squash)'],
      [
        'pickel',
        'Near it: pickler (taken as pickling cucumber), pickles (taken as pickling cucumber), pickle cucumber (taken as pickling cucumber).',
      ],
      ['cuc', 'Near it: pickling cucumber, slicing cucumber, English cucumber.'],
      ['xx', '"xx" is not known. Choose one from the list.'],
    ] as const) {
      enter(pane.field('Crop'), typed);
      expect(pane.described('Crop')).toContain(near);
    }
    enter(pane.field('Crop'), 'Courgettes');
    await press('Put the new plot into the sheet', '"Lane" was added.');
    expect((await column('Taken as'))[3]).toBe('summer squash');
  });

  it('is not written with a figure that cannot be; the field says what to do', async () => {
    pane.button('New plot').click();
    enter(pane.field('Plot'), 'Lane');
    enter(pane.field('Width'), '-5');
    enter(pane.field('Plants per hill'), '2.5');
    enter(pane.field('Germination'), '185');
    await press('Put the new plot into the sheet', 'Nothing was written. Mend the marked fields first.');
    expect(pane.described('Width')).toContain('-5 does not fit. It must be above 0 and at most 1000000.');
    expect(pane.described('Plants per hill')).toContain('2.5 is not a whole number. Round it.');
    expect(pane.described('Germination')).toContain(
      '185 % does not fit. It must be above 0 % and at most 100 %.',
    );
    expect(await names()).toEqual(['Creek', 'Hill', '007']);
  });

  it('is changed where it was changed, and a formula in an input is left', async () => {
    const width = await columnIndex('Width');
    await type(0, width, { f: '=10+12' });
    await until(() => expect(shown()[0]).toContain('100 × 22'));
    choose(0);
    pane.button('Change').click();
    await until(() => expect(pane.field('Length').value).toBe('100'));
    enter(pane.field('Length'), '90');
    enter(pane.field('Width'), '30');
    await press('Put the plot into the sheet', 'Left alone, for a formula stands there: Width.');
    expect((await column('Length'))[0]).toBe(90);
    const { area } = await table();
    const read = await workbook.read({ ...area, row: firstRow, rows: 1, column: width, columns: 1 });
    expect(read.formulas).toEqual([['=10+12']]);
  });

  it('is duplicated, moved and removed with what was typed over and its own columns', async () => {
    const spare = await columnIndex('Days to spare');
    const beside = (await table()).area.columns;
    await type(0, spare, { v: 'ask Mo' });
    await type(0, beside, { f: '=D8*2' });
    await until(() => expect(shown()).toHaveLength(3));
    await workbook.settle(20_000);
    const whole = async (row: number): Promise<readonly ReadValue[]> => {
      const { area } = await table();
      const { values } = await workbook.read({
        ...area,
        row: firstRow + row,
        rows: 1,
        columns: area.columns + 1,
      });
      return values[0] ?? [];
    };
    // The list must have seen what was typed, or the change is refused.
    await new Promise((resolve) => setTimeout(resolve, 600));
    const creek = await whole(0);
    expect(creek.at(-1)).toBe(200);
    choose(0);
    await press('Move down', '"Creek" is line 2 of 3 now.');
    expect(await names()).toEqual(['Hill', 'Creek', '007']);
    expect(await whole(1)).toEqual(creek);
    expect(radios()[1]?.checked).toBe(true);
    await press('Duplicate', '"Creek" was duplicated as "Creek 2"');
    expect(await names()).toEqual(['Hill', 'Creek', 'Creek 2', '007']);
    const copied = await whole(2);
    expect(copied[spare]).toBe('ask Mo');
    expect(copied.at(-1)).toBe(200);
    choose(0);
    pane.button('Remove').click();
    await until(() => expect(document.activeElement).toBe(pane.button('Remove it')));
    await press('Remove it', '"Hill" was removed.');
    expect(await names()).toEqual(['Creek', 'Creek 2', '007', null]);
    expect(await whole(0)).toEqual(creek.map((value, i) => (i === beside ? 200 : value)));
    expect(document.activeElement).toBe(radios()[0]);
    for (let i = 0; i < 3; i++) await workbook.undo();
    expect(await names()).toEqual(['Creek', 'Hill', '007']);
    expect(await whole(0)).toEqual(creek);
  });

  it('keeps the focus on the plot that is chosen when a removal is undone and done again', async () => {
    const heldAndChosen = async (count: number, line: string): Promise<void> => {
      await until(() => expect(radios()).toHaveLength(count));
      const held = radios().find((radio) => radio === document.activeElement);
      expect(held?.checked).toBe(true);
      expect(held?.closest('.line')?.textContent).toContain(line);
    };
    choose(1);
    pane.button('Remove').click();
    await press('Remove it', '"Hill" was removed.');
    await heldAndChosen(2, '007');
    await workbook.undo();
    await heldAndChosen(3, '007');
    await workbook.redo();
    await heldAndChosen(2, '007');
  });

  it('leaves the focus where somebody went while it was written', async () => {
    const grid = document.body.appendChild(document.createElement('input'));
    const meanwhile = async (button: string, said: string): Promise<void> => {
      const pressed = press(button, said);
      grid.focus();
      await pressed;
      expect(document.activeElement).toBe(grid);
    };
    pane.button('New plot').click();
    enter(pane.field('Plot'), 'Lane');
    await meanwhile('Put the new plot into the sheet', '"Lane" was added.');
    choose(1);
    pane.button('Remove').click();
    await until(() => expect(document.activeElement).toBe(pane.button('Remove it')));
    await meanwhile('Remove it', '"Hill" was removed.');
    grid.remove();
  });

  it('leaves the focus at the heading when an undo takes the only plot away', async () => {
    pane.close();
    pane = await openGridPane([]);
    workbook = pane.workbook;
    pane.button('New plot').click();
    enter(pane.field('Plot'), 'Lane');
    await press('Put the new plot into the sheet', '"Lane" was added.');
    radios()[0]?.focus();
    await workbook.undo();
    await until(() => expect(radios()).toHaveLength(0));
    expect(document.activeElement?.textContent).toBe('Plots');
  });

  it('moves no further than the ends, which the buttons show without losing the focus', async () => {
    const barred = (): (string | null)[] =>
      ['Move up', 'Move down'].map((text) => pane.button(text).getAttribute('aria-disabled'));
    choose(0);
    expect(barred()).toEqual(['true', 'false']);
    await press('Move up', '"Creek" is the first line already.');
    choose(1);
    expect(barred()).toEqual(['false', 'false']);
    pane.button('Move down').focus();
    await press('Move down', '"Hill" is line 3 of 3 now.');
    expect(barred()).toEqual(['false', 'true']);
    expect(document.activeElement).toBe(pane.button('Move down'));
    expect(pane.button('Move down').disabled).toBe(false);
  });

  it('is said to be changed until it is undone, or something else is done', async () => {
    choose(0);
    await press('Duplicate', '"Creek" was duplicated');
    await workbook.undo();
    await until(() => expect(pane.spoken()).not.toContain('was duplicated'));
    choose(0);
    await press('Move down', '"Creek" is line 2 of 3 now.');
    await press('Refresh the sheets', 'Refreshed:');
    expect(pane.spoken()).not.toContain('is line 2 of 3 now');
  });

  it('leaves, removed, a blank line at the end, which the next plot takes', async () => {
    choose(0);
    pane.button('Remove').click();
    await press('Remove it', '"Creek" was removed.');
    const { area } = await table();
    expect(await names()).toEqual(['Hill', '007', null]);
    pane.button('New plot').click();
    enter(pane.field('Plot'), 'Lane');
    await press('Put the new plot into the sheet', '"Lane" was added.');
    expect(await names()).toEqual(['Hill', '007', 'Lane']);
    expect((await table()).area).toEqual(area);
  });

  it('is asked about before it is removed, and no longer once another is chosen', async () => {
    const isAsked = (): boolean => pane.button('Remove it').closest<HTMLElement>('.asks')?.hidden === false;
    choose(1);
    pane.button('Remove').click();
    expect(isAsked()).toBe(true);
    choose(2);
    expect(isAsked()).toBe(false);
    pane.button('Remove').click();
    await type(0, 0, { v: 'Brook' });
    await until(() => expect(shown()[0]).toContain('Brook'));
    expect(isAsked()).toBe(true);
    await type(2, 0, { v: 'Bond' });
    await until(() => expect(shown()[2]).toContain('Bond'));
    expect(isAsked()).toBe(false);
  });

  it('is not touched when somebody typed meanwhile', async () => {
    choose(0);
    await type(1, 0, { v: 'Slope' });
    await press('Move down', 'Nothing was changed. The sheet "Plots" was changed meanwhile.');
    expect(await names()).toEqual(['Creek', 'Slope', '007']);
    await until(() => expect(shown()[1]).toContain('Slope'));
    await press('Move down', '"Creek" is line 2 of 3 now.');
  });
});

describe('pasted rows', () => {
  const label = 'Rows copied from a sheet, or the text of a CSV file';

  const text = [
    'Crop\tPlot\tLength\tWidth\tPlants\tGermination',
    'zucchini\tEast\t40\t12\t99\t85%',
    'zuchini\tWest\t40\t12\t\t',
    'gourd\tCreek\tforty\t12\t\t',
    'gourd\tNorth',
    'zucchini\tSouth\t40\t12\t\t85',
  ].join('\n');

  it('are counted, wrong ones named by line, and put under the last plot in one step', async () => {
    enter(pane.field(label), text);
    const section = pane.section('Plots').textContent ?? '';
    expect(section).toContain('5 plots can be put into the sheet');
    expect(section).toContain('3 of them want mending');
    expect(section).toContain('The sheet computes these itself, so they are left out: Plants.');
    expect(section).toContain('In the sheet already: Creek.');
    expect(section).toContain('Line 3, column Crop: "zuchini" is not known. Near it: zucchini');
    expect(section).toContain('Line 4, column Length: "forty" is not a number.');
    expect(section).toContain('Line 6, column Germination: write 85 percent as 85% or 0.85.');
    await press('Put 5 plots into the sheet all the same', '5 plots were put into the sheet.');
    expect(await names()).toEqual(['Creek', 'Hill', '007', 'East', 'West', 'Creek', 'North', 'South']);
    expect((await column('Germination'))[3]).toBe(0.85);
    expect((await column('Taken as'))[3]).toBe('summer squash');
    // What could not be read stays as it was typed.
    expect((await column('Length')).slice(3)).toEqual([40, 40, 'forty', null, 40]);
    expect(pane.field(label).value).toBe('');
    await workbook.undo();
    expect(await names()).toEqual(['Creek', 'Hill', '007']);
  });

  it('that are in order go in alone, and the others stay in the field to be mended', async () => {
    enter(pane.field(label), text);
    await press('Put the 2 good plots into the sheet', '2 plots were put into the sheet.');
    expect(await names()).toEqual(['Creek', 'Hill', '007', 'East', 'North']);
    const lines = text.split('\n');
    expect(pane.field(label).value).toBe([lines[0], lines[2], lines[3], lines[5]].join('\n'));
    expect(pane.section('Plots').textContent).toContain('Line 2, column Crop: "zuchini" is not known.');
    expect(pane.button('Put the 0 good plots into the sheet').hidden).toBe(true);
    enter(pane.field(label), pane.field(label).value.replace('zuchini', 'zucchini'));
    await press('Put the 1 good plot into the sheet', '1 plot was put into the sheet.');
    expect((await names()).slice(5)).toEqual(['West']);
  });

  it('that all want mending are not told from others', () => {
    const [headers = '', , ...bad] = text.split('\n');
    enter(pane.field(label), [headers, bad[0]].join('\n'));
    expect(pane.spoken()).toContain('It wants mending: mend it here, or put it in all the same');
    enter(pane.field(label), [headers, bad[0], bad[1]].join('\n'));
    expect(pane.spoken()).toContain('All of them want mending: mend them here, or put them in all the same');
    expect(pane.spoken()).not.toContain('others');
  });

  it('go in once by the first button, though pasted again', async () => {
    enter(pane.field(label), 'East,zucchini\nWest,gourd');
    await press('Put 2 plots into the sheet', '2 plots were put into the sheet.');
    enter(pane.field(label), 'East,zucchini\nWest,gourd');
    expect(pane.spoken()).toContain('In the sheet already: East, West.');
    expect(pane.button('Put the 0 good plots into the sheet').hidden).toBe(true);
    expect(pane.button('Put 2 plots into the sheet all the same').hidden).toBe(false);
  });

  it('keep in the field what is no line of its own, and a cell over two lines goes as a whole', async () => {
    enter(
      pane.field(label),
      'Plot,Crop,Place\n"East\nside",zucchini,\nWest,gourd,x,too much\n\nNorth,gourd,\n',
    );
    await press('Put 2 plots into the sheet', '2 plots were put into the sheet.');
    expect((await names()).slice(3)).toEqual(['East\nside', 'North']);
    expect(pane.field(label).value).toBe('Plot,Crop,Place\nWest,gourd,x,too much\n');
    expect(pane.section('Plots').textContent).toContain('Line 2: the line has 4 cells for 3 columns.');
  });

  it('without a header have the columns of the sheet: lines copied from it come back the same', async () => {
    const { area, headers } = await table();
    const { values } = await workbook.read({ ...area, row: firstRow, rows: 1 });
    const line = (values[0] ?? []).map((value) =>
      value === null || typeof value === 'object' ? '' : String(value),
    );
    enter(pane.field(label), line.map((text, i) => (headers[i] === 'Plot' ? 'Again' : text)).join('\t'));
    await press('Put 1 plot into the sheet', '1 plot was put into the sheet.');
    const again = (await table()).rows[3];
    expect(again?.slice(1)).toEqual((await table()).rows[0]?.slice(1));
  });

  it('without a header are plots though a layout of theirs is the name of a column too', () => {
    const line = (plot: string): string => `${plot}\tpickling cucumber\trows\t100\t24\tseed\t85%`;
    enter(pane.field(label), `${line('Bank 1')}\n${line('Bank 2')}`);
    expect(pane.spoken()).toContain('2 plots can be put into the sheet');
    expect(pane.section('Plots').textContent).not.toContain('left out');
  });

  it('that nothing tells to be plots are not taken, and it is said what is needed', async () => {
    enter(pane.field(label), 'hello world');
    expect(pane.spoken()).toContain('Nothing in it says that these are plots. Begin with a line of headers');
    expect(() => pane.button('Put 1 plot into the sheet')).toThrow();
    enter(pane.field(label), 'East,zuchini\nWest,Zucchini');
    expect(pane.spoken()).toContain('2 plots can be put into the sheet');
    enter(pane.field(label), 'Plots,\n,\nCrop,Plot\nmy own,East');
    expect(pane.spoken()).toContain('1 plot can be put into the sheet');
  });

  it('under headers that Plots has not are not taken, and near each the header of Plots is named', () => {
    enter(pane.field(label), 'Name,Kind,Lenght,W\nEast,zucchini,40,12\nWest,gourd,30,12');
    expect(pane.spoken()).toContain('The first line looks like headers, and none of them is one of Plots');
    const section = pane.section('Plots').textContent ?? '';
    expect(section).toContain(
      'Line 1: the column "Lenght" is not one of Plots and was left out. Near it: Length',
    );
    expect(section).toContain('the column "Kind" is not one of Plots and was left out.');
    expect(section.split('Columns: Plot, Crop')).toHaveLength(2);
    expect(() => pane.button('Put 3 plots into the sheet')).toThrow();
    // A slip in the first crop makes no headers of a plot.
    enter(pane.field(label), 'East,zuchini,rows,40\nWest,gourd,rows,30');
    expect(pane.spoken()).toContain('2 plots can be put into the sheet');
  });

  it('that make too many plots are warned of, and go in all the same', async () => {
    const lines = Array.from({ length: 1498 }, (_, i) => `Lot ${i},gourd`);
    enter(pane.field(label), lines.join('\n'));
    expect(pane.spoken()).toContain('That makes 1501 plots.');
    expect(pane.button('Put 1498 plots into the sheet all the same').hidden).toBe(false);
    enter(pane.field(label), lines.slice(1).join('\n'));
    expect(pane.spoken()).not.toContain('That makes');
  });
});
