import { judgeAnswer } from '../calc/check/judgeAnswer';
import { define } from './define';
import { answer as answerOf, optionalNumber, passedOn, text, typedAnswer } from './parameters';
import { sayJudgement } from './sayJudgement';
import { saySlip } from './saySlip';
import { toCell, toCells } from './toCell';
import { workingRows } from './workingRows';

export const verdict = define({
  id: 'CHECK.ANSWER',
  parameters: [typedAnswer('answer'), answerOf('correct'), optionalNumber('tolerance')],
  result: 'plain',
  grounds: ['judgement'],
  calculate: ([answer, correct, tolerance], record) =>
    sayJudgement(judgeAnswer(answer, correct, tolerance, record), correct),
});

/**
 * Whether an answer is right, or how far off it is and which way.
 * @customfunction CHECK.ANSWER
 * @param answer Answer to check: a number, a date or a word
 * @param correct The right one, such as a formula with one of these functions
 * @param [tolerance] Share it may be off, 0 to 1 (default: whole numbers and dates exact, others 0.5%)
 * @returns "right", or how far off and which way
 */
export function checkAnswer(answer: any, correct: any, tolerance?: any): any {
  return toCell(verdict, [answer, correct, tolerance]);
}

/** A call of another function: its name, and the arguments of the one that takes most. */
const call = [
  text('function_name'),
  passedOn('argument1'),
  passedOn('argument2'),
  passedOn('argument3'),
  passedOn('argument4'),
  passedOn('argument5'),
  passedOn('argument6'),
  passedOn('argument7'),
  passedOn('argument8'),
  passedOn('argument9'),
] as const;

export const working = define({
  id: 'CHECK.WORKING',
  parameters: call,
  result: 'plain',
  calculate: ([name, ...args], record) => workingRows(name, args, record),
});

/**
 * Steps of a calculation, one a row: quantity, value, unit, formula, numbers put in, rounding or source.
 * @customfunction CHECK.WORKING
 * @param function_name Name of the function, such as "SEED.NEEDED"
 * @param [argument1] First argument of that function
 * @param [argument2] Second argument
 * @param [argument3] Third argument
 * @param [argument4] Fourth argument
 * @param [argument5] Fifth argument
 * @param [argument6] Sixth argument
 * @param [argument7] Seventh argument
 * @param [argument8] Eighth argument
 * @param [argument9] Ninth argument
 * @returns Rows of quantity, value, unit, formula, numbers put in, and rounding, source or note
 */
export function checkWorking(
  function_name: any,
  argument1?: any[][],
  argument2?: any[][],
  argument3?: any[][],
  argument4?: any[][],
  argument5?: any[][],
  argument6?: any[][],
  argument7?: any[][],
  argument8?: any[][],
  argument9?: any[][],
): any[][] {
  // Matrices because some functions take ranges: the generator reads the types; a single cell comes as 1x1.
  return toCells(working, [
    function_name,
    argument1,
    argument2,
    argument3,
    argument4,
    argument5,
    argument6,
    argument7,
    argument8,
    argument9,
  ]);
}

export const slip = define({
  id: 'CHECK.SLIP',
  parameters: [typedAnswer('answer'), ...call],
  result: 'plain',
  calculate: ([answer, name, ...args], record) => saySlip(answer, name, args, record),
});

/**
 * "right", or the slip that gives just that wrong answer, in words; else how far off the answer is.
 * @customfunction CHECK.SLIP
 * @param answer Answer to check: a number, a date or a word; of a row of results the first
 * @param function_name Name of the function that gives the right one, such as "SEED.NEEDED"
 * @param [argument1] First argument of that function
 * @param [argument2] Second argument
 * @param [argument3] Third argument
 * @param [argument4] Fourth argument
 * @param [argument5] Fifth argument
 * @param [argument6] Sixth argument
 * @param [argument7] Seventh argument
 * @param [argument8] Eighth argument
 * @param [argument9] Ninth argument
 * @returns "right", or a sentence
 */
export function checkSlip(
  answer: any,
  function_name: any,
  argument1?: any[][],
  argument2?: any[][],
  argument3?: any[][],
  argument4?: any[][],
  argument5?: any[][],
  argument6?: any[][],
  argument7?: any[][],
  argument8?: any[][],
  argument9?: any[][],
): any {
  return toCell(slip, [
    answer,
    function_name,
    argument1,
    argument2,
    argument3,
    argument4,
    argument5,
    argument6,
    argument7,
    argument8,
    argument9,
  ]);
}
