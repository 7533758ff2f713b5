/** The browser workbook: the grid with the invented garden filled in, and the pane beside it. */
import { functions } from '../functions';
import { openPage } from '../hosts/browser/openPage';
import { mountPane } from '../taskpane/mountPane';
import { demoPlots, demoSeason } from '../templates/demoGarden';
import { plotsTemplate } from '../templates/plots';
import { allTemplates, functionNamespace } from '../templates/sheets';
import { fillSheets } from '../workbook/fillSheets';
import '../taskpane/pane.css';
import './browser.css';

function demand(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`browser.html lacks #${id}`);
  return found;
}

async function open(): Promise<void> {
  const workbook = openPage(
    { functions: [...functions.values()], namespace: functionNamespace, firstSheet: 'Notepad' },
    demand('grid'),
  );
  const requests = allTemplates.map((template) => ({
    template,
    inputs: template === plotsTemplate ? demoPlots : [],
    form: demoSeason,
  }));
  await fillSheets(workbook, requests, plotsTemplate.title);
  await mountPane(demand('pane'), workbook);
}

void open();
