/**
 * What runs the worksheet functions, out of the script that has registered them in the page: see `library` in
 * webpack.config.js. A copy in a script of the pane would register itself in their place.
 */
import type { PaneTools } from '../taskpane/paneTools';
import { workingWhenAsked } from './workingWhenAsked';

interface Page {
  readonly cucurbitFunctions?: Pick<
    typeof import('./functions'),
    'functionTools' | 'homeworkProblems' | 'refusalOf'
  >;
}
const there = (): Page['cucurbitFunctions'] => (globalThis as Page).cucurbitFunctions;

export const functionsOfPage: Pick<PaneTools, 'homeworkProblems' | 'readWorking' | 'refusalOf'> = {
  homeworkProblems: async (...asked) => {
    const functions = there();
    if (functions === undefined) throw new Error('functions.js');
    return functions.homeworkProblems(...asked);
  },
  refusalOf: async (...asked) => there()?.refusalOf(...asked) ?? null,
  readWorking: workingWhenAsked(async () => there()?.functionTools),
};
