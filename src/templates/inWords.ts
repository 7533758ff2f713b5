/** What a column or a line of choices needs to be understood by who speaks a language. */
import { catalogue, inOtherLanguages } from '../texts/catalogue';
import type { FormLine } from '../workbook/template';

/** Words of the functions that are choices somewhere; each is said in every language. */
export type Choice = keyof typeof catalogue.choices;

const split = (words: string): readonly string[] => words.split(', ');

/** A list may come in any of the languages; what is shown is in the one that was chosen. */
export function inWords<C extends Choice>(
  choices: readonly C[],
): { readonly choices: readonly C[] } & Required<Pick<FormLine, 'words'>> {
  const words = choices.map((choice) => [
    choice,
    [catalogue.choices[choice], ...inOtherLanguages((other) => other.choices[choice])].flatMap(split),
  ]);
  return { choices, words: Object.fromEntries(words) as Readonly<Record<C, readonly string[]>> };
}
