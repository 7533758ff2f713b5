/** A refusal of the spreadsheet program as advice. */
import { HostError, type HostProblem } from '../workbook/port';
import { cellAddress } from '../workbook/cellAddress';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';

const { pane } = catalogue;

export function problemSentence(cause: unknown): string {
  const sentence = cause instanceof HostError ? hostSentence(cause.problem) : pane.problems.unforeseen;
  const detail = detailOf(cause);
  return detail === '' ? sentence : `${sentence} ${fill(pane.detail, { detail })}`;
}

/** The same for an action that writes: a host writes all or nothing. */
export function failureSentence(cause: unknown): string {
  return `${pane.nothingChanged} ${problemSentence(cause)}`;
}

function hostSentence(problem: HostProblem): string {
  const cell = problem.code === 'cellsInTheWay' ? cellAddress(problem.row, problem.column) : '';
  return fill(pane.problems[problem.code], { ...problem, cell });
}

/** For whoever is asked for help: only where our own sentence does not say it all, and they would not have the file. */
function detailOf(cause: unknown): string {
  if (cause instanceof HostError && cause.problem.code.startsWith('file')) return '';
  const origin = cause instanceof HostError ? cause.cause : cause;
  return origin instanceof Error ? origin.message : '';
}
