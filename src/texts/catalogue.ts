/** Every sentence a person reads, in the language that was chosen. */
import { english } from './english';
import { language, languages } from './language';
import { spanish } from './spanish';
import type { Translated } from './translated';

const catalogues: Readonly<Record<typeof language, Translated>> = { en: english, es: spanish };

export const catalogue = catalogues[language];

type Texts = string | readonly Texts[] | { readonly [key: string]: Texts };

function pairs(there: Texts, here: Texts): readonly (readonly [there: string, here: string])[] {
  if (typeof there === 'string') return typeof here === 'string' ? [[there, here]] : [];
  const below = here as Readonly<Record<string, Texts>>;
  return Object.entries(there).flatMap(([key, text]) => pairs(text as Texts, below[key] ?? ''));
}

/** What other languages say in a part of the catalogue, each text with what stands for it here. */
export function saidElsewhere(pick: (words: Translated) => Texts): Readonly<Record<string, string>> {
  const others = languages.filter((other) => other !== language).map((other) => catalogues[other]);
  return Object.fromEntries(others.flatMap((other) => pairs(pick(other), pick(catalogue))));
}

/** The same sentence as each other language has it. */
export function inOtherLanguages(pick: (words: Translated) => string): readonly string[] {
  return languages.filter((other) => other !== language).map((other) => pick(catalogues[other]));
}
