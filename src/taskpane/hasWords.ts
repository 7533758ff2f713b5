import { plainWord } from '../workbook/plainWord';

const partsOf = (text: string): string[] => plainWord(text).match(/[\p{L}\p{N}]+/gu) ?? [];

/**
 * The words that are searched for.
 *
 * @param ignored words that say nothing, unless nothing else is said
 */
export function searchedWords(searched: string, ignored = ''): readonly string[] {
  const all = partsOf(searched);
  const idle = partsOf(ignored);
  const telling = all.filter((word) => !idle.includes(word));
  return telling.length > 0 ? telling : all;
}

/**
 * Whether each of the words begins a word of the text, or is one of them in the plural.
 *
 * @param ignored words that say nothing in the text either, unless they are searched for
 */
export function hasWords(text: string, words: readonly string[], ignored = ''): boolean {
  const idle = partsOf(ignored).filter((word) => !words.includes(word));
  const parts = partsOf(text).filter((part) => !idle.includes(part));
  return words.every((word) => parts.some((part) => part.startsWith(word) || isPlural(word, part)));
}

/** How the things that are searched among stand under headings, and the words that each is found by. */
interface UnderHeadings<Item> {
  headingOf(item: Item): string;
  wordsOf(item: Item): string;
}

/**
 * Those that are found by their words, but for those found by their names. A heading is no word of each thing under it,
 * unless the search begins it or nothing else is found.
 *
 * @param named those found by their names
 * @param ignored words that say nothing
 */
export function foundByWords<Item>(
  items: readonly Item[],
  named: readonly Item[],
  { headingOf, wordsOf }: UnderHeadings<Item>,
  searched: string,
  ignored: string,
): readonly Item[] {
  const words = searchedWords(searched, ignored);
  const withHeading = (item: Item): string => `${headingOf(item)} ${wordsOf(item)}`;
  const ownWords = (item: Item): string =>
    isBegunBy(headingOf(item), searched) ? withHeading(item) : wordsOf(item);
  const unnamed = items.filter((item) => !named.includes(item));
  const own = thoseWithWords(unnamed, ownWords, words, ignored);
  const isFound = named.length > 0 || own.length > 0;
  return isFound ? own : thoseWithWords(items, withHeading, words, ignored);
}

/**
 * Those that have the words, first where they are words of their own, then where they only begin some: whoever types
 * "water" is after watering rather than after watermelons, and "wat" may become either.
 */
export function thoseWithWords<Item>(
  items: readonly Item[],
  textOf: (item: Item) => string,
  words: readonly string[],
  ignored: string,
): readonly Item[] {
  const begun = items.filter((item) => hasWords(textOf(item), words, ignored));
  const whole = begun.filter((item) => {
    const parts = partsOf(textOf(item));
    return words.every((word) => parts.some((part) => isForm(part, word) || isPlural(word, part)));
  });
  return [...whole, ...begun.filter((item) => !whole.includes(item))];
}

/** The word with an ending of its own: "watering", "picked", "weekly". */
const isForm = (part: string, word: string): boolean =>
  part.startsWith(word) && /^(e?s|ings?|e?d|e?rs?|ly)?$/.test(part.slice(word.length));

/** "bees" is no plural of "be". */
const isPlural = (word: string, one: string): boolean =>
  one.length > 2 && (word === `${one}s` || word === `${one}es`);

/** Whether the search is how a heading begins: "when", or the whole of it. */
function isBegunBy(heading: string, searched: string): boolean {
  return plainWord(heading).startsWith(plainWord(searched).trim());
}

/** Whether a name that is written as one word has each of the words in it. */
export function isNamedBy(name: string, words: readonly string[]): boolean {
  const letters = plainWord(name);
  return words.every((word) => letters.includes(word));
}
