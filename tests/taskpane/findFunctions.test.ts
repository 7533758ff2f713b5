/** What a grower or a student types into the search of the functions, and what must be among the answers. */
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { describeFunctions } from '../../src/entries/describeFunctions.cjs';
import { hasWords, isNamedBy, searchedWords, thoseWithWords } from '../../src/taskpane/hasWords';
import type { DescribedFunction } from '../../src/workbook/functionHelp';
import { wrapperFiles } from '../functions/describedFunctions';

let described: readonly DescribedFunction[] = [];
beforeAll(async () => {
  described = await describeFunctions(wrapperFiles, 'README.md');
}, 60_000);

async function finder(language: string): Promise<(searched: string) => readonly string[]> {
  vi.resetModules();
  globalThis.cucurbitLanguage = language;
  const { listFunctions } = await import('../../src/guide/listFunctions');
  const { findFunctions } = await import('../../src/taskpane/findFunctions');
  const listed = listFunctions(described);
  return (searched) => findFunctions(listed, searched).flatMap(({ found }) => found.map(({ id }) => id));
}
let find: (searched: string) => readonly string[];
afterEach(() => {
  globalThis.cucurbitLanguage = undefined;
});

describe('in English', () => {
  beforeEach(async () => {
    find = await finder('en');
  });

  test.each([
    ['germination', ['SEED.NEEDED', 'SEED.TEST', 'TRAY.CELLS', 'EMERGENCE.PERCENT']],
    ['how many packs', ['SEED.PACKS', 'SEED.PACKCOST', 'SEED.PACKLIST']],
    ['spacing', ['PLANTS.DENSITY', 'ROW.FORPLANTS', 'STAND.COUNT']],
    ['bees', ['FLOWER.HIVES', 'FLOWER.ISOLATE', 'DATE.COVEROFF']],
    ['jars', ['PICKLE.JARS', 'PICKLE.POUNDS']],
    ['last frost', ['FROST.LASTDATES', 'DATE.SETOUT', 'SEASON.DAYS']],
    // The name of an argument, the heading of a task, a question, capitals.
    ['plants_per_hill', ['PLANTS.INHILLS', 'SEED.PERHILL']],
    ['Materials and water', ['SUPPLY.COVER']],
    ['When do I set out?', ['DATE.SETOUT']],
    ['IRRIGATION', ['SUPPLY.WATERNEED', 'SUPPLY.DRIPRUNTIME']],
    ['profit', ['BUDGET.RETURN']],
    ['when', ['DATE.SETOUT']],
  ])('"%s" finds %s', (searched, ids) => expect(find(searched)).toEqual(expect.arrayContaining(ids)));

  test('what the name says stands first, whatever the task', () => {
    expect(find('date').slice(0, 3)).toEqual(['DATE.SETOUT', 'DATE.STARTTRANSPLANTS', 'DATE.HARDENOFF']);
    expect(find('harvest')[0]).toBe('HARVEST.YIELD');
    expect(find('harvest')).toContain('DATE.LASTPICK');
  });

  test('words of their own come before words that only begin so', () => {
    const watering = find('water');
    // Only the heading of its task says water.
    expect(watering).not.toContain('SUPPLY.TRELLIS');
    expect(watering.slice(0, 2)).toEqual(['SUPPLY.WATER', 'SUPPLY.WATERNEED']);
    expect(watering.indexOf('SUPPLY.DRIPRUNTIME')).toBeGreaterThan(0);
    // By "watermelon".
    expect(watering.indexOf('FLOWER.POLLENIZERS')).toBeGreaterThan(watering.indexOf('SUPPLY.DRIPRUNTIME'));
    // Half a word may still become one.
    expect(find('waterm')).toContain('FLOWER.POLLENIZERS');
    expect(find('germinat')).toEqual(expect.arrayContaining(['SEED.TEST', 'SEED.NEEDED']));
    expect(find('pick')).toContain('BUDGET.PICKHOURS');
  });

  test('each is found once, and by its own name', () => {
    for (const { id } of described) expect(find(id)[0], id).toBe(id);
    expect(new Set(find('seed')).size).toBe(find('seed').length);
  });

  test('every word must be there', () => {
    expect(find('jars frost')).toEqual([]);
    expect(find('bee')).not.toContain('PLANTS.INBEDS');
    // "bees" is no plural of "be".
    expect(find('bees')).not.toContain('DATE.LASTSOWING');
  });
});

describe('in Spanish', () => {
  beforeEach(async () => {
    find = await finder('es');
  });

  test.each([
    ['germinacion', ['SEED.NEEDED', 'SEED.TEST']],
    ['¿Cuántos sobres?', ['SEED.PACKS', 'SEED.PACKCOST']],
    ['distancia', ['PLANTS.DENSITY', 'ROW.FORPLANTS']],
    ['ABEJAS', ['FLOWER.HIVES']],
    ['frascos', ['PICKLE.JARS', 'PICKLE.POUNDS']],
    ['última helada', ['FROST.LASTDATES', 'DATE.SETOUT', 'SEASON.DAYS']],
    ['ultima helada', ['FROST.LASTDATES', 'DATE.SETOUT', 'SEASON.DAYS']],
    ['charolas', ['TRAY.CELLS', 'TRAY.COUNT']],
    ['riego', ['SUPPLY.WATERNEED', 'SUPPLY.DRIPRUNTIME']],
    ['escarabajos y rotación', ['BEETLE.VERDICT', 'ROTATION.YEARS']],
  ])('"%s" finds %s', (searched, ids) => expect(find(searched)).toEqual(expect.arrayContaining(ids)));

  test('packs are no prepositions', () => {
    // "sobre 0" stands in many a description: above 0.
    const found = find('¿Cuántos sobres?');
    expect(
      found.every((id) => id.startsWith('SEED.')),
      found.join(),
    ).toBe(true);
  });
});

test('words begin words, in any letters, or are their plural', () => {
  expect(hasWords('Última helada', searchedWords('ULTIMA hel'))).toBe(true);
  expect(hasWords('between rows', searchedWords('bee'))).toBe(false);
  expect(hasWords('the crop, the box', searchedWords('crops boxes'))).toBe(true);
  expect(hasWords('anything', searchedWords(' '))).toBe(true);
  expect(hasWords('sobre 0', ['sobres'], 'de sobre')).toBe(false);
  expect(hasWords('sobre 0', ['sobre'], 'de sobre')).toBe(true);
  expect(searchedWords('How many?', 'how many')).toEqual(['how', 'many']);
  expect(searchedWords('How many jars?', 'how many')).toEqual(['jars']);
  const found = (texts: readonly string[], searched: string): readonly string[] =>
    thoseWithWords(texts, (text) => text, searchedWords(searched), '');
  expect(found(['watermelons', 'watering', 'to water'], 'water')).toEqual([
    'watering',
    'to water',
    'watermelons',
  ]);
  expect(found(['watermelons', 'rain'], 'water')).toEqual(['watermelons']);
  expect(found(['a box', 'boxwood'], 'boxes')).toEqual(['a box']);
  expect(found(['b', 'a'], '')).toEqual(['b', 'a']);
  expect(isNamedBy('DATE.LASTSOWING', ['sowing'])).toBe(true);
});
