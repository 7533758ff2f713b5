import type { FunctionTools, ReadWorking } from '../taskpane/readWorking';
import { guideWhenAsked } from './guideWhenAsked';

/**
 * Following formulas is a part of the page that is loaded when it is first asked for.
 *
 * @param functionsThere the worksheet functions; undefined while the page has not loaded them
 */
export const workingWhenAsked =
  (functionsThere: () => Promise<FunctionTools | undefined>): ReadWorking =>
  async (workbook, at) => {
    const tools = await functionsThere();
    if (tools === undefined) return 'noFunctions';
    const [{ readWorking }, described] = await Promise.all([
      import('../taskpane/readWorking'),
      guideWhenAsked.functionList(),
    ]);
    return readWorking(workbook, at, tools, described);
  };
