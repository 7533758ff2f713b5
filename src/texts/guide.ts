/** What the function reference and the crop guide say, for those parts alone that are loaded when asked for. */
import { guide as english } from './english/guide';
import { language } from './language';
import { guide as spanish } from './spanish/guide';

export const guide = { en: english, es: spanish }[language];
