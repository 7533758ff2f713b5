/** What a pane is handed to show the working of a cell: the real functions, and what functions.json says of them. */
import { functionTools } from '../../src/entries/functionTools';
import { paneTools } from '../../src/entries/paneTools';
import type { PaneTools } from '../../src/taskpane/paneTools';
import { readWorking } from '../../src/taskpane/readWorking';
import type { Area } from '../../src/workbook/port';
import { describeFunctions } from '../functions/describedFunctions';

/** @param onRead told of each cell that is read */
export async function workingTools(onRead: (at: Area) => void = () => undefined): Promise<PaneTools> {
  const described = await describeFunctions();
  return {
    ...paneTools,
    readWorking: (workbook, at) => {
      onRead(at);
      return readWorking(workbook, at, functionTools, described);
    },
  };
}
