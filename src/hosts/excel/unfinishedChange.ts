/// <reference types="office-js" />

/** Ends a change that was cut off: takes it back, or tidies up where it was whole already. */
import { HostError, type Area } from '../../workbook/port';
import { enterStanding } from './cellContents';
import { readJournal, type Journal } from './journal';
import { markSheet, removeSheet, tidyingSteps } from './planChange';
import { findPictures, namingSteps, removePicture, type PlacedPicture } from './putPictures';
import { rangeOf } from './readCells';
import { findRules, removeRule } from './ruleSteps';
import { partName } from './sheetPart';
import { isSameName, surveyWorkbook, type SheetSurvey, type Survey } from './surveyWorkbook';
import { cellSteps, sendSteps, step, type WriteStep } from './writeSteps';

/**
 * What the change that was cut off is called, "" when it had hardly begun; null when there is none.
 * @throws HostError
 */
export async function findUnfinished(excel: typeof Excel, survey: Survey): Promise<string | null> {
  const found = journalSheet(survey);
  if (found === undefined) return null;
  const { journal } = await readJournal(excel, found.used);
  return journal?.title ?? '';
}

/**
 * Can be cut off itself, and done again.
 * @param own names of sheets that this run has added, whether or not they bear their mark yet
 * @returns 'none' when there was nothing to end
 * @throws HostError
 */
export async function endUnfinished(
  excel: typeof Excel,
  own: readonly string[] = [],
): Promise<'none' | 'undone' | 'finished'> {
  const survey = await surveyWorkbook(excel);
  const found = journalSheet(survey);
  const { state, journal } =
    found === undefined
      ? ({ state: 'unready', journal: null } as const)
      : await readJournal(excel, found.used);
  const ofPart = (kind: 'made' | 'touched'): SheetSurvey[] =>
    survey.sheets.filter(({ part }) => part?.kind === kind);
  const touched = ofPart('touched').map(({ name }) => name);
  if (found !== undefined && state === 'done') {
    const lists = journal?.lists ?? null;
    const made = ofPart('made').map(({ name }) => name);
    const steps = tidyingSteps(
      made.filter((name) => name !== lists),
      made.find((name) => name === lists) ?? null,
      touched,
      found.name,
    );
    const naming = journal === null ? [] : await namingSteps(excel, placedPictures(survey, journal));
    await sendSteps(excel, journal?.title ?? '', [...naming, ...steps]);
    return 'finished';
  }
  const isOwn = ({ name }: SheetSurvey): boolean => own.some((each) => isSameName(each, name));
  const made = survey.sheets.filter(
    (sheet) => sheet.part?.kind === 'made' || (isOwn(sheet) && sheet !== found),
  );
  if (found === undefined && made.length === 0) return 'none';
  await sendSteps(excel, journal?.title ?? '', [
    ...(journal === null ? [] : await puttingBack(excel, survey, journal)),
    ...namesOf(survey, made, journal?.deadNames ?? []),
    ...made.map(({ name }) => removeSheet(name)),
    ...touched.map((sheet) =>
      step(2, ({ workbook }) => workbook.worksheets.getItem(sheet).names.getItem(partName).delete()),
    ),
    ...(found === undefined ? [] : [removeSheet(found.name)]),
  ]);
  return 'undone';
}

function journalSheet(survey: Survey): SheetSurvey | undefined {
  return survey.sheets.find(({ part }) => part?.kind === 'journal');
}

/** What stood in the sheets that were there. A sheet, table or picture that is gone meanwhile is left alone. */
async function puttingBack(excel: typeof Excel, survey: Survey, journal: Journal): Promise<WriteStep[]> {
  const sheetOf = (number: number): SheetSurvey | undefined => touchedSheet(survey, number);
  const locked = journal.cells.map(({ sheet }) => sheetOf(sheet)).find((sheet) => sheet?.isLocked === true);
  if (locked !== undefined) throw new HostError({ code: 'sheetLocked', sheet: locked.name });
  const tables = journal.tables.flatMap(({ table: name, added, ...span }) => {
    const table = survey.tables.find((each) => isSameName(each.name, name));
    if (table === undefined) return [];
    const before: Area = { sheet: table.sheet, ...span };
    const free: Area = { ...before, row: span.row + span.rows, rows: added };
    return [
      step(4, (context) => {
        context.workbook.tables.getItem(name).resize(rangeOf(context, before));
        // Not the formats: what is typed there next is a text where it was to be one.
        rangeOf(context, free).clear('Contents');
      }),
    ];
  });
  const cells = journal.cells.flatMap(({ sheet, row, column, contents }) => {
    const at = sheetOf(sheet)?.name;
    if (at === undefined) return [];
    const area: Area = { sheet: at, row, column, rows: contents.length, columns: contents[0]?.length ?? 0 };
    return cellSteps(
      area,
      contents.map((line) => line.map(enterStanding)),
    );
  });
  const marks = journal.marks.flatMap(({ sheet, mark }) => {
    const at = sheetOf(sheet)?.name;
    return at === undefined ? [] : [markSheet(at, mark)];
  });
  const rules = await takingOffRules(excel, survey, journal);
  const pictures = await findPictures(excel, placedPictures(survey, journal));
  const takingOff = pictures.map(({ at, name }) => removePicture(at, name));
  return [...tables, ...cells, ...rules, ...marks, ...takingOff];
}

async function takingOffRules(excel: typeof Excel, survey: Survey, journal: Journal): Promise<WriteStep[]> {
  const places = journal.rules.flatMap(({ sheet, ...rule }) => {
    const at = touchedSheet(survey, sheet)?.name;
    return at === undefined ? [] : [{ ...rule, sheet: at }];
  });
  const found = await findRules(excel, places);
  return places.flatMap((place, i) => (found[i] ?? []).map((id) => removeRule(place, id)));
}

function touchedSheet({ sheets }: Survey, number: number): SheetSurvey | undefined {
  return sheets.find(({ part }) => part?.kind === 'touched' && part.number === number);
}

function placedPictures(survey: Survey, { pictures }: Journal): PlacedPicture[] {
  return pictures.flatMap(({ sheet, name, becomes }) => {
    const at = touchedSheet(survey, sheet)?.name;
    return at === undefined ? [] : [{ at, name, becomes }];
  });
}

/** Named cells go before their sheet does, but for names that were there: those are dead again when it has gone. */
function namesOf(survey: Survey, made: readonly SheetSurvey[], deadNames: readonly string[]): WriteStep[] {
  return survey.names
    .filter(({ name, area }) => made.some((sheet) => sheet.name === area?.sheet) && !deadNames.includes(name))
    .map(({ name }) => step(2, ({ workbook }) => workbook.names.getItem(name).delete()));
}
