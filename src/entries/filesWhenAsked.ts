import type { PlanFiles } from '../taskpane/planSection';

/** Reading and writing files is a part of the page that is loaded when it is first asked for. */
export const filesWhenAsked: PlanFiles = {
  write: async (workbook) => (await import('./planFiles')).writePlan(workbook),
  read: async (name, bytes, workbook) => (await import('./planFiles')).readPlanFile(name, bytes, workbook),
};
