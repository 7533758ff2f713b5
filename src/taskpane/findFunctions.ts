import type { ListedFunction } from '../workbook/functionHelp';
import { catalogue } from '../texts/catalogue';
import { hasWords, isBegunBy, isNamedBy, searchedWords, thoseWithWords } from './hasWords';

const words = catalogue.pane.functionList;

/** Functions under one heading, one at least. */
export interface FoundFunctions {
  readonly heading: string;
  readonly found: readonly ListedFunction[];
}

/**
 * Those that are found by name, then the others by task; all by task when nothing is searched for. The heading of a task
 * is no word of each function under it, unless the search begins it or nothing else is found.
 */
export function findFunctions(
  functions: readonly ListedFunction[],
  searched: string,
): readonly FoundFunctions[] {
  const wanted = searchedWords(searched, words.ignored);
  const ofName = searchedWords(searched);
  const named = ofName.length === 0 ? [] : functions.filter(({ id }) => isNamedBy(id, ofName));
  // FLOWER.SHARE is no FLOWER.FEMALESHARE.
  const begun = named.filter(({ id }) => hasWords(id, ofName));
  const unnamed = functions.filter((one) => !named.includes(one));
  const withTask = ({ family, foundBy }: ListedFunction): string => `${family} ${foundBy}`;
  const ownWords = (one: ListedFunction): string =>
    isBegunBy(one.family, searched) ? withTask(one) : one.foundBy;
  const own = thoseWithWords(unnamed, ownWords, wanted, words.ignored);
  const isFound = named.length > 0 || own.length > 0;
  const others = isFound ? own : thoseWithWords(functions, withTask, wanted, words.ignored);
  const tasks = [...new Set(others.map(({ family }) => family))];
  return [
    { heading: words.byName, found: [...new Set([...begun, ...named])] },
    ...tasks.map((task) => ({ heading: task, found: others.filter(({ family }) => family === task) })),
  ].filter(({ found }) => found.length > 0);
}
