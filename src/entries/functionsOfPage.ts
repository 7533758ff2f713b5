/**
 * What runs the worksheet functions, out of the script that has registered them in the page: see `library` in
 * webpack.config.js. A copy in a script of the pane would register itself in their place.
 */
import type { PaneTools } from '../taskpane/paneTools';
import { workingWhenAsked } from './workingWhenAsked';

interface Page {
  readonly cucurbitFunctions?: Pick<typeof import('./functions'), 'functionTools' | 'homeworkProblems'>;
}
const there = (): Page['cucurbitFunctions'] => (globalThis as Page).cucurbitFunctions;

export const functionsOfPage: Pick<PaneTools, 'homeworkProblems' | 'readWorking'> = {
  homeworkProblems: async (...asked) => {
    const functions = there();
    if (functions === undefined) throw new Error('functions.js');
    return functions.homeworkProblems(...asked);
  },
  readWorking: workingWhenAsked(async () => there()?.functionTools),
};
