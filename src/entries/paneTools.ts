/** What the pane is handed in a page of our own. */
import { refusalOf } from '../functions/refusalOf';
import type { PaneTools } from '../taskpane/paneTools';
import { homeworkWhenAsked } from './homeworkWhenAsked';
import { sharedTools } from './sharedTools';
import { workingWhenAsked } from './workingWhenAsked';

export const paneTools: PaneTools = {
  ...sharedTools,
  ...homeworkWhenAsked,
  refusalOf: async (...asked) => refusalOf(...asked),
  readWorking: workingWhenAsked(async () => (await import('./functionTools')).functionTools),
};
