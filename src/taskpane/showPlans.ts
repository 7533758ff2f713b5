/** The pane over one workbook after another, as plans are opened. */
import type { Desk, Filling, Started } from '../workbook/desk';
import { fillSheets, findSheet } from '../workbook/fillSheets';
import type { LiveWorkbook } from '../workbook/port';
import { demoFilling } from '../templates/demoGarden';
import { makeCalendar } from '../templates/makeCalendar';
import { plotsTemplate } from '../templates/plots';
import { allTemplates, areInOtherLanguage } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import { element } from './elements';
import { mountPane, type PaneHandle } from './mountPane';
import type { PaneTools } from './paneTools';
import type { PlanFiles } from './planSection';

const { plan, reading, title, undo } = catalogue.pane;

const sayFound: Readonly<Record<Started['found'], string>> = {
  kept: '',
  nothing: plan.demo,
  unreadable: plan.unreadable,
};

const fillEmpty: Filling = (workbook) => {
  const requests = allTemplates.map((template) => ({ template, inputs: [], form: {} }));
  return fillSheets(workbook, requests, undo.sheets);
};

/** Of a big garden on a slow machine; nothing is measured by it. */
const settleMs = 60_000;

/**
 * Resolves when the first workbook has been read once.
 *
 * @param hint what to know of the page around the pane
 */
export async function showPlans(
  root: HTMLElement,
  desk: Desk,
  files: PlanFiles,
  tools: PaneTools,
  hint: string,
): Promise<void> {
  const fillDemo: Filling = async (workbook) => {
    await fillSheets(workbook, demoFilling, undo.sheets);
    await workbook.settle(settleMs);
    await makeCalendar(workbook, tools.calendarTasks, undo.calendar);
  };
  root.replaceChildren(
    element('header', {}, element('h1', {}, title)),
    element('p', { role: 'status', class: 'hint' }, reading),
  );
  let handle: PaneHandle | null = null;
  /** @param isReopened what was pressed is gone with the old pane: the focus goes to where the new one begins */
  const show = async (workbook: LiveWorkbook, said: string, isReopened: boolean): Promise<void> => {
    handle?.dispose();
    await revealPlots(workbook);
    const mounting = mountPane(root, workbook, tools, hint, {
      desk,
      files,
      fillDemo,
      fillEmpty,
      said,
      reopen: (next, why) => show(next, why, true),
    });
    // Not once it is read: somebody may be typing into the grid by then.
    if (isReopened) root.querySelector('h2')?.focus();
    handle = await mounting;
  };
  // In words of the other language nothing could be done with an example, and nobody's work is in it.
  const { workbook, found } = await desk.start(fillDemo, areInOtherLanguage);
  await show(workbook, sayFound[found], false);
}

async function revealPlots(workbook: LiveWorkbook): Promise<void> {
  const plots = findSheet(await workbook.sheets(), plotsTemplate);
  if (plots === undefined) return;
  await workbook.reveal({ sheet: plots.name, row: 0, column: 0, rows: 1, columns: 1 });
}
