/** The Seed order sheet, computed by the file host. `hostsAgree.test` holds the others to it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { crops } from '../../src/reference/crops';
import { demoSeason } from '../../src/templates/demoGarden';
import { plotsTemplate } from '../../src/templates/plots';
import { seedOrderTemplate } from '../../src/templates/seedOrder';
import { allTemplates } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import { isCellError, type CellContent, type CellValue, type ReadValue } from '../../src/workbook/port';
import { readFilling } from '../../src/workbook/readFilling';
import type { InputRow, SheetTemplate } from '../../src/workbook/template';
import { seeded } from '../calc/dates/calendar';

const words = english.seedOrder;
const empty = () => createMemoryWorkbook({ functions: [...functions.values()] });

type Line = Readonly<Record<string, ReadValue>>;

/** What people typed into the rows of the crops, by crop and header. */
const withTyped = (typed: Readonly<Record<string, InputRow>>): SheetTemplate => ({
  ...seedOrderTemplate,
  tables: seedOrderTemplate.tables.map((table) => ({
    ...table,
    rows:
      table.rows?.map((cells) =>
        cells.map(
          (cell, i): CellContent => typed[String(cells[0])]?.[table.columns[i]?.header ?? ''] ?? cell,
        ),
      ) ?? null,
  })),
});

interface Given {
  readonly plots?: readonly InputRow[];
  readonly prices?: readonly InputRow[];
  readonly typed?: Readonly<Record<string, InputRow>>;
  readonly season?: Readonly<Record<string, CellValue>>;
}

async function filled({ plots = [], prices = [], typed = {}, season = {} }: Given) {
  const workbook = empty();
  const inputs: Readonly<Record<string, readonly InputRow[]>> = {
    [plotsTemplate.id]: plots,
    [seedOrderTemplate.id]: prices,
  };
  const requests = allTemplates.map((template) => ({
    template: template === seedOrderTemplate ? withTyped(typed) : template,
    inputs: inputs[template.id] ?? [],
    form: { ...demoSeason, ...season },
  }));
  await fillSheets(workbook, requests, 'test');
  return workbook;
}

type Filled = Awaited<ReturnType<typeof filled>>;

async function linesOf(workbook: Filled, name: string): Promise<readonly Line[]> {
  const table = await workbook.readTable(name);
  if (table === null) throw new Error(`no table ${name}`);
  return table.rows.map((cells) =>
    Object.fromEntries(table.headers.map((header, i) => [header, cells[i] ?? null])),
  );
}

async function named(workbook: Filled, name: string): Promise<ReadValue> {
  const area = await workbook.locate(name);
  if (area === null) throw new Error(`no ${name}`);
  return (await workbook.read(area)).values[0]?.[0] ?? null;
}

async function lineOf(given: Given, crop: string): Promise<Line> {
  const line = (await linesOf(await filled(given), 'SeedOrder')).find((each) => each['Crop'] === crop);
  if (line === undefined) throw new Error(`no line of ${crop}`);
  return line;
}

const plot = (Crop: string, more: InputRow = {}): InputRow => ({
  Plot: Crop,
  Crop,
  Length: 100,
  Width: 20,
  'Row spacing': 5,
  'Plant spacing': 12,
  ...more,
});
const pack = (Crop: CellValue, size: CellValue, price: CellValue): InputRow => ({
  Crop,
  'Seeds in a pack': size,
  'Price of a pack': price,
});
const errorsOf = (lines: readonly Line[]): unknown[] =>
  lines.flatMap((line) => Object.entries(line).filter(([, value]) => isCellError(value)));

describe('a sheet without plots or prices', () => {
  test('has no error, no 0 that nobody computed, and says what is missing', async () => {
    const workbook = await filled({});
    const lines = await linesOf(workbook, 'SeedOrder');
    expect(lines.map((line) => line['Crop'])).toEqual(crops.map(({ name }) => name));
    for (const line of lines)
      expect(
        Object.values(line)
          .slice(1)
          .filter((value) => value !== null && value !== ''),
      ).toEqual([]);
    expect(errorsOf(await linesOf(workbook, 'SeedPrices'))).toEqual([]);
    expect(await named(workbook, 'SEED_ORDER_SEEDS')).toBe(words.noneYet);
    expect(await named(workbook, 'SEED_ORDER_COST')).toBe(words.noPriceYet);
    expect(await named(workbook, 'SEED_ORDER_UNPRICED')).toBe(0);
    expect(await named(workbook, 'SEED_ORDER_UNCOUNTED')).toBe(0);
  });

  test('without frost dates neither', async () => {
    const season = { LAST_FROST: null, FIRST_FROST: null, SEASON_YEAR: null };
    const workbook = await filled({
      season,
      plots: [plot('zucchini')],
      typed: { 'summer squash': { 'Seed on hand': 5, 'Packed in': 2026 } },
    });
    const lines = await linesOf(workbook, 'SeedOrder');
    expect(errorsOf(lines)).toEqual([]);
    expect(lines.find((line) => line['Crop'] === 'summer squash')?.['Remark']).toContain(
      words.remarks.noSeasonYear,
    );
  });
});

describe('the line of a crop', () => {
  test('says what to do about a year of packing that cannot be, and counts no seed of it', async () => {
    for (const year of [2028, 'last year', 20.5]) {
      for (const onHand of [40, null]) {
        const typed = { 'summer squash': { 'Seed on hand': onHand, 'Packed in': year } };
        const line = await lineOf({ plots: [plot('zucchini')], typed }, 'summer squash');
        expect(line['Remark'], String(year)).toContain(words.remarks.packedUnfit);
        expect(line['To buy']).toBe(line['Seeds needed']);
      }
    }
  });

  test('has the federal standard (7 CFR 201.31), none where the regulation lists none', async () => {
    const grown = ['cucumber', 'zucchini', 'pumpkin', 'cantaloupe', 'watermelon', 'gourd'];
    const workbook = await filled({ plots: grown.map((crop) => plot(crop)) });
    const lines = await linesOf(workbook, 'SeedOrder');
    const standards = lines
      .filter((line) => line['Plots'] === 1)
      .map((line) => [line['Crop'], line['Federal standard']]);
    expect(Object.fromEntries(standards)).toEqual({
      'slicing cucumber': 0.8,
      'summer squash': 0.75,
      pumpkin: 0.75,
      muskmelon: 0.75,
      watermelon: 0.7,
      gourd: 'none',
    });
  });

  test('takes the lowest germination that is stated, and calls it below the standard, never against the law', async () => {
    const plots = [0.9, 0.74, null, 0.8].map((Germination, i) =>
      plot(i < 2 ? 'melon' : 'muskmelon', { Plot: `${i}`, Germination }),
    );
    const line = await lineOf({ plots }, 'muskmelon');
    expect(line).toMatchObject({ Plots: 4, 'Lowest germination': 0.74 });
    expect(line['Remark']).toContain(english.sheets.plots.remarks.belowStandard);
    expect(String(line['Remark'])).not.toMatch(/illegal|not be sold/i);
    const stated = await lineOf({ plots: [plot('melon', { Germination: 0.75 })] }, 'muskmelon');
    expect(stated['Remark']).not.toContain(english.sheets.plots.remarks.belowStandard);
    const blank = await lineOf({ plots: [plot('melon')] }, 'muskmelon');
    expect(blank['Lowest germination']).toBe('');
  });

  // 500 seeds at 1,000 an ounce (North Carolina AG-552): half an ounce; 28.349523125 g an ounce.
  test('weighs the seed by the count of the Crops sheet, in either system', async () => {
    const plots = [plot('cucumber', { Length: 125, Germination: 1, 'Field emergence': 1 })];
    const us = await lineOf({ plots }, 'slicing cucumber');
    expect(us).toMatchObject({ 'Seeds needed': 500, Weight: 0.5 });
    const metric = [
      plot('cucumber', {
        Length: 125,
        Width: 4,
        'Row spacing': 1,
        'Plant spacing': 100,
        Germination: 1,
        'Field emergence': 1,
      }),
    ];
    const grams = await lineOf({ plots: metric, season: { UNITS: 'metric' } }, 'slicing cucumber');
    expect(grams['Seeds needed']).toBe(500);
    expect(grams['Weight']).toBeCloseTo(14.1747615625, 9);
    expect((await lineOf({ plots: [plot('gourd', { Germination: 0.9 })] }, 'gourd'))['Weight']).toBe('');
  });

  test('counts the good plots and tells of the bad', async () => {
    const good = plot('pumpkin', { Germination: 0.9 });
    const alone = await lineOf({ plots: [good] }, 'pumpkin');
    const plots = [
      good,
      plot('pumpkin', { Plot: 'wide', Width: -5 }),
      plot('pumpkin', { Plot: 'share', Germination: 90 }),
      plot('punkin', { Plot: 'slip' }),
      { Plot: 'no crop', Length: 5 },
    ];
    const workbook = await filled({ plots });
    const line = (await linesOf(workbook, 'SeedOrder')).find((each) => each['Crop'] === 'pumpkin');
    expect(line).toMatchObject({
      Plots: 3,
      'Seeds needed': alone['Seeds needed'],
      'Lowest germination': 0.9,
    });
    expect(line?.['Remark']).toContain('Plots not counted: 2, see Plots.');
    expect(await named(workbook, 'SEED_ORDER_SEEDS')).toBe(alone['Seeds needed']);
    // Two of pumpkin, one of a crop that is not known, one without a crop.
    expect(await named(workbook, 'SEED_ORDER_UNCOUNTED')).toBe(4);
    const bad = await lineOf({ plots: plots.slice(1) }, 'pumpkin');
    expect(bad).toMatchObject({ 'Seeds needed': '', 'To buy': '', Cost: '' });
  });

  test('speaks of the pollenizers’ seed, apart for triploids, mixed in for gynoecious lots', async () => {
    // FLOWER.POLLENIZERS of 400 plants at 1 to 3 without losses (functions.md): 100.
    const triploid = await lineOf(
      { plots: [plot('seedless watermelon', { 'Pollenizer share': 0.25 })] },
      'triploid watermelon',
    );
    expect(triploid['Remark']).toContain(`100${words.remarks.ofPlants}${words.remarks.pollenizersApart}`);
    const gynoecious = await lineOf(
      { plots: [plot('pickling cucumber', { 'Flower type': 'gynoecious', 'Pollenizer share': 0.1 })] },
      'pickling cucumber',
    );
    expect(gynoecious['Remark']).toContain(`40${words.remarks.ofPlants}${words.remarks.pollenizersMixed}`);
  });
});

describe('seed on hand', () => {
  const given = (crop: string, onHand: CellValue, packedIn: CellValue, reference = crop): Promise<Line> =>
    lineOf(
      {
        plots: [plot(crop, { Length: 125, Germination: 1, 'Field emergence': 1 })],
        typed: { [reference]: { 'Seed on hand': onHand, 'Packed in': packedIn } },
      },
      reference,
    );

  // Cucumber keeps 5 years in both lists (old manual, list of 2023); the season is 2027.
  test.each([
    [120, 2025, 3, 380, ''],
    [600, 2025, 3, 0, ''],
    [120, 2022, 0, 500, words.remarks.outlived],
    [120, null, '', 500, words.remarks.noYear],
    ['about 120', 2025, 3, 500, words.remarks.onHandNotNumber],
    [-120, 2025, 3, 500, words.remarks.onHandNotNumber],
    [-5, null, '', 500, words.remarks.onHandNotNumber],
    [20.5, 2025, 3, 500, words.remarks.onHandNotNumber],
  ])(
    'of %j packed in %j: %j years left, %d of 500 to buy, %s',
    async (onHand, packedIn, left, toBuy, remark) => {
      const line = await given('slicing cucumber', onHand, packedIn);
      expect(line).toMatchObject({ 'Seeds needed': 500, 'Years left': left, 'To buy': toBuy });
      expect(line['Remark']).toContain(remark);
    },
  );

  test('of a year that cannot be is refused in words, and not counted', async () => {
    const later = await given('slicing cucumber', 120, 2028);
    expect(later['Years left']).toMatchObject({ error: '#VALUE!', message: expect.stringContaining('2028') });
    expect(later['To buy']).toBe(500);
  });

  test('two slips in a line are both said', async () => {
    const { Remark } = await given('slicing cucumber', -5, 2031);
    expect(Remark).toContain(words.remarks.packedUnfit);
    expect(Remark).toContain(words.remarks.onHandNotNumber);
  });

  test('of a crop without a published life is not counted, until somebody types the years', async () => {
    const line = await given('gourd', 20, 2026);
    expect(line['Years left']).toBe(words.noLife);
    expect(line['To buy']).toBe(line['Seeds needed']);
    expect(line['Remark']).toContain(words.remarks.noLife);
    const typed = { gourd: { 'Seed on hand': 20, 'Packed in': 2026, 'Years left': 2 } };
    const trusted = await lineOf({ plots: [plot('gourd', { Germination: 0.9 })], typed }, 'gourd');
    expect(Number(trusted['Seeds needed']) - Number(trusted['To buy'])).toBe(20);
    expect(trusted['Remark']).not.toContain(words.remarks.noLife);
  });
});

describe('the price list', () => {
  const plots = [
    plot('zucchini', { Length: 300, Germination: 1, 'Field emergence': 1 }),
    plot('gourd', { Germination: 0.9 }),
  ];

  // 1,200 seeds of packs of 100, 500 and 1,000 at 3.50, 12 and 20: functions.md and the hand calculation of cheapestPacks.test.
  test('of several names of a crop is one; the cheapest packs and their cost', async () => {
    const prices = [
      pack('zucchini', 100, 3.5),
      pack('summer squash', 500, 12),
      pack(' Zucchini ', 1000, 20),
      pack('pumpkin', 1, 0.01),
    ];
    const workbook = await filled({ plots, prices });
    const line = (await linesOf(workbook, 'SeedOrder')).find((each) => each['Crop'] === 'summer squash');
    expect(line).toMatchObject({ 'To buy': 1200, 'Packs to buy': '2 of 100, 1 of 1000', Cost: 27 });
    expect(
      (await linesOf(workbook, 'SeedPrices')).map((each) => [each['Taken as'], each['Per 1,000 seeds']]),
    ).toEqual([
      ['summer squash', 35],
      ['summer squash', 24],
      ['summer squash', 20],
      ['pumpkin', 10],
    ]);
    expect(await named(workbook, 'SEED_ORDER_COST')).toBe(27);
  });

  test('without a pack of a crop: said of the crop and in the total', async () => {
    const workbook = await filled({ plots, prices: [pack('zucchini', 1200, 20)] });
    const gourd = (await linesOf(workbook, 'SeedOrder')).find((each) => each['Crop'] === 'gourd');
    expect(gourd).toMatchObject({ 'Packs to buy': '', Cost: '' });
    expect(gourd?.['Remark']).toContain(words.remarks.noPack);
    expect(await named(workbook, 'SEED_ORDER_COST')).toBe(20);
    expect(await named(workbook, 'SEED_ORDER_UNPRICED')).toBe(1);
    expect(await named(await filled({ plots }), 'SEED_ORDER_COST')).toBe(words.noPriceYet);
  });

  const { packSize, packPrice, packOther, beyondReach } = words.remarks;
  test.each<[string, InputRow, RegExp, readonly string[]]>([
    ['a pack of no seeds', pack('zucchini', 0, 5), /size of a pack is 0/, [packSize]],
    [
      'a price with a currency sign',
      pack('zucchini', 100, '$4,50'),
      /"\$4,50"\. Take the currency sign out/,
      [packPrice],
    ],
    ['a price with a comma', pack('zucchini', 100, '1,000'), /comma is in the way/, [packPrice]],
    ['a price of 0', pack('zucchini', 100, 0), /price of a pack is 0\. It must be above 0/, [packPrice]],
    ['no price', pack('zucchini', 100, null), /price of a pack is missing/, [packPrice]],
    ['no size', pack('zucchini', null, 5), /size of a pack is missing/, [packSize]],
    ['half a seed', pack('zucchini', 10.5, 5), /10\.5\. Give a whole number/, [packOther]],
    ['neither', pack('zucchini', -1, 'some'), /price of a pack is "some"/, [packSize, packPrice]],
  ])(
    'with %s: said on its line and of its crop, also on paper, and the cost of another crop stands',
    async (_, wrong, said, remarks) => {
      const workbook = await filled({
        plots,
        prices: [pack('gourd', 1000, 7), wrong, pack('zucchini', 100, 5)],
      });
      expect((await linesOf(workbook, 'SeedPrices'))[1]?.['Per 1,000 seeds']).toMatchObject({
        message: expect.stringMatching(said),
      });
      const squash = (await linesOf(workbook, 'SeedOrder')).find((each) => each['Crop'] === 'summer squash');
      expect(squash?.['Cost']).toMatchObject({ message: expect.stringMatching(said) });
      expect(String(squash?.['Remark']).trim()).toBe(remarks.join(' '));
      expect(await named(workbook, 'SEED_ORDER_COST')).toBe(7);
      expect(await named(workbook, 'SEED_ORDER_UNPRICED')).toBe(1);
    },
  );

  test('that nothing is wrong with but its length says so of the crop', async () => {
    const prices = Array.from({ length: 21 }, (_, i) => pack('zucchini', 100 + i, 5));
    const squash = await lineOf({ plots, prices }, 'summer squash');
    expect(isCellError(squash['Cost'] ?? null)).toBe(true);
    expect(String(squash['Remark']).trim()).toBe(beyondReach);
  });

  test('with an empty line of a crop says no reason where there is a cost', async () => {
    const prices = [pack('zucchini', null, null), pack('zucchini', 1200, 20)];
    const squash = await lineOf({ plots, prices }, 'summer squash');
    expect(squash).toMatchObject({ Cost: 20, Remark: '' });
  });

  test('with a name that is not known: near names are told, and its line counts for no crop', async () => {
    const workbook = await filled({ plots, prices: [pack('zuchini', 100, 5)] });
    expect((await linesOf(workbook, 'SeedPrices'))[0]?.['Taken as']).toMatchObject({
      error: '#N/A',
      message: expect.stringContaining('zucchini'),
    });
    const squash = (await linesOf(workbook, 'SeedOrder')).find((each) => each['Crop'] === 'summer squash');
    expect(squash?.['Remark']).toContain(words.remarks.noPack);
  });
});

test('the totals are those of an independent sum over any plots', async () => {
  const names = crops.flatMap(({ name, synonyms }) => [name, ...synonyms.slice(0, 1)]);
  const anyPlot = fc.record({
    Crop: fc.constantFrom(...names, 'no such crop', ''),
    Layout: fc.constantFrom('rows', 'hills'),
    Start: fc.constantFrom('seed', 'transplant'),
    Length: fc.integer({ min: -2, max: 60 }),
    Width: fc.integer({ min: 8, max: 40 }),
    Germination: fc.option(fc.integer({ min: 50, max: 101 }).map((percent) => percent / 100)),
  });
  const anyPack = fc.record({
    Crop: fc.constantFrom(...names),
    size: fc.integer({ min: 5, max: 400 }),
    cents: fc.integer({ min: 1, max: 5000 }),
  });
  await fc.assert(
    fc.asyncProperty(
      fc.array(anyPlot, { maxLength: 14 }),
      fc.uniqueArray(anyPack, { maxLength: 20, selector: ({ Crop }) => Crop }),
      async (drawn, packs) => {
        const plots = drawn.map((one, i) => ({
          ...one,
          Plot: `plot ${i}`,
          Crop: one.Crop === '' ? null : one.Crop,
        }));
        const workbook = await filled({
          plots,
          prices: packs.map(({ Crop, size, cents }) => pack(Crop, size, cents / 100)),
        });
        const grown = await linesOf(workbook, 'Plots');
        let allSeeds = 0;
        let allCents = 0;
        let unpriced = 0;
        for (const line of await linesOf(workbook, 'SeedOrder')) {
          const crop = crops.find(({ name }) => name === line['Crop']);
          const own = grown.filter((each) => each['Taken as'] === crop?.name);
          const seeds = own.map((each) => each['Seed to sow']).filter((value) => typeof value === 'number');
          const needed = seeds.reduce((sum, value) => sum + value, 0);
          expect(line['Plots']).toBe(own.length === 0 ? '' : own.length);
          expect(line['Seeds needed']).toBe(seeds.length === 0 ? '' : needed);
          const offers = packs.filter(({ Crop }) => crop?.name === Crop || crop?.synonyms.includes(Crop));
          // One or two packs of a crop: every number of the first, filled up with the second.
          const [first, second] = offers;
          if (needed > 0 && first !== undefined) {
            const most = Math.ceil(needed / first.size);
            const orders = Array.from({ length: most + 1 }, (_, count) => {
              const left = Math.max(0, needed - count * first.size);
              if (left > 0 && second === undefined) return Infinity;
              return (
                count * first.cents +
                (second === undefined ? 0 : Math.ceil(left / second.size) * second.cents)
              );
            });
            const cents = Math.min(...orders);
            expect(Math.round(Number(line['Cost']) * 100)).toBe(cents);
            allCents += cents;
          } else {
            expect(line['Cost']).toBe('');
            unpriced += needed > 0 ? 1 : 0;
          }
          allSeeds += needed;
        }
        const countedPlots = grown.filter((each) => typeof each['Seed to sow'] === 'number').length;
        expect(await named(workbook, 'SEED_ORDER_SEEDS')).toBe(countedPlots === 0 ? words.noneYet : allSeeds);
        expect(await named(workbook, 'SEED_ORDER_UNCOUNTED')).toBe(plots.length - countedPlots);
        expect(await named(workbook, 'SEED_ORDER_UNPRICED')).toBe(unpriced);
        const cost = await named(workbook, 'SEED_ORDER_COST');
        expect(allCents === 0 ? cost : Math.round(Number(cost) * 100)).toBe(
          allCents === 0 ? words.noPriceYet : allCents,
        );
      },
    ),
    { ...seeded, numRuns: 15 },
  );
}, 120_000);

test('what people typed into the sheet goes out and comes back, however often, and nothing else does', async () => {
  const prices = [
    pack('zucchini', 100, 3.5),
    { ...pack('melon', 200, 5), 'Lot or note': '007' },
    pack('gourd', 10, '$4,50?'),
  ];
  const typed = {
    'summer squash': { 'Seed on hand': 50, 'Packed in': 2026 },
    gourd: { 'Seed on hand': 'some' },
  };
  const workbook = await filled({ plots: [plot('zucchini')], prices, typed });
  const filling = await readFilling({ ...workbook, daysToAdd: 0 }, allTemplates, empty);
  expect(filling?.typedOver).toBe(0);
  expect(filling?.requests.find(({ template }) => template.id === 'plots')?.inputs).toHaveLength(1);
  const request = filling?.requests.find(({ template }) => template.id === 'seedorder');
  expect(request?.inputs).toEqual(prices);
  expect(request?.template).toEqual(withTyped(typed));
});
