/** Every sentence a person reads, in the language that was chosen. */
import { english } from './english';
import { language } from './language';
import { spanish } from './spanish';
import type { Translated } from './translated';

const catalogues: Readonly<Record<typeof language, Translated>> = { en: english, es: spanish };

export const catalogue = catalogues[language];
