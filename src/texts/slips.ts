/** What is said of a slip, for those parts alone that look for one. */
import * as english from './english/slips';
import { language } from './language';
import * as spanish from './spanish/slips';

export const { slips } = { en: english, es: spanish }[language];
