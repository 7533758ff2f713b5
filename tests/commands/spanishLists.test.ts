/** Lists in the words of either language, read in either: other headers and other words, and the same plots. */
import { afterAll, describe, expect, test, vi } from 'vitest';
import type { PlanReader } from '../../src/commands/readPlan';

afterAll(() => {
  globalThis.cucurbitLanguage = undefined;
});

/** A list needs no workbook. */
const noReader = {} as PlanReader;

/** All modules read anew in the language. */
async function inLanguage(language: string) {
  globalThis.cucurbitLanguage = language;
  vi.resetModules();
  const { readPlan } = await import('../../src/commands/readPlan');
  const { readPlanOptions } = await import('../../src/commands/planOptions');
  const { readPrices } = await import('../../src/commands/readPrices');
  const { readSeedPrices } = await import('../../src/commands/readSeedPrices');
  const { plotHeaders, plotsTable } = await import('../../src/templates/plots');
  const { sayListProblems } = await import('../../src/templates/sayListProblem');
  const { pricesTemplate } = await import('../../src/templates/prices');
  const { seedOrderTemplate } = await import('../../src/templates/seedOrder');
  const bytes = (lines: readonly string[]) => new TextEncoder().encode(lines.join('\n'));
  return {
    readPlanOptions,
    plotHeaders,
    plotsTable,
    sayListProblems,
    pricesTemplate,
    seedOrderTemplate,
    plots: (...lines: string[]) => readPlan('plots.csv', bytes(lines), noReader),
    prices: (...lines: string[]) => readPrices('prices.csv', bytes(lines), () => []),
    seedPrices: (...lines: string[]) => readSeedPrices('seed.csv', bytes(lines), () => []),
  };
}

const spanishLists = await inLanguage('es');
const englishLists = await inLanguage('en');

const spanishLine = 'Parcela;Cultivo;Disposición;Inicio;Tipo de flor;Sembrar o trasplantar el';
const headersInEnglish = 'Plot,Crop,Layout,Start,Flower type,Sow or set out on';

describe('a list of plots', () => {
  test('in Spanish puts the words of the functions into the cells', async () => {
    const { inputs, problems } = await spanishLists.plots(
      // Without accents and in other letters too: many keyboards lack them.
      'parcela;CULTIVO;Disposicion;inicio;Tipo de flor;Sembrar o trasplantar el',
      'A;melon chino;Surcos;SIEMBRA;Ginoica;14/06/2027',
      'B;sandía;golpes;trasplante;monoica;14 jun 2027',
      'C;calabacín;Matas;Trasplante;;14 de junio de 2027',
      'D;pepino;camas;semilla;partenocarpica;2027-06-14',
      'E;zucchini;rows;seed;gynoecious;',
    );
    expect(problems).toEqual([]);
    // 14 June 2027 is 43 days after 2 May 2027, which is serial 46509 (templates/demoGarden, and the test of serialDate).
    const day = 46552;
    expect(inputs.map((input) => Object.values(input))).toEqual([
      ['A', 'melon chino', 'rows', 'seed', 'gynoecious', day],
      ['B', 'sandía', 'hills', 'transplant', 'monoecious', day],
      ['C', 'calabacín', 'hills', 'transplant', day],
      ['D', 'pepino', 'beds', 'seed', 'parthenocarpic', day],
      ['E', 'zucchini', 'rows', 'seed', 'gynoecious'],
    ]);
  });

  test('says the words of a choice that it does not know, each with that of the cell', async () => {
    const { problems } = await spanishLists.plots('Parcela;Cultivo;Disposición', 'A;pepino;círculos');
    expect(spanishLists.sayListProblems(problems, () => [])).toMatchObject([
      { line: 2, problem: expect.stringContaining('surcos (rows), golpes (hills), camas (beds)') as string },
    ]);
  });

  test('with the headers of the other language is the same list', async () => {
    const cells = ['A', 'sandía', 'golpes', 'trasplante', 'monoica', '2027-06-14'];
    const there = await spanishLists.plots(headersInEnglish, cells.join());
    const here = await spanishLists.plots(spanishLine, cells.join(';'));
    expect(there.problems).toEqual([]);
    expect(there.inputs).toEqual(here.inputs);
    expect(Object.keys(there.inputs[0] ?? {})).toEqual(spanishLine.split(';'));
    const inEnglish = await englishLists.plots(spanishLine, cells.join(';'));
    expect(inEnglish.problems).toEqual([]);
    expect(Object.entries(inEnglish.inputs[0] ?? {}).slice(0, 5)).toEqual([
      ['Plot', 'A'],
      ['Crop', 'sandía'],
      ['Layout', 'hills'],
      ['Start', 'transplant'],
      ['Flower type', 'monoecious'],
    ]);
  });

  test('names a column that it has twice, in each language once', async () => {
    const { inputs, problems } = await spanishLists.plots('Parcela,Cultivo,Crop', 'A,sandía,melón');
    expect(inputs).toEqual([]);
    expect(problems).toMatchObject([
      { code: 'duplicateHeader', header: 'Cultivo', column: 3, firstColumn: 2 },
    ]);
  });

  test('leaves out under its own name what the sheet computes', async () => {
    const { leftOut } = await spanishLists.plots('Plot,Crop,Plants,First pick', 'A,gourd,10,2027-07-01');
    expect(leftOut).toEqual(['Plantas', 'Primer corte']);
  });

  test('in English refuses a date in figures, also one that could be but one day', async () => {
    const { inputs, problems } = await englishLists.plots(
      headersInEnglish,
      'A,gourd,,,,05/06/2027',
      'B,gourd,,,,14/06/2027',
      'C,gourd,,,,"June 14, 2027"',
    );
    expect(problems).toMatchObject([
      { code: 'notADate', line: 2, given: '05/06/2027' },
      { code: 'notADate', line: 3, given: '14/06/2027' },
    ]);
    expect(inputs.map((input) => Object.values(input).at(-1))).toEqual(['05/06/2027', '14/06/2027', 46552]);
  });

  test('doubts in Spanish a point that may stand between thousands, whatever is between the cells', async () => {
    const length = spanishLists.plotHeaders.elsewhere['Length'] ?? '';
    for (const between of [',', ';', '\t']) {
      const line = (...cells: string[]) => cells.join(between);
      const { inputs, problems } = await spanishLists.plots(
        line('Parcela', 'Cultivo', length),
        line('A', 'pepino', '1.000'),
        line('B', 'pepino', '1.0000'),
        line('C', 'pepino', '0.125'),
        line('D', 'pepino', '12.50'),
      );
      expect(problems).toMatchObject([{ code: 'maybeThousands', line: 2, header: length, given: '1.000' }]);
      expect(inputs.map((input) => input[length])).toEqual(['1.000?', 1, 0.125, 12.5]);
    }
    const million = await spanishLists.plots(`Parcela,Cultivo,${length}`, 'A,pepino,1.000.000');
    expect(million.problems).toMatchObject([{ code: 'maybeThousands', given: '1.000.000' }]);
    const inEnglish = await englishLists.plots('Plot,Crop,Length', 'A,gourd,1.000');
    expect([inEnglish.problems, inEnglish.inputs[0]?.['Length']]).toEqual([[], 1]);
  });

  test('no header of one language is that of another column in the other', () => {
    for (const { plotHeaders } of [spanishLists, englishLists]) {
      const { headers, elsewhere } = plotHeaders;
      expect(Object.values(elsewhere)).toEqual(expect.arrayContaining(headers));
      const plain = headers.map((header) => header.toLowerCase());
      const same = Object.entries(elsewhere).filter(
        ([there, here]) => here !== there && plain.includes(there.toLowerCase()),
      );
      expect(same).toEqual([]);
    }
  });
});

describe('the words of choices', () => {
  test('each means one choice of its column, whatever language it is in', () => {
    for (const { plotsTable } of [spanishLists, englishLists]) {
      const columns = plotsTable.columns.filter(
        ({ words, takenAs }) => words !== undefined && takenAs === undefined,
      );
      expect(columns.map(({ choices }) => choices.length)).toEqual([3, 2, 5]);
      for (const { choices, words = {} } of columns) {
        const all = choices.flatMap((choice) => [...new Set(words[choice])]);
        expect(new Set(all).size).toBe(all.length);
        for (const choice of choices) expect(all).toContain(choice);
      }
    }
  });
});

describe('lists of prices', () => {
  /** The row of a table of the filled template that begins with the name. */
  const rowIn = (lists: typeof spanishLists, list: ReturnType<typeof spanishLists.prices>, name: string) =>
    list
      .addTo({ template: lists.pricesTemplate, inputs: [], form: {} })
      .template.tables.flatMap(({ rows }) => rows ?? [])
      .find(([first]) => first === name);

  test('with the headers and the names of the other language go into the same rows', () => {
    const inSpanish = spanishLists.prices('Item,First', 'Trays,1.5');
    expect(inSpanish.problems).toEqual([]);
    expect(rowIn(spanishLists, inSpanish, 'Bandejas')).toContain(1.5);
    const inEnglish = englishLists.prices('Cultivo;Se vende por;Precio', 'melon chino;caja;18');
    expect(inEnglish.problems).toEqual([]);
    expect(rowIn(englishLists, inEnglish, 'muskmelon')).toEqual(expect.arrayContaining(['carton', 18]));
    const ofCrop = spanishLists.prices('Crop,Sold by,Price', 'cantaloupe,carton,18');
    expect(ofCrop.problems).toEqual([]);
    expect(rowIn(spanishLists, ofCrop, 'melón')).toEqual(expect.arrayContaining(['carton', 18]));
  });

  test('of seed too', () => {
    const { problems, addTo } = spanishLists.seedPrices(
      'Crop,Seeds in a pack,Price of a pack',
      'melón,100,4.5',
    );
    expect(problems).toEqual([]);
    const { inputs } = addTo({ template: spanishLists.seedOrderTemplate, inputs: [], form: {} });
    expect(inputs.map((input) => Object.values(input))).toEqual([['melón', 100, 4.5]]);
  });
});

describe('an option with a date', () => {
  const given = (date: string) => [
    'plots.csv',
    '--out',
    'a.xlsx',
    '--last-frost',
    date,
    '--first-frost',
    '2027-10-10',
  ];
  test('is read in Spanish as lists are, and in English never guessed', () => {
    expect(spanishLists.readPlanOptions(given('2/5/2027')).season['LAST_FROST']).toBe(46509);
    expect(() => englishLists.readPlanOptions(given('2/5/2027'))).toThrow(/year-month-day/);
  });
});

describe('dates on the command line', () => {
  const options = (last: string) =>
    spanishLists.readPlanOptions([
      'plots.csv',
      '--last-frost',
      last,
      '--first-frost',
      '10 oct 2026',
      '--out',
      'a.xlsx',
    ]);

  test('in figures alone are taken with the day first, and said in words', () => {
    // Serial 46144 is 2026-05-02.
    expect(options('02/05/2026')).toMatchObject({
      taken: ['--last-frost 02/05/2026 se tomó como 2 de mayo de 2026.'],
      season: { LAST_FROST: 46144 },
    });
    for (const plain of ['2026-05-02', '2 de mayo de 2026']) expect(options(plain).taken).toEqual([]);
  });

  test('that their month does not have are refused with the reason', () => {
    for (const given of ['31 de junio', '31/06/2026', '31 de junio de 2026']) {
      expect(() => options(given)).toThrow(
        `--last-frost es "${given}", y junio tiene 30 días. Dé un día que exista, por ejemplo 2026-05-02.`,
      );
    }
  });

  test('in a list are said once, by the first of them', async () => {
    const read = await spanishLists.plots(
      spanishLine,
      'A;;;;;2027-06-14',
      'B;;;;;14/06/2027',
      'C;;;;;1/7/2027',
    );
    expect(read.taken).toBe(
      'plots.csv, línea 3: 14/06/2027 se tomó como 14 de junio de 2027, y así cada fecha escrita de ese modo.',
    );
    expect((await spanishLists.plots(spanishLine, 'A;;;;;14 jun 2027')).taken).toBeNull();
    expect((await englishLists.plots(headersInEnglish, 'A,,,,,14/06/2027')).taken).toBeNull();
  });
});
