/** What is said of an answer to a call: right, the slip that was likely made, or how far off it is. */
import { findSlips, type WrongFigure } from '../calc/check/findSlips';
import { judgeAnswer, type Judgement } from '../calc/check/judgeAnswer';
import { likelySlip } from '../calc/check/likelySlip';
import type { Given, Slip } from '../calc/check/slip';
import { slipsOfFunctions } from '../calc/check/slipsOfFunctions';
import { CalcError, refuse } from '../calc/errors';
import { unitSystems, type UnitSystem } from '../calc/units/units';
import type { Quantity, Recorder } from '../calc/working';
import { datesInWords } from '../texts/datesInWords';
import { slips } from '../texts/slips';
import { fill } from '../texts/fill';
import { whyNotNumber } from '../workbook/parseNumber';
import { dayOfSerial, isoOfDay, namesMonth, serialOfDay } from '../workbook/serialDate';
import type { FunctionDefinition } from './define';
import { sayName } from './explain';
import { findFunction } from './findFunction';
import { mayBeDate, sayJudgement } from './sayJudgement';
import { sayNumber, sayUnit } from './wording';

const texts = slips;

/**
 * @param name of the function, as findFunction takes it
 * @param args of the call, as they come out of cells
 * @param record told of the steps of the call
 * @throws CalcError unknownFunction, listOfAnswers, tooLarge, and what the function itself refuses
 */
export function saySlip(answer: Quantity, name: string, args: readonly unknown[], record?: Recorder): string {
  const definition = findFunction(name);
  if (record !== undefined) definition.explain(args).entries.forEach(record);
  const values = definition.read(args);
  const right = answerOf(definition, values);
  const isDay = definition.result === 'day';
  const meant = isDay ? dayMeant(answer) : answer;
  const isDate = isDay && typeof meant === 'number' && mayBeDate(serialOfDay(meant));
  const judgement = judgeAnswer(meant, right, undefined);
  const said = isDate
    ? sayDaysOff(judgement)
    : sayJudgement(judgement, isDay && typeof right === 'number' ? serialOfDay(right) : right);
  if (judgement.verdict === 'right' || judgement.verdict === 'blank') return said;
  if (typeof right !== 'number') return said;
  if (typeof meant !== 'number') {
    if (!isDay) return texts.notRead[whyNotRead(meant)];
    const typed = String(meant);
    return /\d/.test(typed) || namesMonth(typed, datesInWords) ? texts.dateNotRead : texts.dateWanted;
  }

  const likely = likelySlip(meant, wrongFigures(definition, values, right));
  if (typeof likely !== 'string') return saySentence(likely, givenOf(definition, values));
  if (likely === 'none' && isDay) {
    if (!isDate) return texts.dateWanted;
    if (yearOf(meant) !== yearOf(right)) return fill(texts.otherYearToo, { judgement: said });
  }
  if (likely === 'none' && !isDay && mayBeDate(answer) && !mayBeDate(right)) {
    const isShare = slipsOfFunctions[definition.id]?.isShare === true;
    return isShare ? texts.shareWanted : fill(texts.numberWanted, { judgement: said });
  }
  return fill(texts[likely], { judgement: said });
}

/** A day stays a day number, as calc has it; an hour of it is of that day. */
function dayMeant(answer: Quantity): Quantity {
  const day = typeof answer === 'number' ? dayOfSerial(answer) : null;
  return day === null ? answer : Math.floor(day);
}

const yearOf = (day: number): string => isoOfDay(day).slice(0, 4);

/** Of a date for a date: a number that is too high or too low says nothing more. */
function sayDaysOff(judgement: Judgement): string {
  if (!('difference' in judgement)) return sayJudgement(judgement, '');
  const { verdict, difference } = judgement;
  return fill(verdict === 'tooHigh' ? texts.daysLate : texts.daysEarly, { difference });
}

/** What keeps an answer from being a number. */
function whyNotRead(answer: Quantity): keyof typeof texts.notRead {
  const typed = String(answer);
  if (/^[\d.]+\s*[/*+]\s*[\d.]+$/.test(typed)) return 'sum';
  return /^[+-]?\d[\d.]*\s*\p{L}[^\d]*$/u.test(typed) ? 'unitBehind' : whyNotNumber(typed, false);
}

/** What the slips known here give with a call: day numbers where its result is a day. */
export function wrongFigures(
  definition: FunctionDefinition,
  values: readonly unknown[],
  right: number,
): WrongFigure[] {
  const { id, parameters, result } = definition;
  const compute = (changed: Given): Quantity | null => {
    try {
      return answerOf(
        definition,
        parameters.map(({ name }) => changed[name]),
      );
    } catch (error) {
      if (error instanceof CalcError) return null;
      throw error;
    }
  };
  return findSlips({
    id,
    parameters,
    given: givenOf(definition, values),
    compute,
    isDay: result === 'day',
    right,
  });
}

const givenOf = ({ parameters }: FunctionDefinition, values: readonly unknown[]): Given =>
  Object.fromEntries(parameters.map(({ name }, i) => [name, values[i]]));

/** Of a row of results the first, which is the usual one. */
export function answerOf({ id, calculate }: FunctionDefinition, values: readonly unknown[]): Quantity {
  const result = calculate(values);
  if (Array.isArray(result) && result.length > 1) refuse({ code: 'listOfAnswers', id });
  const first = Array.isArray(result) ? result[0]?.[0] : result;
  if (first === undefined || (typeof first === 'number' && !Number.isFinite(first))) {
    return refuse({ code: 'tooLarge' });
  }
  return first;
}

function saySentence({ name, about = '', taken = '', value }: Slip, given: Given): string {
  const units = (given['units'] as UnitSystem | undefined) ?? unitSystems.us;
  const said = value ?? Number(given[about]);
  return fill(texts.sentences[name], {
    about: sayName(about),
    taken,
    other: sayName(taken),
    value: sayNumber(said),
    percent: sayNumber(said * 100),
    small: sayUnit(units.spacing, 2),
    large: sayUnit(units.length, 2),
    area: sayUnit(units.area, 2),
    land: sayUnit(units.land, 1),
    areaPerLand: sayNumber(units.areaPerLand),
  });
}
