/** The product's own page in Spanish: how it begins, what it says, and the way to English and back. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { flowerTypes } from '../../src/reference/crops';
import { layouts, starts } from '../../src/templates/plots';
import { english } from '../../src/texts/english';
import { spanish } from '../../src/texts/spanish';
import { functionHelp } from '../../src/texts/spanish/functionHelp';
import { openPlanPage, type PlanPage } from './gridPage/planPage';

type Tree = string | readonly Tree[] | { readonly [key: string]: Tree };
const sentencesOf = (tree: Tree): string[] =>
  typeof tree === 'string' ? [tree] : Object.values(tree).flatMap(sentencesOf);

/** What only English says, as far as nothing is filled in. */
const englishOnly = (): ReadonlySet<string> => {
  const inSpanish = new Set(sentencesOf(spanish as Tree));
  return new Set(
    sentencesOf(english as Tree).filter(
      (sentence) => sentence.length > 3 && !sentence.includes('{') && !inSpanish.has(sentence),
    ),
  );
};
/** They stay as the functions take them. */
const wordsOfFunctions: ReadonlySet<string> = new Set([...layouts, ...starts, ...flowerTypes]);
const { pane: words, sheets } = spanish;

describe('the page of a browser in Spanish', { timeout: 240_000 }, () => {
  let open: PlanPage;
  beforeAll(async () => {
    open = await openPlanPage('es-MX', /Para revisar \(\d+\)/);
  }, 240_000);
  afterAll(() => open.close());

  const season = () => open.pane.section(sheets.season.title);
  const language = () => open.page.evaluate(() => document.documentElement.lang);

  test('begins with the garden in Spanish, the days too', async () => {
    expect(await language()).toBe('es');
    expect(await open.page.title()).toBe(words.title);
    expect((await open.plots.headers()).slice(0, 3)).toEqual(['Parcela', 'Cultivo', 'Disposición']);
    expect((await open.hands.shown('A8:C8'))[0]).toEqual(['Arroyo 1', 'pepino', 'rows']);
    expect(await open.page.getByRole('main', { name: words.regions.grid }).count()).toBe(1);
    // Two weeks after the last frost, on 2 May.
    await open.pane.says('16 may 2027');
    expect(open.troubles).toEqual([]);
  });

  test('has no English left in the pane, all opened, nor in the sheet in front', async () => {
    await open.page.evaluate(() => {
      for (const part of document.querySelectorAll<HTMLDetailsElement>('#pane details')) part.open = true;
    });
    const said = await open.pane.root.evaluate((root) => {
      const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
      const texts: string[] = [];
      while (walker.nextNode() !== null) texts.push(walker.currentNode.textContent?.trim() ?? '');
      return texts;
    });
    const cells = (await open.hands.shown('A1:AZ30')).flat();
    const never = englishOnly();
    expect(never.size).toBeGreaterThan(500);
    const left = [...said, ...cells].filter((text) => never.has(text) && !wordsOfFunctions.has(text));
    expect(left).toEqual([]);
    expect(said.length).toBeGreaterThan(300);
  });

  test('lists the functions in Spanish, found by words with or without accents, and leads to their pages', async () => {
    await open.pane.press(words.functionList.open);
    const list = open.page.locator('section', {
      has: open.page.getByRole('heading', { name: words.functionList.heading, exact: true, level: 2 }),
    });
    const { description, parameters } = functionHelp.functions['FLOWER.HIVES'] ?? {};
    await list.getByLabel(words.functionList.search).fill('ABEJAS colmenas');
    await list.getByRole('button', { name: /^FLOWER\.HIVES/ }).click();
    await list.locator('.help', { hasText: parameters?.['area'] ?? 'nothing' }).waitFor();
    expect(await list.getByText(description ?? 'nothing').count()).toBe(2);
    expect(
      await list
        .getByRole('heading', { name: functionHelp.tasks['Males, females, kept apart'] ?? '' })
        .count(),
    ).toBe(1);
    const page = list.getByRole('link', { name: /FLOWER\.HIVES/ });
    expect(await page.getAttribute('href')).toBe('functions/es/FLOWER.HIVES.html');
    await list.getByLabel('area').fill('ochenta');
    await open.pane.press(words.functionList.put);
    await open.pane.says(/No se escribió nada\. .*"ochenta"/);
  });

  test('the grid says in Spanish what a function that is typed is for', async () => {
    await open.hands.goTo('B60');
    await open.page.keyboard.type('=CUCURBIT.FLOWER.HI', { delay: 30 });
    await open.page
      .getByText(functionHelp.functions['FLOWER.HIVES']?.description ?? 'nothing')
      .last()
      .waitFor();
    await open.hands.press('Escape');
    await open.hands.press('Escape');
  });

  test('has the garden, as nobody changed it, in English when asked for English, and back', async () => {
    await open.pane.press(words.language.other);
    await open.pane.says(/To look at \(\d+\)/);
    expect((await open.hands.shown('A8:C8'))[0]).toEqual(['Creek 1', 'slicing cucumber', 'rows']);
    await open.pane.says(english.pane.plan.demo);
    await open.pane.press(english.pane.language.other);
    await open.pane.says(/Para revisar \(\d+\)/);
    expect((await open.hands.shown('A8'))[0]).toEqual(['Arroyo 1']);
  });

  test('refuses a wrong figure and takes a right one in Spanish', async () => {
    const risk = season().getByLabel(sheets.season.lines.frostRisk.label);
    await risk.fill('mitad');
    await open.pane.press(words.season.put);
    await open.pane.says(/mitad/);
    await risk.fill('20');
    await open.pane.press(words.season.put);
    await open.pane.says(new RegExp(`: .*${sheets.season.lines.frostRisk.label}`));
  });

  test('reads a date that is typed or pasted into the grid with its day first, and tells of one that is none', async () => {
    const { header } = sheets.plots.columns.startsOn;
    await open.hands.goTo(await open.plots.addressOf(0, header));
    for (const text of ['05/06/2027', '25/06/2027', '8 abr 2027', '31/06/2027']) {
      await open.page.keyboard.type(text, { delay: 30 });
      await open.hands.press('Enter');
    }
    await open.page.evaluate(() => navigator.clipboard.writeText('06/07/2027\n26/07/2027'));
    await open.hands.press('Control+v');
    await open.pane.says(/"31\/06\/2027"/);
    const line = async (index: number): Promise<string | undefined> =>
      (await open.hands.shown(await open.plots.addressOf(index, header)))[0]?.[0];
    expect([await line(0), await line(1), await line(2)]).toEqual(['2027-06-05', '2027-06-25', '2027-04-08']);
    expect([await line(3), await line(4), await line(5)]).toEqual(['31/06/2027', '2027-07-06', '2027-07-26']);
  });

  test('leads to English, which says that the sheets are in Spanish, and back to the same plan', async () => {
    await open.pane.press(words.language.other);
    await open.pane.says(english.pane.language.sheetsInOther);
    expect(await language()).toBe('en');
    expect(await open.pane.root.getByRole('button', { name: english.pane.sheets.fill }).count()).toBe(0);
    await open.pane.press(english.pane.language.other);
    await open.pane.says(/Para revisar \(\d+\)/);
    expect(await season().getByLabel(sheets.season.lines.frostRisk.label).inputValue()).toBe('20');
    expect(await language()).toBe('es');
  });
});
