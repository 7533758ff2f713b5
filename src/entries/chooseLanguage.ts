/** The first import of every page: what is said is read when its modules are loaded, in the language chosen by then. */
import { keptLanguage } from './keptLanguage';

// Where functions run without a page there is no navigator.
const { navigator } = globalThis as { navigator?: { readonly language?: string } };
globalThis.cucurbitLanguage = keptLanguage() ?? navigator?.language?.slice(0, 2).toLowerCase();
