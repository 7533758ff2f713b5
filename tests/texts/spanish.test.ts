import { describe, expect, test } from 'vitest';
import { english } from '../../src/texts/english';
import * as functionWords from '../../src/texts/english/functionWords';
import * as guide from '../../src/texts/english/guide';
import * as homeworkProblems from '../../src/texts/english/homeworkProblems';
import * as slips from '../../src/texts/english/slips';
import * as workings from '../../src/texts/english/workings';
import { spanish } from '../../src/texts/spanish';
import * as spanishFunctionWords from '../../src/texts/spanish/functionWords';
import * as spanishGuide from '../../src/texts/spanish/guide';
import * as spanishHomeworkProblems from '../../src/texts/spanish/homeworkProblems';
import * as spanishSlips from '../../src/texts/spanish/slips';
import * as spanishWorkings from '../../src/texts/spanish/workings';

type Tree = string | readonly Tree[] | { readonly [key: string]: Tree };

/** Every sentence with the way to it, "errors.missing". */
function sentences(tree: Tree, path: readonly string[] = []): [path: string, sentence: string][] {
  if (typeof tree === 'string') return [[path.join('.'), tree]];
  return Object.entries(tree).flatMap(([key, below]) => sentences(below, [...path, key]));
}

const inEnglish = new Map(
  sentences({ ...english, ...functionWords, ...guide, ...homeworkProblems, ...slips, ...workings } as Tree),
);
const inSpanish = new Map(
  sentences({
    ...spanish,
    ...spanishFunctionWords,
    ...spanishGuide,
    ...spanishHomeworkProblems,
    ...spanishSlips,
    ...spanishWorkings,
  } as Tree),
);

/** What is to be filled in: "{count}", and "{count" of "{count|plot|plots}". */
const placeholders = (sentence: string): string[] =>
  [...new Set([...sentence.matchAll(/\{(\w+)/g)].map(([, name]) => name as string))].sort();

/** Function names, options and addresses stand in a sentence in the same letters in every language. */
const unspoken = (sentence: string): string[] =>
  [
    ...new Set(
      sentence.match(/CUCURBIT\.[A-Z.]+[A-Z]|--[a-z]{2}[a-z-]*|#[A-Z/]+[!?A]|\bCFR [\d.]+|=WEATHER_\w+/g) ??
        [],
    ),
  ].sort();

/** Words that functions and options take or give back. */
const wordsOfFunctions =
  /\.packed\.\d$|^(verdicts\.clear|standVerdicts\.|sizeVerdicts\.|rotation\.|weather\.none)/;
/** What is left to translate in it: no name of a function or placeholder, no unit, no word that both languages have. */
const toTranslate = (sentence: string): boolean =>
  /[a-z]{3}/i.test(
    sentence
      .replaceAll(/\{[^}]*\}|CUCURBIT\.[A-Z.]+/g, '')
      .replaceAll(/\b(acre|gal|bushels?|Fahrenheit|Celsius|total|error|base)\b/gi, ''),
  );

describe('Spanish', () => {
  test('says all that English says, and nothing else', () => {
    expect([...inSpanish.keys()].sort()).toEqual([...inEnglish.keys()].sort());
    expect(inEnglish.size).toBeGreaterThan(1000);
  });

  test('no sentence is blank that is not blank in English', () => {
    const blank = [...inSpanish].filter(([path, said]) => (said === '') !== (inEnglish.get(path) === ''));
    expect(blank).toEqual([]);
  });

  test('the same values are filled in', () => {
    const differing = [...inSpanish].filter(
      ([path, said]) => placeholders(said).join() !== placeholders(inEnglish.get(path) as string).join(),
    );
    expect(differing).toEqual([]);
  });

  test('functions, options and regulations keep their names', () => {
    const differing = [...inSpanish].filter(
      ([path, said]) => unspoken(said).join() !== unspoken(inEnglish.get(path) as string).join(),
    );
    expect(differing).toEqual([]);
  });

  test.each([english, spanish])('the letters of Weeks differ, and its lead explains each', ({ calendar }) => {
    const { letters, lead } = calendar.weeks;
    const all = Object.values(letters);
    expect(new Set(all).size).toBe(all.length);
    for (const letter of all) expect(lead[0]).toContain(`${letter}: `);
  });

  test('no sentence was left in English', () => {
    const untranslated = [...inSpanish].filter(
      ([path, said]) => said === inEnglish.get(path) && toTranslate(said) && !wordsOfFunctions.test(path),
    );
    expect(untranslated).toEqual([]);
  });
});
