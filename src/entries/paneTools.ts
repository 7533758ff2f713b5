/** What every pane is handed, whatever the host. */
import { nearestNames } from '../calc/crops/nearestNames';
import { convertTyped } from '../calc/units/convertTyped';
import type { Unit } from '../calc/units/units';
import { calendarTasks } from '../functions/calendarTasks';
import { answers } from '../functions/answers';
import { calendarWhenAsked } from './calendarWhenAsked';
import { guideWhenAsked } from './guideWhenAsked';
import { homeworkWhenAsked } from './homeworkWhenAsked';
import { picturesWhenAsked } from './picturesWhenAsked';
import type { PaneTools } from '../taskpane/paneTools';
import type { FunctionTools } from '../taskpane/readWorking';
import { weatherTools } from './weatherTools';
import { workingWhenAsked } from './workingWhenAsked';

/** Excel's page: the script of the worksheet functions leaves them there, see `library` in webpack.config.js. */
interface PageOfFunctions {
  readonly cucurbitFunctions?: { readonly functionTools: FunctionTools };
}

export const paneTools: PaneTools = {
  ...answers,
  ...guideWhenAsked,
  ...picturesWhenAsked,
  ...homeworkWhenAsked,
  ...weatherTools,
  calendarTasks,
  calendarFile: calendarWhenAsked,
  nearestNames,
  readWorking: workingWhenAsked(() => (globalThis as PageOfFunctions).cucurbitFunctions?.functionTools),
  convert: (value, converts, to) => convertTyped(value, converts as Unit, to),
};
