/** The browser workbook: the grid with the plan kept in this browser, or the invented garden, and the pane beside it. */
import './chooseLanguage';
import { functions } from '../functions';
import { openDesk } from '../hosts/browser/openDesk';
import { namePage } from '../taskpane/namePage';
import { listenForKeys } from '../taskpane/pageKeys';
import { showPlans } from '../taskpane/showPlans';
import { functionNamespace } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import { datesInWords } from '../texts/datesInWords';
import { language } from '../texts/language';
import { filesWhenAsked } from './filesWhenAsked';
import { listedFunctions } from './listedFunctions';
import { paneTools } from './paneTools';
import '../taskpane/pane.css';
import './browser.css';

async function open(grid: HTMLElement, pane: HTMLElement): Promise<void> {
  namePage(grid, pane);
  const inLanguage = { gridLanguage: language, gridTexts: catalogue.grid, dates: datesInWords };
  const options = {
    functions: [...functions.values()],
    namespace: functionNamespace,
    firstSheet: catalogue.sheets.scratch,
    help: listedFunctions,
    ...inLanguage,
  };
  const desk = openDesk(options, grid, 'cucurbit-functions');
  await showPlans(pane, desk, filesWhenAsked, paneTools, catalogue.pane.keys);
  listenForKeys(pane, desk);
}

void open(document.getElementById('grid') as HTMLElement, document.getElementById('pane') as HTMLElement);
