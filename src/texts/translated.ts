import type { english } from './english';

export type WithOtherWords<T> = T extends string ? string : { readonly [K in keyof T]: WithOtherWords<T[K]> };

/** What every language says: the keys of English, no more and no less, lists of the same length. */
export type Translated = WithOtherWords<typeof english>;

/** What another language says of the worksheet functions, which are described in English by their comments. */
export interface FunctionTexts {
  /** By the task in README. */
  readonly tasks: Readonly<Record<string, string>>;
  /** What is asked, by the name of the argument, where a function has nothing else for it. */
  readonly parameters: Readonly<Record<string, string>>;
  /** By id. */
  readonly functions: Readonly<
    Record<string, { readonly description: string; readonly parameters?: Readonly<Record<string, string>> }>
  >;
}
