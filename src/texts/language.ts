/** The language of everything a person reads. It is chosen before the sentences are first read, and then stays. */

export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];

declare global {
  /** Set by whoever starts the program, ahead of all else; English where it is not set. */
  var cucurbitLanguage: string | undefined;
}

export const language: Language = languages.find((known) => known === globalThis.cucurbitLanguage) ?? 'en';
