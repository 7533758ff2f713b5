import { plainWord } from '../workbook/plainWord';

/** Whether a text has every word that is searched for, in any letters, without accents and as parts of words too. */
export function hasWords(text: string, searched: string): boolean {
  const plain = plainWord(text);
  return plainWord(searched)
    .split(' ')
    .every((word) => plain.includes(word));
}
