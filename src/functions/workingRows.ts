/** The working of a call as rows of cells. */
import type { Recorder } from '../calc/working';
import { catalogue } from '../texts/catalogue';
import { checkNumberOfArguments, type Scalar } from './define';
import { explain, type WorkingLine } from './explain';
import { findFunction } from './findFunction';

const texts = catalogue.working;

/**
 * @param record told of the steps of the call as if they were its own
 * @throws CalcError unknownFunction, tooManyArguments; what the function itself refuses is the last row
 */
export function workingRows(name: string, args: readonly unknown[], record?: Recorder): Scalar[][] {
  const definition = findFunction(name);
  checkNumberOfArguments(definition, args);
  if (record !== undefined) definition.explain(args).entries.forEach(record);
  const lines = explain(definition, args);
  const isLookedUp = lines.every(({ kind }) => kind === 'source');
  return [...(isLookedUp ? [note(texts.remark, texts.noSteps)] : []), ...lines.map(rowOf)];
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
