/** What the working of a calculation says, for those parts alone that show one. */
import * as english from './english/workings';
import { language } from './language';
import * as spanish from './spanish/workings';

export const { remarks, steps } = { en: english, es: spanish }[language];
