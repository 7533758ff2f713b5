import type { ListedFunction } from '../workbook/functionHelp';
import { catalogue } from '../texts/catalogue';
import { foundByWords, hasWords, isNamedBy, searchedWords } from './hasWords';

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
  const ofName = searchedWords(searched);
  const named = ofName.length === 0 ? [] : functions.filter(({ id }) => isNamedBy(id, ofName));
  // FLOWER.SHARE is no FLOWER.FEMALESHARE.
  const begun = named.filter(({ id }) => hasWords(id, ofName));
  const underTasks = {
    headingOf: ({ family }: ListedFunction) => family,
    wordsOf: ({ foundBy }: ListedFunction) => foundBy,
  };
  const others = foundByWords(functions, named, underTasks, searched, words.ignored);
  const tasks = [...new Set(others.map(({ family }) => family))];
  return [
    { heading: words.byName, found: [...new Set([...begun, ...named])] },
    ...tasks.map((task) => ({ heading: task, found: others.filter(({ family }) => family === task) })),
  ].filter(({ found }) => found.length > 0);
}
