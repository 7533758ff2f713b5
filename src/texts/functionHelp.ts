/** What is said of the worksheet functions in other words than their comments, and what they are searched for. */
import { functionWords as english } from './english/functionWords';
import { language } from './language';
import { functionHelp } from './spanish/functionHelp';
import { functionWords as spanish } from './spanish/functionWords';
import type { FunctionTexts } from './translated';

/** null in English: it stands in the comments and in README. */
export const functionTexts: FunctionTexts | null = { en: null, es: functionHelp }[language];

export const functionWords = { en: english, es: spanish }[language];
