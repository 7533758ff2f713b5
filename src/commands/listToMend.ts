/** What wants mending in a list, as sentences that name the line, and the column or the row. */
import {
  listOfPlots,
  sayListProblems,
  type ListKind,
  type ListProblem,
  type NearestNames,
} from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Finding } from '../workbook/findFindings';

const words = catalogue.commands.plan;
const remarks = catalogue.sheets.plots.remarks;

/** A finding in the filled table, and the line that its row came from. */
export interface FindingOfLine extends Finding {
  readonly line: number;
}

/** In the order of the lines; of one line, what was read before what was computed. */
export function listToMend(
  file: string,
  problems: readonly ListProblem[],
  errors: readonly FindingOfLine[],
  nearestNames: NearestNames,
  kind: ListKind = listOfPlots,
): readonly string[] {
  const own = errors.filter((error) => !problems.some((problem) => followsFrom(error, problem)));
  return [
    ...sayListProblems(problems, nearestNames, kind),
    ...own.map((error) => ({ line: error.line, problem: sayPlace(error, kind) })),
  ]
    .sort((a, b) => a.line - b.line)
    .map(({ line, problem }) => fill(words.line, { file, line, problem }));
}

/** Remarks without what `listToMend` says better, by the line. */
export function listRemarks(file: string, findings: readonly FindingOfLine[]): readonly string[] {
  const said = [remarks.cropUnknown, remarks.sameName, remarks.layoutUnknown, remarks.startUnknown];
  return findings.flatMap((finding) => {
    const text = said.reduce((rest, sentence) => rest.replace(sentence, ''), finding.text).trim();
    const problem = sayPlace({ ...finding, text });
    return text === '' ? [] : [fill(words.line, { file, line: finding.line, problem })];
  });
}

/** Whether the error only passes on, or says again, what is wrong with a cell of its line. */
function followsFrom({ line, header, text }: FindingOfLine, problem: ListProblem): boolean {
  if (!('given' in problem) || problem.code === 'sameName' || problem.line !== line) return false;
  return problem.code === 'notAChoice' || text.startsWith('#') || header === problem.header;
}

/** Which row and column, and what is said of it. */
export function sayPlace({ row, header, text }: Finding, { noName }: ListKind = listOfPlots): string {
  return fill(words.finding, { plot: row === '' ? noName : row, header, text });
}
