import type { GuideTools } from '../taskpane/paneTools';

/** What the pane lists of functions and crops is a part of the page that is loaded when it is first asked for. */
export const guideWhenAsked: GuideTools = {
  functionList: async () => (await import('./listedFunctions')).listedFunctions,
  cropGuide: async () => (await import('../guide/cropGuide')).cropGuide,
};
