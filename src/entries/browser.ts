/** The browser workbook: the grid with the invented garden filled in, and the pane beside it. */
import { functions } from '../functions';
import { openPage } from '../hosts/browser/openPage';
import { mountPane } from '../taskpane/mountPane';
import { demoFilling } from '../templates/demoGarden';
import { plotsTemplate } from '../templates/plots';
import { functionNamespace } from '../templates/sheets';
import { english } from '../texts/english';
import { fillSheets } from '../workbook/fillSheets';
import { functionHelp as help } from './functions?help';
import { paneTools } from './paneTools';
import { switchByKey } from './switchByKey';
import '../taskpane/pane.css';
import './browser.css';

async function open(grid: HTMLElement, pane: HTMLElement): Promise<void> {
  const firstSheet = english.sheets.scratch;
  const options = { functions: [...functions.values()], namespace: functionNamespace, firstSheet, help };
  const workbook = openPage(options, grid);
  await fillSheets(workbook, demoFilling, english.pane.undo.sheets);
  await workbook.reveal({ sheet: plotsTemplate.sheet, row: 0, column: 0, rows: 1, columns: 1 });
  await mountPane(pane, workbook, paneTools, english.pane.keys);
  switchByKey(pane, workbook.takeFocus);
  grid.setAttribute('aria-description', english.pane.keys);
}

void open(document.getElementById('grid') as HTMLElement, document.getElementById('pane') as HTMLElement);
