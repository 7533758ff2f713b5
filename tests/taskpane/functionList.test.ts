// @vitest-environment jsdom
/** The list of functions in the pane, and a formula put out of it into a cell: in memory, in the grid, in Excel. */
import axe from 'axe-core';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { describeFunctions } from '../../src/entries/describeFunctions.cjs';
import { paneTools } from '../../src/entries/paneTools';
import { functions } from '../../src/functions';
import { listFunctions } from '../../src/guide/listFunctions';
import { startEngine } from '../../src/hosts/browser/engine';
import { openWorkbook } from '../../src/hosts/browser/openWorkbook';
import { openExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { exampleArguments } from '../../src/taskpane/exampleArguments';
import type { PaneTools } from '../../src/taskpane/paneTools';
import { typedArgument, typedValue } from '../../src/taskpane/typedArgument';
import type { ListedFunction } from '../../src/workbook/functionHelp';
import { HostError, type Area, type LiveWorkbook, type ReadValue } from '../../src/workbook/port';
import { openStandIn } from '../excelStandIn/openStandIn';
import { wrapperFiles } from '../functions/describedFunctions';
import { quickClock } from '../hosts/excel/openTestWorkbook';
import { createFakeWorkbook, type FakeWorkbook } from './fakeWorkbook';
import { enter, openPaneOver, until, type OpenPane } from './openPane';

let listed: readonly ListedFunction[] = [];
beforeAll(async () => {
  listed = listFunctions(await describeFunctions(wrapperFiles, 'README.md'));
});

async function openList<Workbook extends LiveWorkbook>(
  workbook: Workbook,
  tools: PaneTools = { ...paneTools, functionList: async () => listed },
): Promise<OpenPane<Workbook>> {
  const pane = await openPaneOver(workbook, tools);
  pane.button('Show the functions').click();
  return pane;
}
async function openOne<Workbook extends LiveWorkbook>(
  workbook: Workbook,
  id: string,
): Promise<OpenPane<Workbook>> {
  const pane = await openList(workbook);
  await until(() => pane.field('Search the functions'));
  choose(pane, id);
  return pane;
}
function choose(pane: OpenPane<LiveWorkbook>, id: string): void {
  itemOf(pane, id)?.querySelector('button')?.click();
}
const items = (pane: OpenPane<LiveWorkbook>): HTMLElement[] => [
  ...pane.section('Functions').querySelectorAll<HTMLElement>('li'),
];
const itemOf = (pane: OpenPane<LiveWorkbook>, id: string): HTMLElement | undefined =>
  items(pane).find((item) => item.querySelector('.line-name')?.textContent === id);
/** What stands under each heading of the list. */
const groups = (pane: OpenPane<LiveWorkbook>): [heading: string | null, ids: (string | null)[]][] =>
  [...pane.section('Functions').querySelectorAll('.lines > div')].map((group) => [
    group.querySelector('h3')?.textContent ?? null,
    [...group.querySelectorAll('.line-name')].map(({ textContent }) => textContent),
  ]);
const preview = (pane: OpenPane<LiveWorkbook>): string =>
  pane.section('Functions').querySelector('code')?.textContent ?? '';
async function put(pane: OpenPane<LiveWorkbook>, said: string): Promise<void> {
  pane.button('Put into the selected cell').click();
  await until(() => expect(pane.root.getAttribute('aria-busy')).not.toBe('true'));
  await until(() => expect(pane.spoken()).toContain(said));
}
const cell = (row: number, column: number, sheet = 'Kitchen'): Area => ({
  sheet,
  row,
  column,
  rows: 1,
  columns: 1,
});

function kitchen(): FakeWorkbook {
  const workbook = createFakeWorkbook();
  workbook.addForeignSheet('Kitchen');
  return workbook;
}

describe('the list', () => {
  it('is fetched when asked for, and takes the focus', async () => {
    const pane = await openList(kitchen());
    await until(() => expect(items(pane)).toHaveLength(functions.size));
    expect(document.activeElement).toBe(pane.field('Search the functions'));
    expect(pane.section('Functions').textContent).toContain(`${functions.size} functions`);
  });

  it('that cannot be fetched says so, and is asked for again', async () => {
    let isThere = false;
    const pane = await openList(kitchen(), {
      ...paneTools,
      functionList: async () => (isThere ? listed : Promise.reject(new Error('cut off'))),
    });
    await until(() => expect(pane.spoken()).toContain('It could not be loaded.'));
    isThere = true;
    pane.button('Show the functions').click();
    await until(() => expect(items(pane)).toHaveLength(functions.size));
  });

  it('has a heading for each task, in the order of README', async () => {
    const pane = await openOne(kitchen(), 'PLANTS.DENSITY');
    const tasks = [...new Set(listed.map(({ family }) => family))];
    expect(groups(pane).map(([heading]) => heading)).toEqual(tasks);
    expect(groups(pane).flatMap(([, ids]) => ids)).toEqual(listed.map(({ id }) => id));
  });

  it('is searched, what is found by name first', async () => {
    const pane = await openOne(kitchen(), 'PLANTS.DENSITY');
    enter(pane.field('Search the functions'), 'jars');
    expect(groups(pane)).toEqual([
      ['Found by name', ['PICKLE.JARS']],
      ['Pickles', ['PICKLE.POUNDS']],
    ]);
    expect(pane.spoken()).toContain('2 functions');
    enter(pane.field('Search the functions'), '');
    expect(items(pane)).toHaveLength(functions.size);
  });

  it('says what to try when nothing is found, and is whole again with an empty field', async () => {
    const pane = await openOne(kitchen(), 'PLANTS.DENSITY');
    enter(pane.field('Search the functions'), 'tractor');
    expect(items(pane)).toEqual([]);
    expect(pane.spoken()).toContain('Nothing found for "tractor". Try fewer or other words');
    enter(pane.field('Search the functions'), '  ');
    expect(items(pane)).toHaveLength(functions.size);
  });

  it('is walked through by arrow keys, and Enter opens the first that is found', async () => {
    const pane = await openOne(kitchen(), 'PLANTS.DENSITY');
    const search = pane.field('Search the functions');
    const press = (key: string): void =>
      void document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
    const focused = (): string | undefined =>
      document.activeElement?.querySelector('.line-name')?.textContent ?? document.activeElement?.id;
    enter(search, 'trays', true);
    press('ArrowUp');
    expect(document.activeElement).toBe(search);
    press('ArrowDown');
    expect(focused()).toBe('TRAY.CELLS');
    press('ArrowDown');
    expect(focused()).toBe('TRAY.COUNT');
    press('ArrowUp');
    press('ArrowUp');
    expect(document.activeElement).toBe(search);
    press('Enter');
    expect(document.activeElement?.textContent).toBe('TRAY.CELLS');
  });

  it('opens one with its sentence, its arguments and the way to its page', async () => {
    const pane = await openOne(kitchen(), 'PLANTS.INROWS');
    expect(document.activeElement?.textContent).toBe('PLANTS.INROWS');
    expect(pane.field('row_spacing').value).toBe('5');
    expect(pane.described('row_spacing')).toBe('Distance between rows, ft (m)');
    expect(pane.field('edge (may be left out)').value).toBe('');
    expect(preview(pane)).toBe('=CUCURBIT.PLANTS.INROWS(100,20,5,12)');
    const link = [...pane.root.querySelectorAll('a')].find((one) =>
      one.textContent?.includes('PLANTS.INROWS'),
    );
    expect(link?.getAttribute('href')).toBe('functions/PLANTS.INROWS.html');
  });

  it('is in order for somebody who does not see the page', async () => {
    const pane = await openOne(kitchen(), 'DATE.FIRSTPICK');
    enter(pane.field('Search the functions'), 'first');
    document.documentElement.lang = 'en';
    document.title = 'pane';
    // What cannot be known without a laid-out page is computed in paneColours.test.ts and looked at.
    const { violations } = await axe.run(pane.section('Functions'), {
      rules: { 'color-contrast': { enabled: false } },
    });
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });
});

describe('the formula', () => {
  it('follows the fields: words as texts, dates by their parts, selected cells by their address', async () => {
    const workbook = kitchen();
    const pane = await openOne(workbook, 'DATE.COVEROFF');
    enter(pane.field('first_pick'), '2027-07-15');
    enter(pane.field('crop'), 'summer squash');
    expect(preview(pane)).toBe('=CUCURBIT.DATE.COVEROFF(DATE(2027,7,15),"summer squash")');
    workbook.select({ sheet: "Jo's", row: 1, column: 1, rows: 3, columns: 1 });
    const take = pane.field('first_pick').parentElement?.querySelector('button');
    take?.click();
    await until(() => expect(pane.field('first_pick').value).toBe("'Jo''s'!B2:B4"));
    workbook.select(cell(2, 2));
    take?.click();
    await until(() => expect(preview(pane)).toBe('=CUCURBIT.DATE.COVEROFF(\'Kitchen\'!C3,"summer squash")'));
  });

  it('a word with a capital is a text, unless the workbook has such a name or table', async () => {
    const workbook = kitchen();
    const asked: string[] = [];
    const locate = workbook.locate.bind(workbook);
    workbook.locate = (name) => {
      asked.push(name);
      return name === 'Favourite' ? Promise.resolve(cell(0, 0)) : locate(name);
    };
    const pane = await openOne(workbook, 'CROP.NAME');
    workbook.select(cell(1, 1));
    const leave = (typed: string): void => {
      enter(pane.field('crop'), typed);
      pane.field('crop').dispatchEvent(new Event('change'));
    };
    leave('Zucchini');
    await until(() => expect(preview(pane)).toBe('=CUCURBIT.CROP.NAME("Zucchini")'));
    await put(pane, '=CUCURBIT.CROP.NAME("Zucchini") stands in Kitchen B2 now.');
    leave('Favourite');
    await until(() => expect(asked).toContain('Favourite'));
    workbook.select(cell(2, 1));
    await put(pane, '=CUCURBIT.CROP.NAME(Favourite) stands in Kitchen B3 now.');
    // The button asks as well.
    enter(pane.field('crop'), 'Zuchini');
    workbook.select(cell(3, 1));
    await put(pane, '=CUCURBIT.CROP.NAME("Zuchini") stands in Kitchen B4 now.');
  });

  it('goes into the selected cell, when that is empty', async () => {
    const workbook = kitchen();
    const pane = await openOne(workbook, 'PLANTS.DENSITY');
    workbook.select(cell(1, 1));
    await put(pane, '=CUCURBIT.PLANTS.DENSITY(2,36) stands in Kitchen B2 now.');
    expect(workbook.changes.at(-1)?.cells).toEqual([
      {
        sheet: 'Kitchen',
        row: 1,
        column: 1,
        contents: [[{ compute: { call: 'PLANTS.DENSITY', args: [{ typed: '2' }, { typed: '36' }, null] } }]],
      },
    ]);
    await put(pane, 'Nothing was written, for Kitchen B2 is not empty.');
    expect(workbook.changes).toHaveLength(1);
  });

  it.each<[string, (workbook: FakeWorkbook, pane: OpenPane) => void, string]>([
    ['no cell', () => undefined, 'Select one empty cell in a sheet'],
    [
      'several cells',
      (workbook) => workbook.select({ ...cell(0, 0), rows: 2, columns: 3 }),
      'Kitchen A1:C2 is more than one cell',
    ],
    [
      'a cell with something in it',
      (workbook) => {
        workbook.type(cell(0, 0), 0);
        workbook.select(cell(0, 0));
      },
      'Kitchen A1 is not empty',
    ],
    [
      'a wanted argument blank',
      (workbook, pane) => {
        workbook.select(cell(0, 0));
        enter(pane.field('plant_spacing'), ' ');
      },
      'Fill in plant_spacing.',
    ],
    [
      'a protected sheet',
      (workbook) => {
        workbook.lock('Kitchen');
        workbook.select(cell(0, 0));
      },
      'The sheet "Kitchen" is protected.',
    ],
    [
      'a program that refuses',
      (workbook) => {
        workbook.failNext('apply', new HostError({ code: 'cellBeingEdited' }));
        workbook.select(cell(0, 0));
      },
      'Nothing was changed.',
    ],
  ])('is not written with %s', async (_, prepare, said) => {
    const workbook = kitchen();
    const pane = await openOne(workbook, 'PLANTS.DENSITY');
    prepare(workbook, pane);
    await put(pane, said);
    expect(workbook.changes).toEqual([]);
  });

  it.each([
    // A number, a date, a choice, a share, each with what is to be typed in its place.
    ['PLANTS.DENSITY', 'row_spacing', 'eighty', 'is "eighty", which is not a number. Type digits'],
    ['PLANTS.DENSITY', 'row_spacing', '12 ft', 'is "12 ft", which is not a number. Type digits'],
    ['PLANTS.DENSITY', 'row_spacing', '1,000', 'the comma is in the way'],
    ['PLANTS.DENSITY', 'row_spacing', '"6"x', 'which is not a number'],
    ['DATE.SETOUT', 'last_frost', 'may 2', 'which is not a date from March 1900 on. Type a date such as'],
    ['DATE.SETOUT', 'last_frost', '5/2/2026', 'is "5/2/2026", which is not a date'],
    ['DATE.FIRSTPICK', 'method (may be left out)', 'seeds', 'Choose one of: seed, transplant.'],
    ['FLOWER.CROSSES', 'saving_seed (may be left out)', 'maybe', 'Answer yes or no'],
    ['HEAT.SUM', 'highs', '82; warm', 'which is not a number'],
  ])('of %s is refused with %s %s, beside the field', async (id, label, typed, said) => {
    const workbook = kitchen();
    workbook.select(cell(0, 0));
    const pane = await openOne(workbook, id);
    const field = pane.field(label);
    const good = field.value;
    enter(field, typed);
    await put(pane, 'Nothing was written.');
    expect(pane.described(label)).toContain(said);
    expect(pane.spoken()).toContain(said);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(document.activeElement).toBe(field);
    expect(workbook.changes).toEqual([]);
    enter(field, good);
    await until(() => expect(field.hasAttribute('aria-invalid')).toBe(false));
    expect(pane.described(label)).not.toContain(said);
    await put(pane, 'stands in Kitchen A1 now.');
  });

  it('says what is wrong as soon as the field is left', async () => {
    const pane = await openOne(kitchen(), 'PLANTS.DENSITY');
    const field = pane.field('plant_spacing');
    enter(field, 'wide');
    field.dispatchEvent(new Event('change'));
    await until(() => expect(pane.described('plant_spacing')).toContain('is "wide", which is not a number'));
    expect(pane.field('row_spacing').hasAttribute('aria-invalid')).toBe(false);
  });

  it.each(['B2', "'Kitchen'!B2:B4", '2*3', 'SUM(B2,1)', 'LAST_FROST', '85%', '-1', '"2"', '1e3'])(
    'takes %s for a number: cells, names and formulas are not known here',
    async (typed) => {
      const workbook = kitchen();
      workbook.select(cell(0, 0));
      const pane = await openOne(workbook, 'PLANTS.DENSITY');
      enter(pane.field('row_spacing'), typed);
      await put(pane, 'stands in Kitchen A1 now.');
      expect(pane.field('row_spacing').hasAttribute('aria-invalid')).toBe(false);
    },
  );

  it('is not written over what somebody types in the same moment', async () => {
    const workbook = kitchen();
    const pane = await openOne(workbook, 'PLANTS.DENSITY');
    workbook.select(cell(0, 0));
    const release = workbook.hold();
    pane.button('Put into the selected cell').click();
    await new Promise((resolve) => setTimeout(resolve, 20));
    workbook.type(cell(0, 0), 'mine');
    release();
    await until(() => expect(pane.spoken()).toContain('was changed meanwhile'));
    expect((await workbook.read(cell(0, 0))).values).toEqual([['mine']]);
  });
});

describe('over the grid', () => {
  const opened = () => {
    const engine = startEngine(
      { functions: [...functions.values()], namespace: 'CUCURBIT.', firstSheet: 'Kitchen' },
      null,
    );
    return openWorkbook(engine, { onWrite: () => undefined, scrollTo: () => undefined });
  };
  let workbook: ReturnType<typeof opened>;
  afterEach(() => workbook.dispose());
  const valueOf = async (area: Area): Promise<ReadValue> => {
    await workbook.settle(20_000);
    return (await workbook.read(area)).values[0]?.[0] ?? null;
  };

  it('calculates, a list spills, one undo takes it back, and what is there stays', async () => {
    workbook = opened();
    const pane = await openOne(workbook, 'PLANTS.DENSITY');
    await workbook.reveal(cell(1, 1));
    await put(pane, 'stands in Kitchen B2 now.');
    // 43,560 sq ft an acre / (2 ft x 3 ft).
    expect(await valueOf(cell(1, 1))).toBe(7260);
    choose(pane, 'SOIL.RANGE');
    await put(pane, 'Kitchen B2 is not empty');
    expect(await valueOf(cell(1, 1))).toBe(7260);
    await workbook.reveal(cell(3, 0));
    await put(pane, 'stands in Kitchen A4 now.');
    // Oregon State: from 60 F; Georgia: at planting 64 F.
    expect([await valueOf(cell(3, 0)), await valueOf(cell(3, 4))]).toEqual([60, 64]);
    await workbook.reveal(cell(3, 4));
    await put(pane, 'Kitchen E4 is not empty');
    await workbook.undo();
    expect(await valueOf(cell(3, 0))).toBeNull();
    expect(await valueOf(cell(1, 1))).toBe(7260);
  }, 120_000);

  it('a formula that cannot be read is not written', async () => {
    workbook = opened();
    const pane = await openOne(workbook, 'SOIL.RANGE');
    await workbook.reveal(cell(0, 0));
    enter(pane.field('crop'), 'UPPER(A1');
    await put(pane, 'Nothing was changed.');
    expect(await valueOf(cell(0, 0))).toBeNull();
  }, 120_000);
});

it('over Excel a formula goes into an empty cell, and never over another', async () => {
  const standIn = openStandIn({ firstSheet: 'Kitchen', functions: [...functions.values()] });
  const workbook = openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.', clock: quickClock() });
  const sheet = standIn.book.sheets[0];
  if (sheet === undefined) throw new Error('no sheet');
  standIn.type(sheet, 0, 0, 36);
  const pane = await openOne(workbook, 'PLANTS.DENSITY');
  standIn.select(sheet, 0, 0);
  await put(pane, 'Kitchen A1 is not empty');
  enter(pane.field('plant_spacing'), 'A1');
  standIn.select(sheet, 2, 1);
  await put(pane, '=CUCURBIT.PLANTS.DENSITY(2,A1) stands in Kitchen B3 now.');
  const { values, formulas } = await workbook.read(cell(2, 1));
  expect([values, formulas]).toEqual([[[7260]], [['=CUCURBIT.PLANTS.DENSITY(2,A1)']]]);
  pane.handle.dispose();
  standIn.close();
}, 120_000);

describe('arguments', () => {
  it('of every example are those that its formula has', () => {
    for (const { id, example, parameters } of listed) {
      const args = exampleArguments(example, id);
      expect(example, id).toContain(`${id}(${args.join(',')})`);
      expect(args.length, id).toBeLessThanOrEqual(Math.max(1, parameters.length));
    }
  });

  it.each([
    [' cucumber ', '"cucumber"'],
    ['2026-05-02', 'DATE(2026,5,2)'],
    ['B2', 'B2'],
    ['b2', 'b2'],
    ['LAST_FROST', 'LAST_FROST'],
    ['85%', '85%'],
    ['"Creek"', '"Creek"'],
    ['sandía', '"sandía"'],
    ['Summer Squash', '"Summer Squash"'],
    ['Zucchini', 'Zucchini'],
    ['82; 79; 85', '"82; 79; 85"'],
    ['{82;79}', '{82;79}'],
    ['5/2/2026', '"5/2/2026"'],
    ['10/2', '10/2'],
    ['eighty', '"eighty"'],
    ['TRUE', 'TRUE'],
  ])('%s is typed as %s', (given, typed) => expect(typedArgument(given)).toBe(typed));

  it.each([
    ['Zucchini', '"Zucchini"'],
    ['Sandía ', '"Sandía"'],
    ['True', 'True'],
    ['B2', 'B2'],
    ['LAST_FROST', 'LAST_FROST'],
    ['DATE(2026,5,2)', 'DATE(2026,5,2)'],
  ])('%s that is no name of the workbook is typed as %s', (given, typed) =>
    expect(typedArgument(given, false)).toBe(typed),
  );

  it.each([
    ['85%', 0.85],
    ['-3', -3],
    // 1 January 2026 is day 46,023 of a spreadsheet; 2 May comes 121 days later.
    ['2026-05-02', 46144],
    ['sandía', 'sandía'],
    ['"2"', '2'],
    ['FALSE', false],
    ['1,000', '1,000'],
    ['5/2/2026', '5/2/2026'],
    ['B2', undefined],
    ['2*3', undefined],
    ['10/2', undefined],
    ['DATE(2026,5,2)', undefined],
    ['LAST_FROST', undefined],
    ['{1;2}', undefined],
  ])('%s is the value %s', (given, value) => expect(typedValue(given)).toBe(value));

  it('a word that is no name of the workbook is a value', () => {
    expect([typedValue('Zucchini'), typedValue('Zucchini', false)]).toEqual([undefined, 'Zucchini']);
  });
});
