/// <reference types="office-js" />

/** One change, all or nothing, though Excel carries out its requests one by one and each action by action. */
import { HostError, type Change, type Progress } from '../../workbook/port';
import { hostErrorOf } from './askExcel';
import { checkChange } from './checkChange';
import { countsFrom1904 } from './countsFrom1904';
import { journalSteps, stateSteps } from './journal';
import { addHidden } from './newSheetSteps';
import { planChange, type Plan, type PlanOptions } from './planChange';
import { namingSteps, pictureSteps } from './putPictures';
import { surveyWorkbook } from './surveyWorkbook';
import { endUnfinished, findUnfinished } from './unfinishedChange';
import { sendSteps } from './writeSteps';

/** @throws HostError; then nothing was changed, but after `cutOff` the workbook waits for `putBack` */
export async function applyChange(
  excel: typeof Excel,
  options: PlanOptions,
  change: Change,
  progress: Progress,
): Promise<void> {
  progress(0);
  if (!isEmpty(change)) await writeWhole(excel, await plan(excel, options, change), progress);
  progress(1);
}

function isEmpty({ newSheets, cells, tableRows, pictures, rules = [], marks, expect }: Change): boolean {
  return [newSheets, cells, tableRows, pictures, rules, marks, expect].every((part) => part.length === 0);
}

async function plan(excel: typeof Excel, options: PlanOptions, change: Change): Promise<Plan> {
  try {
    const survey = await surveyWorkbook(excel);
    const cutOff = await findUnfinished(excel, survey);
    if (cutOff !== null) throw new HostError({ code: 'cutOff', action: cutOff || change.title });
    if (await countsFrom1904(excel)) throw new HostError({ code: 'daysFrom1904' });
    return planChange(survey, change, await checkChange(excel, survey, options.lacks, change), options);
  } catch (cause) {
    throw hostErrorOf(cause, change.title);
  }
}

async function writeWhole(excel: typeof Excel, planned: Plan, progress: Progress): Promise<void> {
  const { journalAt, journal, staged, writing, finishing, tidying } = planned;
  const { title } = journal;
  let isFinishing = false;
  let sent = 0;
  const onSent = (steps: number): void => {
    sent += steps;
    progress(sent / (writing.length + 1));
  };
  try {
    await sendSteps(excel, title, [
      addHidden(journalAt, { kind: 'journal' }),
      ...journalSteps(journalAt, journal),
      ...planned.touching,
      ...stateSteps(journalAt, 'ready'),
    ]);
    await sendSteps(excel, title, writing, onSent);
    await sendSteps(excel, title, await pictureSteps(excel, planned.pictures));
    const naming = await namingSteps(
      excel,
      planned.pictures.map(({ picture, at, name }) => ({ at, name, becomes: picture.name })),
    );
    isFinishing = true;
    await sendSteps(excel, title, [...finishing, ...naming, ...tidying]);
  } catch (cause) {
    // Once the last request is on its way the sheets may be whole, and the names they had no sign of anything.
    const end = await endUnfinished(excel, isFinishing ? [] : [journalAt, ...staged]).catch(
      (reason: unknown) => {
        throw new HostError({ code: 'cutOff', action: title }, { cause: reason });
      },
    );
    // The last request may have gone through although its answer did not.
    const isWhole = end === 'finished' || (end === 'none' && isFinishing);
    if (!isWhole) throw hostErrorOf(cause, title);
  }
}
