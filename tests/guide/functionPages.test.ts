// @vitest-environment jsdom
/** The pages of the function reference, as the build writes them. */
import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { describeFunctions } from '../../src/entries/describeFunctions.cjs';
import { functions } from '../../src/functions';
import { functionPages } from '../../src/guide/functionPages';
import { listFunctions } from '../../src/guide/listFunctions';
import { markup } from '../../src/guide/markup';
import { readCalculations } from '../../src/guide/readCalculations';
import { writePages } from '../../src/guide/writePages';
import { openEvaluator } from '../../src/hosts/browser/openEvaluator';
import { functionNamespace } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { guide } from '../../src/texts/english/guide';
import { functionHelp as spanishHelp } from '../../src/texts/spanish/functionHelp';
import { guide as spanishGuide } from '../../src/texts/spanish/guide';
import type { ListedFunction } from '../../src/workbook/functionHelp';
import { wrapperFiles } from '../functions/describedFunctions';

let listed: readonly ListedFunction[] = [];
let files: ReadonlyMap<string, string> = new Map();
let written: Awaited<ReturnType<typeof functionPages>> = [];
beforeAll(async () => {
  listed = listFunctions(await describeFunctions(wrapperFiles, 'README.md'));
  written = await functionPages(listed, functions, readCalculations('src'), (all) => {
    const evaluator = openEvaluator({ functions: all, namespace: functionNamespace, firstSheet: 'Sheet1' });
    return evaluator.evaluate;
  });
  files = writePages(written);
}, 120_000);

function open(name: string): Document {
  return new DOMParser().parseFromString(files.get(name) ?? '', 'text/html');
}
/** All that the section under that heading says. */
function said(id: string, heading: string): string {
  const sections = [...open(`${id}.html`).querySelectorAll('section')];
  const found = sections.find((one) => one.querySelector('h2')?.textContent?.startsWith(heading));
  return (found?.textContent ?? '').slice(found?.querySelector('h2')?.textContent?.length ?? 0);
}
const words = guide.functions;
const spanishWords = spanishGuide.functions;

describe('every function', () => {
  test('has a page, named in the index under its task', () => {
    expect([...files.keys()].sort()).toEqual(
      ['index.html', ...[...functions.keys()].map((id) => `${id}.html`)].sort(),
    );
    const links = [...open('index.html').querySelectorAll('#functions a')].map((one) => one.textContent);
    expect(links.sort()).toEqual([...functions.keys()].sort());
    expect(listed.filter(({ family }) => family === '')).toEqual([]);
  });

  test('has each argument described, and its page says what it gives', () => {
    for (const { id, parameters } of listed) {
      const terms = [...open(`${id}.html`).querySelectorAll('dl > div')];
      expect(
        terms.map((one) => one.querySelector('code')?.textContent),
        id,
      ).toEqual(parameters.map(({ name }) => name));
      parameters.forEach(({ description }, i) =>
        expect(terms[i]?.querySelector('dd')?.textContent, id).toContain(description),
      );
      expect(said(id, words.gives), id).not.toBe('');
    }
  });

  test('has an example with the result that README prints', () => {
    const results = [
      ...readFileSync('README.md', 'utf8').matchAll(
        /^\|[^|]*\|\s*([A-Z.]+)\s*\|\s*`=[^`]+`\s*\|([^|]+)\|$/gm,
      ),
    ].map(([, id, result = '']) => [id, result.trim()] as const);
    expect(results).toHaveLength(functions.size);
    for (const [id, result] of results) {
      expect(open(`${id}.html`).querySelector('output')?.textContent, id).toBe(result);
    }
  });

  test('has its definition and a source, but for the lists of names, which nothing is calculated for', () => {
    const without = listed.filter(({ id }) => !said(id, words.calculation).includes('Source: '));
    expect(without.map(({ id }) => id)).toEqual(['CROP.LIST', 'CROP.TRAITS']);
  });

  test('has a source in its working, or what stands where there is none', () => {
    const without = written.filter(({ working }) => !working.some(({ kind }) => kind === 'source'));
    expect(without.map(({ help }) => help.id)).toEqual([]);
  });

  test('links to pages that are there', () => {
    for (const name of files.keys()) {
      const links = [...open(name).querySelectorAll('[href], [src]')].map(
        (one) => one.getAttribute('href') ?? one.getAttribute('src') ?? '',
      );
      const besides = ['pages.css', 'search.js', `es/${name}`];
      const broken = links.filter((link) => !files.has(link) && !besides.includes(link));
      expect(broken, name).toEqual([]);
      expect(open(name).body.textContent, name).not.toMatch(/undefined|\[object|\{[a-z]/);
    }
  });
});

/** Checked by hand beside the page's own result: each is arithmetic on published figures. */
test.each([
  // 43,560 / (2 x 3), Farm and Garden Rule-Book.
  ['PLANTS.DENSITY', '7260'],
  // An acre in 8 ft rows: 43,560 / 8.
  ['ROW.INAREA', '5445'],
  // 2 May to 10 October 2026: 29 + 30 + 31 + 31 + 30 + 10 days.
  ['SEASON.DAYS', '161'],
  // 7 CFR 201.31.
  ['SEED.STANDARD', '0.8'],
  // Penn State, hours for an inch on a bed of 30 in: 11.8.
  ['SUPPLY.DRIPRUNTIME', '11.8'],
  // (65 + 40) / 2 - 50, Michigan State.
  ['HEAT.DAY', '2.5'],
])('the example of %s gives %s', (id, result) => {
  expect(open(`${id}.html`).querySelector('output')?.textContent).toBe(result);
});

describe('a page', () => {
  test('says how the function is typed, and how the example is worked through', () => {
    const page = open('PLANTS.DENSITY.html');
    expect(page.querySelector('code')?.textContent).toBe(
      '=CUCURBIT.PLANTS.DENSITY(row_spacing, plant_spacing, [units])',
    );
    expect(said('PLANTS.DENSITY', words.working)).toContain('plants per acre or hectare: 7260 per acre');
    expect(said('PLANTS.DENSITY', words.calculation)).toContain(
      'plants = land area / (row spacing x plant spacing), unrounded',
    );
  });

  test('keeps the lines of a definition apart, and joins those that only ran to the margin', () => {
    const equationsOf = (id: string): string[] =>
      [...open(`${id}.html`).querySelectorAll('.equation')].flatMap(
        ({ textContent }) => textContent?.split('\n') ?? [],
      );
    // As the comments of seedsNeeded, hillsInPlot and testedGermination have them.
    expect(equationsOf('SEED.NEEDED').slice(0, 3)).toEqual([
      expect.stringMatching(/^no assurance: /),
      expect.stringMatching(/^assurance: .*>= assurance$/),
      expect.stringMatching(/^tested: /),
    ]);
    const hills = equationsOf('PLANTS.INHILLS').find((line) => line.startsWith('staggered: rows'));
    expect(hills).toMatch(/given; odd rows hold/);
    expect(equationsOf('SEED.TEST')).toContainEqual(expect.stringMatching(/^low: .*, 1 when x = n; /));
  });

  test('says the limits of each argument in the words of the refusal', () => {
    const asks = said('PLANTS.DENSITY', words.asks);
    expect(asks).toContain('The row spacing is 0. It must be above 0 ft.');
    expect(asks).not.toContain('The row spacing is -1');
    expect(said('PLANTS.INROWS', words.asks)).toContain('Choose one of: inset, onedge.');
    expect(said('SEED.NEEDED', words.asks)).toContain('write 85 percent as 85% or 0.85');
  });

  test('has a word for each value of a refusal', () => {
    const slanted = [...files.keys()].flatMap((name) =>
      [...open(name).querySelectorAll('var')].map((one) => one.textContent ?? ''),
    );
    expect(slanted.filter((one) => !Object.values<string>(guide.refusedValues).includes(one))).toEqual([]);
  });

  test('says what else is refused, with slanted words for figures', () => {
    const page = open('HEAT.SUM.html');
    expect(said('HEAT.SUM', words.refuses)).toContain('Give ranges of equal length.');
    expect([...page.querySelectorAll('var')].map((one) => one.textContent)).toContain('other input');
  });

  test('follows a source to the calculation that it names', () => {
    expect(said('HEAT.DATE', words.calculation)).toContain('McMaster and Wilhelm 1997');
    expect(said('TRAY.CELLS', words.calculation)).toContain('negative binomial');
  });

  test.each([
    ['PICKLE.JARS', english.cautions.canning],
    ['DATE.AFTERSPRAY', english.cautions.pesticides],
    ['FLOWER.CROSSES', english.cautions.bitterFruit],
    ['SEED.NEEDED', english.cautions.treatedSeed],
  ])('%s carries its caution once', (id, caution) => {
    const text = open(`${id}.html`).body.textContent ?? '';
    expect(text.split(caution)).toHaveLength(2);
  });

  test('takes every text as text', () => {
    expect(markup`<p title="${'"'}">${'<b> & </b>'}${markup`<i>${'>'}</i>`}</p>`.html).toBe(
      '<p title="&quot;">&lt;b&gt; &amp; &lt;/b&gt;<i>&gt;</i></p>',
    );
    expect(open('CROP.NAME.html').querySelectorAll('code')[2]?.textContent).toBe(
      '=CUCURBIT.CROP.NAME("zucchini")',
    );
  });

  test.each(['index', 'SEED.NEEDED', 'FROST.SPRINGDATE', 'CROP.LIST'])(
    '%s passes the rules of access',
    async (name) => {
      const page = open(`${name}.html`);
      document.title = page.title;
      document.documentElement.lang = page.documentElement.lang;
      document.body.innerHTML = page.body.innerHTML;
      // jsdom draws nothing, so contrast is left to the tests of the colours.
      const { violations } = await axe.run(document, { rules: { 'color-contrast': { enabled: false } } });
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    },
  );
});

test('in Spanish all but the comments of the code is Spanish, and leads to the page in English', async () => {
  vi.resetModules();
  globalThis.cucurbitLanguage = 'es';
  const [pages, lister, writer] = await Promise.all([
    import('../../src/guide/functionPages'),
    import('../../src/guide/listFunctions'),
    import('../../src/guide/writePages'),
  ]);
  const isAsked = (id: string): boolean => /^(PICKLE|FROST|CROP)\./.test(id);
  const some = (await describeFunctions(wrapperFiles, 'README.md')).filter(({ id }) => isAsked(id));
  const inSpanish = await pages.functionPages(
    lister.listFunctions(some),
    new Map([...(await import('../../src/functions')).functions].filter(([id]) => isAsked(id))),
    readCalculations('src'),
    (all) => openEvaluator({ functions: all, namespace: functionNamespace, firstSheet: 'Sheet1' }).evaluate,
  );
  globalThis.cucurbitLanguage = undefined;
  const spanishFiles = writer.writePages(inSpanish);
  const openSpanish = (id: string): Document =>
    new DOMParser().parseFromString(spanishFiles.get(`${id}.html`) ?? '', 'text/html');
  const page = openSpanish('PICKLE.JARS');
  expect(page.documentElement.lang).toBe('es');
  expect(page.querySelector('h1 + p')?.textContent).toBe(spanishHelp.functions['PICKLE.JARS']?.description);
  expect(page.querySelector('dd')?.textContent).toContain('Pepinos frescos, lb');
  expect(page.querySelector('output')?.textContent).toBe('7');
  // What is in English says so, in Spanish and to the program that reads it out.
  const english = [...page.querySelectorAll('[lang=en]')].filter((one) => one.tagName !== 'A');
  expect(english.length).toBe(2);
  for (const one of english) expect(one.previousElementSibling?.textContent).toBe(spanishWords.inEnglish);
  expect([...page.querySelectorAll('[href]')].map((one) => one.getAttribute('href'))).toEqual([
    '../pages.css',
    'index.html',
    '../PICKLE.JARS.html',
    'PICKLE.POUNDS.html',
  ]);
  // So are the values that stand slanted in a sentence, and a limit is said once, not for 0 and for -1.
  const slanted = [...openSpanish('FROST.SPRINGDATE').querySelectorAll('var')].map((one) => one.textContent);
  expect(slanted).toContain('primera fecha');
  expect(
    slanted.filter((one) => !Object.values<string>(spanishGuide.refusedValues).includes(one ?? '')),
  ).toEqual([]);
  const limits = [...openSpanish('FROST.SPRINGDATE').querySelectorAll('dd')][1]?.querySelectorAll('.quiet');
  expect(limits).toHaveLength(2);
  expect(openSpanish('CROP.VALUE').querySelectorAll('dd')[1]?.textContent).toMatch(/otra cosa.*\(cifra\)/);
  for (const sentence of Object.values(words)
    .flat()
    .filter((one) => one.length > 12 && !one.includes('{')))
    expect(page.body.textContent, sentence).not.toContain(sentence);
}, 120_000);

test('a page says how its formula gets into a cell, by the words of the pane', () => {
  const { open: button, put } = english.pane.functionList;
  const example = said('TRAY.COUNT', words.example);
  expect(example).toContain(`press "${button}", choose TRAY.COUNT, select an empty cell and press "${put}"`);
});

test('the index searches as the pane does, and says what to try when nothing is found', async () => {
  document.body.innerHTML = open('index.html').body.innerHTML;
  await import('../../src/entries/functionSearch');
  const field = document.querySelector('input') as HTMLInputElement;
  expect(field.closest('search')?.hasAttribute('hidden')).toBe(false);
  const search = (text: string): string[] => {
    field.value = text;
    field.dispatchEvent(new Event('input'));
    return [...document.querySelectorAll<HTMLElement>('#functions li')]
      .filter((item) => !item.hidden && item.closest('section')?.hidden === false)
      .map((item) => item.querySelector('a')?.textContent ?? '');
  };
  expect(search('PICKS frost')).toContain('DATE.LASTPICK');
  expect(search('tractor frost')).toEqual([]);
  expect(document.querySelector('[role=status]')?.textContent).toContain(
    'Nothing found for "tractor frost".',
  );
  expect(search('jars')).toEqual(['PICKLE.JARS', 'PICKLE.POUNDS']);
  expect(document.querySelector('[role=status]')?.textContent).toBe('2 functions shown');
  expect(search('beetles rotation')).toEqual(['BEETLE.THRESHOLD', 'BEETLE.VERDICT', 'ROTATION.YEARS']);
  const inPlace = [...open('index.html').querySelectorAll('#functions a')].map((one) => one.textContent);
  const watering = search('water');
  expect(watering).not.toContain('SUPPLY.TRELLIS');
  expect(search('materials and water')).toContain('SUPPLY.TRELLIS');
  expect(inPlace.indexOf('FLOWER.POLLENIZERS')).toBeLessThan(inPlace.indexOf('SUPPLY.WATER'));
  expect(watering[0]).toBe('SUPPLY.WATER');
  expect(watering.indexOf('FLOWER.POLLENIZERS')).toBeGreaterThan(watering.indexOf('SUPPLY.DRIPRUNTIME'));
  expect(search('')).toEqual(inPlace);
});
