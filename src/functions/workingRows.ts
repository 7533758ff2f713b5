/** The working of a call as rows of cells. */
import { catalogue } from '../texts/catalogue';
import { checkNumberOfArguments, type Scalar } from './define';
import { explain, type WorkingLine } from './explain';
import { findFunction } from './findFunction';

const texts = catalogue.working;

/** @throws CalcError unknownFunction, tooManyArguments; what the function itself refuses is the last row */
export function workingRows(name: string, args: readonly unknown[]): Scalar[][] {
  const definition = findFunction(name);
  checkNumberOfArguments(definition, args);
  const lines = explain(definition, args);
  return lines.length > 0 ? lines.map(rowOf) : [note(texts.remark, texts.noSteps)];
}

function rowOf({ kind, title, formula, numbersPutIn, result, unit, rounding }: WorkingLine): Scalar[] {
  switch (kind) {
    case 'step':
      return [title, cellOf(result), unit, formula, numbersPutIn, rounding];
    case 'assumption':
      return [title, cellOf(result), unit, '', '', formula];
    case 'remark':
    case 'source':
      return note(texts[kind], title);
  }
}

/** A sentence stands last, where it can run on over empty cells. */
function note(kind: string, sentence: string): Scalar[] {
  return [kind, '', '', '', '', sentence];
}

/** What is said as a number is one again, so that a sheet can go on with it. */
function cellOf(said: string): Scalar {
  return said !== '' && Number.isFinite(Number(said)) ? Number(said) : said;
}
