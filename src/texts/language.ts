/** The language of everything a person reads. It is chosen before the sentences are first read, and then stays. */

export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];

declare global {
  /** Set by whoever starts the program, ahead of all else; English where it is not set or not known. */
  var cucurbitLanguage: string | undefined;
}

export const language: Language = languages.find((known) => known === globalThis.cucurbitLanguage) ?? 'en';

/**
 * For numbers and dates that are not in cells. Spanish as it is written in the Americas, with a decimal point: its
 * sentences are too.
 */
export const locale = { en: 'en-US', es: 'es-US' }[language];

/** Of 5/6/2026: in English it is as often the sixth of May. */
export const isDayFirst = { en: false, es: true }[language];

/** Of 1.000: in Spanish it is as often a thousand, which much of the Americas writes so. */
export const pointOfThousands = { en: false, es: true }[language];

/** The folder of the function reference in a language, within the folder of all of it; with its slash. */
export function pagesIn(of: string): string {
  return of === 'en' ? '' : `${of}/`;
}

/** A sheet in one language is no sheet of another: its headers are other words. */
export function idInLanguage(id: string, of: Language = language): string {
  return of === 'en' ? id : `${of}.${id}`;
}
