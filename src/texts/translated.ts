import type { english } from './english';

export type WithOtherWords<T> = T extends string ? string : { readonly [K in keyof T]: WithOtherWords<T[K]> };

/** What every language says: the keys of English, no more and no less, lists of the same length. */
export type Translated = WithOtherWords<typeof english>;
