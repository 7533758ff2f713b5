import { distance } from 'fastest-levenshtein';
import { plainName } from './plainName';

const mostNames = 3;
/** One slip for every three letters, two at least. */
const slipsAllowed = (given: string): number => Math.max(2, Math.floor(given.length / 3));
/** Short of this many letters, a name that merely contains the given one is no hint. */
const leastLetters = 3;
/** Short of this many, a word of a name is near too many others. */
const leastLettersOfWord = 5;
/** Plants of their own with a name near a crop's, as chayote is near ayote: no slips of the pen. */
const otherPlants = new Set(['chayote', 'chayotes']);

/**
 * The names that somebody may have meant, nearest first.
 *
 * distance = least number of letters to insert, delete or replace; names that contain the given one, or of which a word
 * is as near, come after the slips of the pen, in their own order
 *
 * @param given as typed
 * @param names the names there are
 * @returns at most three of `names`, none when nothing is near, or another plant is given
 * Source: Levenshtein's edit distance (1966); how near is near: judgement.
 * @example nearestNames('pumkin', ['pumpkin', 'gourd']) // ['pumpkin']
 */
export function nearestNames(given: string, names: readonly string[]): readonly string[] {
  const plain = plainName(given);
  if (otherPlants.has(plain)) return [];
  const allowed = slipsAllowed(plain);
  const isNear = (word: string): boolean =>
    plain.length >= leastLettersOfWord && distance(plain, word) <= allowed;
  return names
    .map((name) => {
      const other = plainName(name);
      const slips = distance(plain, other);
      const contains = plain.length >= leastLetters && other.includes(plain);
      const isIn = contains || other.split(' ').some(isNear);
      return { name, rank: slips <= allowed ? slips : isIn ? allowed + 1 : Infinity };
    })
    .filter((candidate) => candidate.rank < Infinity)
    .sort((a, b) => a.rank - b.rank)
    .slice(0, mostNames)
    .map((candidate) => candidate.name);
}
