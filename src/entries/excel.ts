/** The pane in Excel. The page loads the worksheet functions beside it. */
import './chooseLanguage';
import { openExcelWorkbook } from '../hosts/excel/openExcelWorkbook';
import { reachExcel } from '../hosts/excel/reachExcel';
import { mountPane } from '../taskpane/mountPane';
import { offerPutBack } from '../taskpane/offerPutBack';
import { showOpening } from '../taskpane/openingNotice';
import { functionNamespace } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import { language } from '../texts/language';
import { functionsOfPage } from './functionsOfPage';
import { sharedTools } from './sharedTools';
import '../taskpane/pane.css';
import './excel.css';

async function open(root: HTMLElement, library: HTMLElement): Promise<void> {
  const notice = showOpening(root, () => location.reload());
  const reached = await reachExcel(library, notice.slow);
  if (typeof reached === 'string') return notice.failed(reached);
  const workbook = openExcelWorkbook({ ...reached, namespace: functionNamespace });
  await offerPutBack(root, workbook);
  await mountPane(root, workbook, { ...sharedTools, ...functionsOfPage });
}

document.documentElement.lang = language;
document.title = catalogue.pane.title;
void open(document.getElementById('pane') as HTMLElement, document.getElementById('office') as HTMLElement);
