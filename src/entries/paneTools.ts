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
import { weatherTools } from './weatherTools';
import { functionsOfPage, workingWhenAsked } from './workingWhenAsked';

export const paneTools: PaneTools = {
  ...answers,
  ...guideWhenAsked,
  ...picturesWhenAsked,
  ...homeworkWhenAsked,
  ...weatherTools,
  calendarTasks,
  calendarFile: calendarWhenAsked,
  nearestNames,
  readWorking: workingWhenAsked(functionsOfPage),
  convert: (value, converts, to) => convertTyped(value, converts as Unit, to),
};
