/** The plan command: what it writes, what it says, and how it ends. */
import ExcelJS from 'exceljs';
import { beforeAll, describe, expect, test } from 'vitest';
import { nearestNames } from '../../src/calc/crops/nearestNames';
import { runPlan } from '../../src/commands/runPlan';
import { drawForSheet } from '../../src/entries/drawnWeather';
import { pngParts } from '../../src/entries/pngParts';
import { weatherTools } from '../../src/entries/weatherTools';
import { calendarTasks } from '../../src/functions/calendarTasks';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { openXlsx } from '../../src/hosts/file/openXlsx';
import { demoSeason } from '../../src/templates/demoGarden';
import { fillSheets } from '../../src/workbook/fillSheets';
import { HostError, isCellError, type HostProblem, type WorkbookPort } from '../../src/workbook/port';
import { withTyped } from '../../src/workbook/withTyped';
import { savedPlan, savedPlots } from '../hosts/file/savedPlan';

const frosts = ['--last-frost', '2026-05-02', '--first-frost', '2026-10-10'];

interface Setting {
  readonly options?: readonly string[];
  readonly readBytes?: (file: string) => Uint8Array;
  readonly file?: string;
  readonly refusal?: HostProblem;
  readonly textRefusal?: HostProblem;
  readonly seeWorkbook?: (workbook: WorkbookPort) => void;
}

/** Runs the command over a text; the file is kept in mind only. */
async function plan(
  csv: string,
  { options = frosts, readBytes, refusal, textRefusal, file = 'plots.csv', seeWorkbook }: Setting = {},
) {
  const said: string[] = [];
  const warned: string[] = [];
  const saved: string[] = [];
  const texts: (readonly [path: string, text: string])[] = [];
  const made: WorkbookPort[] = [];
  const code = await runPlan([file, ...options, '--out', 'plan.xlsx'], {
    readBytes: readBytes ?? (() => Buffer.from(csv)),
    nearestNames,
    ...weatherTools,
    calendarTasks,
    saveText: async (path, text) => {
      if (textRefusal !== undefined) throw new HostError(textRefusal);
      texts.push([path, text]);
    },
    drawForSheet: (weather) => drawForSheet(weather, pngParts()),
    openXlsx,
    makeWorkbook: () => {
      const workbook = createFileWorkbook({ functions: [...functions.values()] });
      made.push(workbook);
      seeWorkbook?.(workbook);
      return {
        ...workbook,
        save: async (path) => {
          if (refusal !== undefined) throw new HostError(refusal);
          saved.push(path);
        },
      };
    },
    say: (line) => said.push(line),
    warn: (line) => warned.push(line),
  });
  return { code, said: said.join('\n'), warned, saved, texts, written: made.at(-1) };
}

const header = 'Plot,Crop,Length,Width';
const good = 'Good,slicing cucumber,100,20';

describe('a list that is read', () => {
  test('is written, and its plots are printed', async () => {
    const { code, said, warned, saved } = await plan(`${header}\n${good}\n`);
    expect([code, warned, saved]).toEqual([0, [], ['plan.xlsx']]);
    // Hand computed: 4 rows 5 ft apart, 100 plants a foot apart in each.
    expect(said).toMatch(/Good\s+400 /);
    expect(said).toContain('Wrote plan.xlsx with 1 plot.');
  });

  test('is printed in lines that fit, with units, and without the columns that hold sentences', async () => {
    const list = [header, good, 'B,English cucumber,96,20', 'Long name of a far field,pumpkin,200,100'];
    const { said } = await plan(`${list.join('\n')}\n`, { options: [...frosts, '--units', 'us'] });
    const tables = said.slice(0, said.indexOf('\nTo look at')).trimEnd();
    expect(Math.max(...tables.split('\n').map((line) => line.length))).toBeLessThanOrEqual(160);
    const blocks = tables.split('\n\n').map((block) => block.split('\n'));
    expect(blocks.length).toBeGreaterThan(1);
    for (const block of blocks) {
      expect(block.map((line) => /^(Plot|Good|B|Long name of a far field) {2}/.test(line))).toEqual(
        list.map(() => true),
      );
    }
    const headers = blocks.flatMap((block) => block[0]?.trim().split(/ {2,}/) ?? []);
    for (const wanted of [
      'Seed to sow, seeds',
      'Seed weight, oz',
      'Soil at least, °F',
      'Yield, lb',
      'Days to spare, days',
    ]) {
      expect(headers).toContain(wanted);
    }
    for (const unprinted of ['Notes', 'Assumed', 'Keep apart', 'Same name']) {
      expect(headers).not.toContain(unprinted);
    }
    const metric = await plan(`${list.join('\n')}\n`, { options: [...frosts, '--units', 'metric'] });
    expect(metric.said).toContain('Seed weight, g');
  });

  test('has a start in a year that is not the season named, and one in its second year not', async () => {
    const lines = 'A,pumpkin,100,26,2028-06-14\nB,pumpkin,100,26,2026-06-14\n';
    const csv = `${header},Sow or set out on\n${lines}`;
    const sentence = (date: string, year: number) =>
      `Sow or set out on: ${date} is not in the season of ${year}. Check the year, here and in the Season sheet.`;
    const north = await plan(csv);
    expect(north.said).toContain(`plots.csv, line 2, A, ${sentence('2028-06-14', 2026)}`);
    expect(north.said).not.toContain('2026-06-14 is not in');
    // South of the equator the first frost of fall is in the next calendar year.
    const south = await plan(csv, { options: ['--last-frost', '2027-09-20', '--first-frost', '2028-05-01'] });
    expect(south.said).not.toContain('2028-06-14 is not in');
    expect(south.said).toContain(`plots.csv, line 3, B, ${sentence('2026-06-14', 2027)}`);
  });

  test('has a germination of 1 told as 100%, in a remark', async () => {
    const lines = 'A,pumpkin,100,26,1\nB,pumpkin,100,26,100%\nC,pumpkin,100,26,85%\n';
    const { code, said, warned } = await plan(`${header},Germination\n${lines}`);
    expect([code, warned]).toEqual([0, []]);
    const told = said.split('\n').filter((line) => line.includes('1 is 100%'));
    expect(told).toEqual([
      'plots.csv, line 2, A, Germination: 1 is 100% here. As a share type 0.85, in percent 85%.',
      'plots.csv, line 3, B, Germination: 1 is 100% here. As a share type 0.85, in percent 85%.',
    ]);
  });

  test('has a pollenizer share of 1 told as 100%, and none of 0', async () => {
    const lines = 'A,seedless watermelon,100,26,1\nB,seedless watermelon,100,26,0\n';
    const { said } = await plan(`${header},Pollenizer share\n${lines}`);
    const told = said.split('\n').filter((line) => line.includes('1 is 100%'));
    expect(told).toEqual([
      'plots.csv, line 2, A, Pollenizer share: 1 is 100% here. As a share type 0.85, in percent 85%.',
    ]);
  });

  test('has its remarks named by line and plot', async () => {
    const { code, said } = await plan(`${header},Harvest days\n\nA,slicing cucumber,100,20,90\n`);
    expect(code).toBe(0);
    expect(said).toContain('\nTo look at:\nplots.csv, line 3, A, Notes: Sown after the last date');
  });
});

describe('a price list of seed', () => {
  const withPrices = (prices: string, given: readonly string[] = []) =>
    plan('', {
      options: [...frosts, '--seed-prices', 'seed.csv', ...given],
      readBytes: (file) => Buffer.from(file === 'seed.csv' ? prices : `${header}\n${good}\n`),
    });
  const costIn = async (workbook: WorkbookPort | undefined) => {
    const table = await workbook?.readTable('SeedOrder');
    const line = table?.rows.find(([crop]) => crop === 'slicing cucumber') ?? [];
    return ['To buy', 'Packs to buy', 'Cost'].map((column) => line[table?.headers.indexOf(column) ?? -1]);
  };

  test('goes into the Seed order sheet', async () => {
    const list = 'Price of a pack;Crop;Seeds in a pack;Lot or note\n4,5;Cucumber;250;007\n8;gourd;100;\n';
    const { code, warned, written } = await withPrices(list);
    expect([code, warned]).toEqual([0, []]);
    const [toBuy, packs, cost] = await costIn(written);
    // 400 plants and a bit more seed at the standard of 80 %, in packs of 250: three of them at 4.50.
    expect(toBuy).toBeGreaterThan(500);
    expect([packs, cost]).toEqual(['3 of 250', 13.5]);
    const prices = await written?.readTable('SeedPrices');
    expect(prices?.rows.map((row) => row.at(-1))).toEqual(['007', null]);
  });

  test('has a price with a decimal comma named, before a lot too', async () => {
    const list = 'Crop,Seeds in a pack,Price of a pack,Lot or note\ncucumber,250,3,50\ngourd,100,0,04\n';
    const { code, warned, written } = await withPrices(list);
    expect(code).toBe(1);
    expect(warned.slice(1).map((line) => line.slice(0, 81))).toEqual([
      'seed.csv, line 2, column Price of a pack: the comma in "3,50" is in the way. Writ',
      'seed.csv, line 3, column Price of a pack: the comma in "0,04" is in the way. Writ',
    ]);
    const prices = await written?.readTable('SeedPrices');
    expect(prices?.rows.map((row) => [row[2], row.at(-1)])).toEqual([
      ['3,50?', null],
      ['0,04?', null],
    ]);
  });

  test('has each line to mend named once by number and column, and the others count', async () => {
    const lines = [
      'cucumber,250,4.50',
      'cucumbr,250,4',
      'gourd,100,$5',
      'gourd,0,5',
      'pumpkin,100',
      'pumpkin,100,',
      ',5,5',
    ];
    const { code, warned, written } = await withPrices(
      `Crop,Seeds in a pack,Price of a pack\n${lines.join('\n')}\n`,
    );
    expect(code).toBe(1);
    expect(warned).toEqual([
      '6 things to mend in seed.csv:',
      expect.stringMatching(
        /^seed\.csv, line 3, column Crop: "cucumbr" is not known\. Near it: .*cucumber.* Until then the packs of this crop are not worked out\.$/,
      ),
      'seed.csv, line 4, column Price of a pack: take the currency sign out of "$5"; write thousands without a mark (1000) and decimals with a point (4.50), and nothing else. Until then the packs of this crop are not worked out.',
      'seed.csv, line 5, column Seeds in a pack: 0 does not fit. It must be at least 1. Until then the packs of this crop are not worked out.',
      'seed.csv, line 6, pumpkin, Per 1,000 seeds: The price of a pack is missing. Fill it in.',
      'seed.csv, line 7, pumpkin, Per 1,000 seeds: The price of a pack is missing. Fill it in.',
      expect.stringMatching(/^seed\.csv, line 8, pack without a crop, /),
    ]);
    expect((await costIn(written))[1]).toBe('3 of 250');
  });

  test('that has no pack, or cannot be read, is refused before anything is written', async () => {
    for (const [list, said] of [
      [
        '',
        /^seed\.csv, line 1: the file is empty\. Give a header line with Crop, Seeds in a pack and Price of a pack, and /,
      ],
      [
        'Crop,Seeds in a pack\n',
        /^seed\.csv has no packs: give a header line with Crop, Seeds in a pack and Price of a pack, /,
      ],
    ] as const) {
      const { code, warned, saved } = await withPrices(list);
      expect([code, saved]).toEqual([2, []]);
      expect(warned[0]).toMatch(said);
    }
  });
});

describe('lists of prices', () => {
  /** Each by the name of its file. */
  const withPrices = (lists: Readonly<Record<string, string>>, given: readonly string[] = []) =>
    plan('', {
      options: [...frosts, ...Object.keys(lists).flatMap((file) => ['--prices', file]), ...given],
      readBytes: (file) => Buffer.from(lists[file] ?? `${header}\n${good}\n`),
    });
  const rowIn = async (workbook: WorkbookPort | undefined, name: string, of: string) => {
    const table = await workbook?.readTable(name);
    const row = table?.rows.find(([first]) => first === of) ?? [];
    return Object.fromEntries(row.map((value, index) => [table?.headers[index] ?? '', value]));
  };

  test('go into the Prices sheet and the budget: prices, how much of it, and prices of each crop', async () => {
    const { code, warned, written } = await withPrices({
      'prices.csv': 'Item,First,Second\nWages,16,18\nSelling,5%,\n',
      'rates.csv': 'value;RATE\n1,5;work before harvest\n',
      'crops.csv': 'Crop,Sold by,Price,Weight of one\nCucumber,each,0.5,0.25\nPumpkin,per lb,0.4,\n',
    });
    expect([code, warned]).toEqual([0, []]);
    expect(await rowIn(written, 'Prices', 'Wages')).toMatchObject({ First: 16, Second: 18 });
    expect(await rowIn(written, 'Prices', 'Selling')).toMatchObject({ First: 0.05, Second: null });
    // 4 rows of 100 ft, 1.5 hours on 100 ft, at 16: by hand.
    expect(await rowIn(written, 'BudgetLines', 'Work before harvest')).toMatchObject({ Amount: 96 });
    expect(await rowIn(written, 'CropPrices', 'slicing cucumber')).toMatchObject({
      'Sold by': 'each',
      'Price by weight': 2,
    });
    expect(await rowIn(written, 'CropPrices', 'pumpkin')).toMatchObject({ 'Price by weight': 0.4 });
  });

  test('have each line to mend named once by number and column, and the others count', async () => {
    const lines = [
      'Wages,$16,18',
      'Trays,-1,',
      'Selling,5,x',
      'Mulhc,1,',
      'Wages,15,',
      ',4,',
      'Hauling,0.03,',
    ];
    const { code, warned, written } = await withPrices({
      'prices.csv': `Item,First,Second,Thrid\n${lines.map((line) => `${line},`).join('\n')}\n`,
    });
    expect(code).toBe(1);
    expect(warned).toEqual([
      '8 things to mend in prices.csv:',
      'prices.csv, line 1: the column "Thrid" is not one of this table of Prices and was left out. Columns: Item, First, Second.',
      'prices.csv, line 2, column First: take the currency sign out of "$16"; write thousands without a mark (1000) and decimals with a point (4.50), and nothing else. Until then it counts as blank.',
      'prices.csv, line 3, Trays, First: type a number of 0 or more in digits alone, decimals after a point, such as 1200 or 4.50.',
      'prices.csv, line 4, column Second: "x" is not a number. Type digits only, with a decimal point and no unit. Until then it counts as blank.',
      'prices.csv, line 4, Selling, First: type a share from 0 to 100% as a number, such as 5% or 0.05; a text does not count.',
      'prices.csv, line 5, column Item: "Mulhc" is not known. Near it: Mulch. Until then it counts as blank.',
      'prices.csv, line 6, column Item: "Wages" is also on line 2, and the first of them counts. Take one away.',
      'prices.csv, line 7, column Item: the line has no name. Give the one that stands in the Prices sheet.',
    ]);
    expect(await rowIn(written, 'Prices', 'Wages')).toMatchObject({ First: '$16?', 'Second used': 18 });
    expect(await rowIn(written, 'Prices', 'Hauling')).toMatchObject({ 'First used': 0.03 });
  });

  test('with a decimal comma that made two cells of one are no prices of 0 and 4', async () => {
    const { code, warned, written } = await withPrices({
      'prices.csv': 'Item,First,Second\nDrip tape,0,04\n',
    });
    expect(code).toBe(1);
    expect(warned[1]).toMatch(/^prices\.csv, line 2, column First: the comma in "0,04" is in the way\./);
    expect(await rowIn(written, 'Prices', 'Drip tape')).toMatchObject({ First: '0,04?', 'First used': '' });
  });

  test('of a crop by two names are one line too many', async () => {
    const { warned } = await withPrices({ 'crops.csv': 'Crop,Price\nzucchini,1\nsummer squash,2\n' });
    expect(warned).toEqual([
      '1 thing to mend in crops.csv:',
      'crops.csv, line 3, column Crop: "summer squash" is also on line 2, and the first of them counts. Take one away.',
    ]);
  });

  test('leave alone what a plan that comes back has in other cells, and go before it in their own', async () => {
    const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
    await fillSheets(workbook, savedPlan, 'plan');
    const bytes = await workbook.bytes();
    const { code, written } = await plan('', {
      file: 'old.xlsx',
      options: ['--prices', 'prices.csv'],
      readBytes: (file) => (file === 'prices.csv' ? Buffer.from('Item,First\nWages,20\n') : bytes),
    });
    expect(code).toBe(0);
    // Those of the invented garden.
    expect(await rowIn(written, 'Prices', 'Wages')).toMatchObject({ First: 20, Second: 18 });
    expect(await rowIn(written, 'Prices', 'Trays')).toMatchObject({ First: 1.5 });
  });

  test.each([
    [
      { 'prices.csv': '' },
      /^prices\.csv, line 1: the file is empty\. Give a header line and a line for each price/,
    ],
    [{ 'prices.csv': 'Name,First\nTrays,1\n' }, /^prices\.csv has none of the columns Item, Rate, Crop/],
    [{ 'prices.csv': 'Item,First\n' }, /^prices\.csv has no price/],
    [{ 'prices.csv': 'Item,First\nMulhc,1\n' }, /^prices\.csv, line 2, column Item: "Mulhc" is not known/],
    [
      { 'a.csv': 'Item,First\nTrays,1\n', 'b.csv': 'Item,First\nMulch,1\n' },
      /^b\.csv has a column Item as a\.csv has\. Make one list of the two/,
    ],
  ])('that cannot be taken are refused before anything is written: %j', async (lists, says) => {
    const { code, warned, saved } = await withPrices(lists);
    expect([code, saved]).toEqual([2, []]);
    expect(warned[0]).toMatch(says);
  });
});

describe('a plot to mend spoils nothing else and is named by line, with what to do', () => {
  test.each([
    [
      'an unknown crop',
      'A,zuchini,100,20',
      'line 2, column Crop: "zuchini" is not known. Near it: zucchini, zucchinis. Only this plot is spoiled.',
    ],
    [
      'a crop like no other',
      'A,xylophone,100,20',
      'line 2, column Crop: "xylophone" is not known. The Crops sheet lists the names. Only this plot is spoiled.',
    ],
    [
      'words for a number',
      'A,slicing cucumber,long,20',
      'line 2, column Length: "long" is not a number. Type digits only, with a decimal point and no unit. Only this plot is spoiled.',
    ],
    [
      'a comma in a number',
      'A,slicing cucumber,"1,000",20',
      'line 2, column Length: the comma in "1,000" is in the way. Write thousands without a mark (1000) and decimals with a point (0.85). Only this plot is spoiled.',
    ],
    [
      'a currency sign',
      'A,slicing cucumber,$5,20',
      'line 2, column Length: take the currency sign out of "$5"; write thousands without a mark (1000) and decimals with a point (4.50), and nothing else. Only this plot is spoiled.',
    ],
    [
      'no name',
      ',slicing cucumber,100,20',
      'line 2, column Plot: the plot has no name. Give each plot a name of its own.',
    ],
    ['no crop', 'A,,100,20', 'line 2, A, Crop: Choose a crop.'],
    [
      'no figure for a blank',
      'A,gourd,100,20',
      'line 2, A, Germination: The reference has no germination standard for this crop: fill in Germination.',
    ],
    [
      'a negative length',
      'A,slicing cucumber,-100,20',
      'line 2, column Length: -100 does not fit. It must be above 0 and at most 1000000. Only this plot is spoiled.',
    ],
    [
      'a negative length and no name',
      ',slicing cucumber,-100,20',
      [
        'line 2, column Length: -100 does not fit. It must be above 0 and at most 1000000. Only this plot is spoiled.',
        'line 2, column Plot: the plot has no name. Give each plot a name of its own.',
      ],
    ],
    [
      'a plot narrower than its row',
      'A,slicing cucumber,100,2',
      'line 2, A, Plants: No row fits: the plot is 2 ft wide and each row needs 5 ft. Give a smaller row spacing; or, for one row along a fence or bed, write a formula of your own with the edge "onedge".',
    ],
    [
      'too many cells',
      'A,slicing cucumber,1,000,20',
      'line 2: the line has 5 cells for 4 columns. Mend the separators: one inside a name or a number makes two cells of one. Write 0.04 instead of 0,04, and a name with a comma in quotation marks. The line was left out.',
    ],
    [
      'a name in use',
      'good,slicing cucumber,100,20',
      'line 3, column Plot: "Good" is also on line 2. Give each plot its own name.',
    ],
  ])('%s', async (_, line, wanted) => {
    const { code, said, warned, saved } = await plan(`${header}\n${line}\n${good}\n`);
    expect([code, saved]).toEqual([1, ['plan.xlsx']]);
    const lines = [wanted].flat();
    const things = lines.length === 1 ? '1 thing' : `${lines.length} things`;
    expect(warned).toEqual([`${things} to mend in plots.csv:`, ...lines.map((one) => `plots.csv, ${one}`)]);
    expect(said).toMatch(/Good\s+400 /);
    expect(said).not.toMatch(/, (Notes|Taken as): .*(not known|this name|#N\/A)/);
  });

  test('words that are none of the choices, with the choices', async () => {
    const { warned } = await plan(`${header},Layout,Start\nA,slicing cucumber,100,20,row,pot\n`);
    expect(warned.slice(1)).toEqual([
      'plots.csv, line 2, column Layout: "row" is not known. Choose one of: rows, hills, beds. Only this plot is spoiled.',
      'plots.csv, line 2, column Start: "pot" is not known. Choose one of: seed, transplant. Only this plot is spoiled.',
    ]);
  });

  test('a share written as a count of per cent, and a figure that no function reads', async () => {
    const { warned } = await plan(
      `${header},Germination,Plants per hill,Price\nA,slicing cucumber,100,20,85,2.5,-1\nB,pumpkin,1e9,20,,,\n`,
    );
    expect(warned.slice(1)).toEqual([
      'plots.csv, line 2, column Germination: write 85 percent as 85% or 0.85. Only this plot is spoiled.',
      'plots.csv, line 2, column Plants per hill: 2.5 is not a whole number. Round it. Only this plot is spoiled.',
      'plots.csv, line 2, column Price: -1 does not fit. It must be at least 0. Only this plot is spoiled.',
      'plots.csv, line 3, column Length: 1e9 does not fit. It must be above 0 and at most 1000000. Only this plot is spoiled.',
    ]);
  });

  test('what follows from a cell that cannot be read is not said again, another trouble of the plot is', async () => {
    const { warned } = await plan(
      `${header},Price\nA,slicing cucumber,"1,000",20,\nB,slicing cucumber,-9,20,$1\n`,
    );
    expect(warned.slice(1).map((line) => line.slice(0, 40))).toEqual([
      'plots.csv, line 2, column Length: the co',
      'plots.csv, line 3, column Length: -9 doe',
      'plots.csv, line 3, column Price: take th',
    ]);
  });

  test('a number with a power of ten is a number', async () => {
    const { code, warned, said } = await plan(`${header},Row spacing\nA,slicing cucumber,1e2,20,5e0\n`);
    // Hand computed: 4 rows 5 ft apart, 100 plants a foot apart in each.
    expect([code, warned]).toEqual([0, []]);
    expect(said).toMatch(/A\s+400 /);
  });

  test('a number that no spreadsheet holds is told of where it stands, in every list', async () => {
    const lists: Readonly<Record<string, string>> = {
      'plots.csv': `${header}\nA,slicing cucumber,1e400,20\n${good}\n`,
      'seed.csv': 'Crop,Seeds in a pack,Price of a pack\ncucumber,100,1e309\n',
      'prices.csv': 'Item,First\nLand,1e400\n',
    };
    const { code, said, warned } = await plan('', {
      options: [...frosts, '--seed-prices', 'seed.csv', '--prices', 'prices.csv'],
      readBytes: (file) => Buffer.from(lists[file] ?? ''),
    });
    expect(code).toBe(1);
    const told = warned.filter((line) => line.includes(' is not a number.')).map((line) => line.slice(0, 55));
    expect(told).toEqual([
      'plots.csv, line 2, column Length: "1e400" is not a numb',
      'seed.csv, line 2, column Price of a pack: "1e309" is no',
      'prices.csv, line 2, column First: "1e400" is not a numb',
    ]);
    expect(said).toMatch(/Good\s+400 /);
  });

  test.each([
    [
      'Length',
      'A;slicing cucumber;1.234;20;',
      'line 2, column Length: "1.234" may mean thousands.',
      'Plants',
    ],
    [
      'Price',
      'A;slicing cucumber;100;20;1,234',
      'line 2, column Price: "1,234" may mean thousands.',
      'Income',
    ],
    ['Price', 'A;slicing cucumber;100;20;$5', 'line 2, column Price: take the currency sign out', 'Income'],
  ])('a %s in doubt is not used, and said once: %s', async (_column, line, wanted, spoiled) => {
    let workbook: WorkbookPort | undefined;
    const csv = `${header},Price`.replaceAll(',', ';');
    const { warned } = await plan(`${csv}\n${line}\n`, { seeWorkbook: (one) => (workbook = one) });
    expect(warned.slice(1)).toEqual([expect.stringContaining(wanted)]);
    const plots = await workbook?.readTable('Plots');
    expect(isCellError(plots?.rows[0]?.[plots.headers.indexOf(spoiled)])).toBe(true);
  });

  test('a sheet that was saved as text, with its title above the headers and what it computes', async () => {
    const sheet = [
      'Plots,,,,',
      '"Tinted cells, here, are yours.",,,,',
      ',,,,',
      ',,ft,ft,',
      `${header},Plants`,
    ];
    const { code, warned, said } = await plan(`${sheet.join('\n')}\n${good},400\nB,gord,9,9,1\n`);
    expect([code, warned.slice(1)]).toEqual([
      1,
      [expect.stringMatching(/^plots\.csv, line 7, column Crop: "gord" is not known\. Near it: gourd/)],
    ]);
    expect(said).toMatch(/Good\s+400 /);
    expect(said).toContain('The sheet computes these itself, so they were left out: Plants.');
  });

  test('columns that are not asked for', async () => {
    const { code, warned } = await plan(`${header},Lenght,Colour,\n${good},1,red,x\n`);
    expect(code).toBe(1);
    expect(warned.slice(1)).toEqual([
      'plots.csv, line 1: the column "Lenght" is not one of Plots and was left out. Near it: Length.',
      expect.stringContaining(
        'the column "Colour" is not one of Plots and was left out. Columns: Plot, Crop,',
      ),
      'plots.csv, line 1: column 7 has no header and was left out. Give it one, or empty it.',
    ]);
  });
});

describe('nothing is written, and it says once why', () => {
  test('an option that is none', async () => {
    const { code, warned } = await plan(`${header}\n${good}\n`, { options: [...frosts, '--units', 'feet'] });
    expect([code, warned]).toEqual([
      2,
      ['--units is "feet". Give us (feet, inches, pounds, Fahrenheit) or metric.', 'Nothing was written.'],
    ]);
  });

  test.each([
    [
      'an empty file',
      '',
      'plots.csv, line 1: the file is empty. Give a header line and a line for each plot.',
    ],
    [
      'a header alone',
      `${header}\n`,
      'plots.csv has no plots: give a header line and at least one line under it.',
    ],
    [
      'a header that stands twice',
      `Plot,Length,Crop,length\nA,1,gourd,2\n`,
      'plots.csv, line 1: columns 2 and 4 both have the header "length". Take one away or rename it.',
    ],
    [
      'a quote that opens in the header',
      `Plot,"Crop\nA,gourd\n`,
      'plots.csv, line 1: a quotation mark is opened and never closed. Mend it; the line was left out.',
    ],
  ])('%s', async (_, csv, sentence) => {
    const { code, warned, saved } = await plan(csv);
    expect([code, warned, saved]).toEqual([2, [sentence, 'Nothing was written.'], []]);
  });

  test.each([
    ['ENOENT', 'There is no file plots.csv. Check its name and folder.'],
    ['EACCES', 'You may not read plots.csv. Ask its owner, or copy it to a folder of your own.'],
    ['EISDIR', 'plots.csv is a folder. Give the file with the plots in it.'],
    ['EIO', 'The file plots.csv cannot be read: EIO. Copy it elsewhere and try again.'],
  ])('a list that the machine refuses with %s', async (reason, sentence) => {
    const readBytes = () => {
      throw Object.assign(new Error(reason), { code: reason });
    };
    expect((await plan('', { readBytes })).warned).toEqual([sentence, 'Nothing was written.']);
  });

  test('a list in latin1: no letter may get lost', async () => {
    const readBytes = () => Buffer.from('Créek', 'latin1');
    expect((await plan('', { readBytes })).warned).toEqual([
      'The text of plots.csv is neither UTF-8 nor UTF-16. Save it as "CSV UTF-8".',
      'Nothing was written.',
    ]);
  });

  test.each([
    [
      { code: 'fileExists', file: 'plan.xlsx' } as const,
      'There is a file plan.xlsx already. Choose another name. Or add --replace to write over it.',
    ],
    [
      { code: 'fileNotWritable', file: 'plan.xlsx' } as const,
      'The file plan.xlsx cannot be written. Check that its folder is there, that you may write in it, and that no other program has the file open.',
    ],
  ])('a workbook that the machine refuses: %j', async (refusal, sentence) => {
    const { code, warned, said } = await plan(`${header}\n${good}\n`, { refusal });
    expect([code, warned, said]).toEqual([2, [sentence, 'Nothing was written.'], '']);
  });
});

test('asked for help, it says how it is used and does nothing', async () => {
  const { code, said, warned, saved } = await plan('', { options: ['--help'] });
  expect([code, warned, saved]).toEqual([0, [], []]);
  expect(said).toMatch(/^Usage: npm run -s plan -- plots\.csv --last-frost/);
});

describe('a plan that comes back as an .xlsx', () => {
  let bytes: Uint8Array;
  beforeAll(async () => {
    const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
    await fillSheets(workbook, savedPlan, 'plan');
    bytes = await workbook.bytes();
  });
  const planned = (options: readonly string[] = []) =>
    plan('', { readBytes: () => bytes, file: 'old plan.xlsx', options });
  const named = async (workbook: WorkbookPort | undefined, name: string): Promise<unknown> => {
    const area = await workbook?.locate(name);
    return area && (await workbook?.read(area))?.values[0]?.[0];
  };

  test('is written anew with its season, plots and figures, and needs no option', async () => {
    const { code, said, written, warned } = await planned();
    expect([code, warned]).toEqual([0, []]);
    expect(said).toContain(`Wrote plan.xlsx with ${savedPlots.length} plots.`);
    expect(said).toContain('1 figure of Crops is other than ours and was taken over as typed.');
    expect(await named(written, 'LAST_FROST')).toBe(demoSeason['LAST_FROST']);
    expect(await named(written, 'UNITS')).toBe('metric');
    const plots = await written?.readTable('Plots');
    expect(plots?.rows.map(([name]) => name)).toEqual(savedPlots.map(({ Plot }) => Plot));
  });

  test('gives way to the options that are given', async () => {
    const { written } = await planned(['--last-frost', '2028-05-05', '--first-frost', '2028-10-01']);
    // 366 days after 2027-05-05, three days after the 46509 of the invented garden.
    expect(await named(written, 'LAST_FROST')).toBe(46_509 + 3 + 366);
    expect(await named(written, 'SEASON_YEAR')).toBe(2028);
    expect(await named(written, 'UNITS')).toBe('metric');
    expect(await named(written, 'ASSURANCE')).toBe(0.95);
  });

  test('has what wants mending named by the line of its sheet', async () => {
    const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
    const spoiled = savedPlan.map((request) => ({
      ...request,
      inputs: request.inputs.map((input, index) => (index === 1 ? { ...input, Length: 'long' } : input)),
    }));
    await fillSheets(workbook, spoiled, 'plan');
    const { area } = (await workbook.readTable('Plots')) ?? {};
    const file = await workbook.bytes();
    const { code, warned } = await plan('', { readBytes: () => file, file: 'plan.xlsx', options: [] });
    expect(code).toBe(1);
    // Lines count from 1, and the headers stand above the first plot.
    expect(warned[1]).toContain(
      `plan.xlsx, line ${(area?.row ?? 0) + 3}, column Length: "long" is not a number.`,
    );
  });

  test('has what wants mending in its prices and seed named by sheet and cell, once', async () => {
    const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
    const wrong = {
      Prices: { Land: { First: '$1,200' } },
      Rates: { Picking: { Value: 0 } },
      CropPrices: { pumpkin: { 'Sold by': 'dozen' } },
      SeedOrder: { 'slicing cucumber': { 'Seed on hand': -5, 'Packed in': 2027 } },
    };
    const spoiled = savedPlan.map((request) => ({
      ...request,
      template: withTyped(request.template, wrong),
      ...(request.template.id === 'seedorder' && {
        inputs: [{ Crop: 'pumpkin', 'Seeds in a pack': 0, 'Price of a pack': 4 }, ...request.inputs],
      }),
    }));
    await fillSheets(workbook, spoiled, 'plan');
    const file = await workbook.bytes();
    const { code, warned, written } = await plan('', {
      readBytes: () => file,
      file: 'old.xlsx',
      options: [],
    });
    expect(code).toBe(1);
    expect(warned[0]).toBe('5 things to mend in plan.xlsx:');
    const places = warned
      .slice(1)
      .map(
        (line) => /^plan\.xlsx, sheet (.+), cell ([A-Z])(\d+), (.+?): (.+)$/.exec(line)?.slice(1) ?? [line],
      );
    expect(places.map(([, , , row, advice]) => [row, advice])).toEqual([
      [
        'pumpkin, Seeds in a pack',
        'The size of a pack is 0. It must be at least 1 seed and at most 10000000 seeds.',
      ],
      ['slicing cucumber, Seed on hand', expect.stringContaining('give whole seeds in digits alone')],
      [
        'Land, First',
        expect.stringMatching(
          /^type a number of 0 or more in digits alone, decimals after a point, such as 1200/,
        ),
      ],
      ['Picking, Value', expect.stringMatching(/^type a number above 0/)],
      ['pumpkin, Sold by', 'choose weight (a lb, or a kg where Season is metric), bushel, carton or each.'],
    ]);
    const there = places.map(async ([sheet = '', column = '', row]) => {
      const at = { row: Number(row) - 1, column: column.charCodeAt(0) - 65, rows: 1, columns: 1 };
      return (await written?.read({ sheet, ...at }))?.values[0]?.[0];
    });
    expect(await Promise.all(there)).toEqual([0, -5, '$1,200', 0, 'dozen']);
  });

  test('has the lines that another program wrote under its tables', async () => {
    const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
    await fillSheets(workbook, savedPlan, 'plan');
    // exceljs leaves the reference of a table as it is.
    const other = new ExcelJS.Workbook();
    await other.xlsx.load((await workbook.bytes()) as unknown as ExcelJS.Buffer);
    const writeUnder = async (table: string, line: Readonly<Record<string, string | number>>) => {
      const there = await workbook.readTable(table);
      if (there === null) throw new Error(`no table ${table}`);
      const { area, headers } = there;
      const row = other.getWorksheet(area.sheet)?.getRow(area.row + area.rows + 1);
      for (const [title, value] of Object.entries(line)) {
        if (row) row.getCell(area.column + headers.indexOf(title) + 1).value = value;
      }
    };
    await writeUnder('Plots', { Plot: 'Typed under', Crop: 'pumpkin', Length: 100, Width: 26 });
    const pack = { Crop: 'gourd', 'Seeds in a pack': 77, 'Price of a pack': 5 };
    await writeUnder('SeedPrices', pack);
    const file = new Uint8Array(await other.xlsx.writeBuffer());
    const { warned, written } = await plan('', { readBytes: () => file, file: 'old.xlsx', options: [] });
    expect(warned).toEqual([]);
    expect((await written?.readTable('Plots'))?.rows.at(-1)?.[0]).toBe('Typed under');
    const packs = await written?.readTable('SeedPrices');
    expect(packs?.rows.at(-1)?.slice(0, 3)).toEqual(Object.values(pack));
  });

  test.each([
    ['plan.xls', 'The file is no workbook, whatever its name says.'],
    ['plots.csv', 'The text of plots.csv is neither UTF-8 nor UTF-16.'],
  ])('is refused where it is something else: %s', async (file, sentence) => {
    const picture = Uint8Array.from([0x89, 0x50, 0x4e, 0x47]);
    const { code, warned, saved } = await plan('', { readBytes: () => picture, file });
    expect([code, saved]).toEqual([2, []]);
    expect(warned[0]).toContain(sentence);
  });
});

describe('a file far bigger than a plan', () => {
  test('is refused before it is read, a list of too many lines before it is filled', async () => {
    const huge = await plan('', { readBytes: () => new Uint8Array(20_000_001) });
    expect(huge.code).toBe(2);
    expect(huge.warned.join()).toMatch(/far larger than a list of plots.*delete the others, save it as CSV/);
    const long = await plan(`Plot,Crop\n${'a,gourd\n'.repeat(10_001)}`);
    expect(long.code).toBe(2);
    expect(long.warned.join()).toMatch(/has 10001 lines, and a plan takes at most 10000\. Divide it/);
  });

  test('and what it says is quoted short', async () => {
    const { warned } = await plan(`${'x'.repeat(1_000_000)}\n1\n`);
    expect(warned.join('\n').length).toBeLessThan(2000);
  });
});

describe('a calendar as a file of its own', () => {
  const options = [...frosts, '--calendar', 'plan.ics'];
  const plots = `${header}\n${good}\n`;
  /** A folder with the list alone, or with other files too. */
  const folder =
    (...names: readonly string[]) =>
    (file: string): Uint8Array => {
      if (!names.includes(file)) throw Object.assign(new Error(file), { code: 'ENOENT' });
      return Buffer.from(plots);
    };

  test('is written beside the plan', async () => {
    const { code, saved, texts, said } = await plan('', { options, readBytes: folder('plots.csv') });
    expect([code, saved]).toEqual([0, ['plan.xlsx']]);
    expect(texts.map(([path]) => path)).toEqual(['plan.ics']);
    expect(texts[0]?.[1]).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(said).toContain('Wrote plan.ics for a phone');
  });

  test('is not asked for without the option', async () => {
    expect((await plan(plots)).texts).toEqual([]);
  });

  test('is refused before anything is written where there is such a file, but for --replace', async () => {
    const readBytes = folder('plots.csv', 'plan.ics');
    const { code, warned, saved, texts } = await plan('', { options, readBytes });
    expect([code, saved, texts]).toEqual([2, [], []]);
    expect(warned[0]).toContain('There is a file plan.ics already.');
    const again = await plan('', { options: [...options, '--replace'], readBytes });
    expect([again.code, again.saved, again.texts.length]).toEqual([0, ['plan.xlsx'], 1]);
  });

  test('that cannot be written is told of, with the plan written', async () => {
    const textRefusal = { code: 'fileNotWritable', file: 'plan.ics' } as const;
    const { code, warned, saved } = await plan('', { options, readBytes: folder('plots.csv'), textRefusal });
    expect([code, saved]).toEqual([1, ['plan.xlsx']]);
    expect(warned.join()).toContain('The plan is written, but not its calendar.');
  });

  test('of no plot that can be counted has nothing to hold', async () => {
    const { code, warned, texts } = await plan(`${header}\nEast,no such crop,50,20\n`, {
      options: [...options, '--replace'],
    });
    expect([code, texts]).toEqual([1, []]);
    expect(warned.join()).toContain('plan.ics was not written');
  });

  test('is called .ics', async () => {
    const wrong = [...frosts, '--calendar', 'plan.txt'];
    const { code, warned } = await plan(plots, { options: wrong });
    expect([code, warned[0]]).toEqual([2, '--calendar is "plan.txt". Give a name that ends in .ics.']);
  });
});
