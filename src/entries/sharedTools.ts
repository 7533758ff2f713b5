/** What every pane is handed, whatever the host. What runs the worksheet functions themselves comes from elsewhere. */
import { nearestNames } from '../calc/crops/nearestNames';
import { convertTyped } from '../calc/units/convertTyped';
import type { Unit } from '../calc/units/units';
import { calendarTasks } from '../functions/calendarTasks';
import { answers } from '../functions/answers';
import { speak } from './keptLanguage';
import { calendarWhenAsked } from './calendarWhenAsked';
import { guideWhenAsked } from './guideWhenAsked';
import { picturesWhenAsked } from './picturesWhenAsked';
import type { PaneTools } from '../taskpane/paneTools';
import { weatherTools } from './weatherTools';

export const sharedTools: Omit<PaneTools, 'homeworkProblems' | 'readWorking' | 'refusalOf'> = {
  ...answers,
  ...guideWhenAsked,
  ...picturesWhenAsked,
  ...weatherTools,
  calendarTasks,
  calendarFile: calendarWhenAsked,
  nearestNames,
  speak,
  convert: (value, converts, to) => convertTyped(value, converts as Unit, to),
};
