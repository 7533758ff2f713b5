/** The problems of a homework, for those parts alone that make one. */
import * as english from './english/homeworkProblems';
import { language } from './language';
import * as spanish from './spanish/homeworkProblems';

export const { homeworkProblemTexts, homeworkProblemWords } = { en: english, es: spanish }[language];
