import { judgeAnswer } from '../calc/check/judgeAnswer';
import { define } from './define';
import { answer as answerOf, optionalNumber, passedOn, text } from './parameters';
import { sayJudgement } from './sayJudgement';
import { toCell, toCells } from './toCell';
import { workingRows } from './workingRows';

export const verdict = define({
  id: 'CHECK.ANSWER',
  parameters: [answerOf('answer'), answerOf('correct'), optionalNumber('tolerance')],
  result: 'plain',
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

export const working = define({
  id: 'CHECK.WORKING',
  parameters: [
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
  ],
  result: 'plain',
  calculate: ([name, ...args]) => workingRows(name, args),
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
