/**
 * The working of one cell: its formula unfolded, and each call explained. A part of its own, because it is loaded when
 * it is first asked for.
 */
import type { CallWorking } from '../functions/explain';
import { withLaterHomework } from '../templates/homework';
import { knownTemplates, functionNamespace } from '../templates/sheets';
import { inUnits } from './inUnits';
import { readProblem, type Problem } from './readProblem';
import { findSpillOrigin } from '../workbook/findSpillOrigin';
import type { FunctionHelp } from '../workbook/functionHelp';
import { isCellError, type Area, type LiveWorkbook, type ReadValue } from '../workbook/port';
import {
  unfoldFormula,
  type Unfolded,
  type UnfoldedArgument,
  type UnfoldedCall,
  type UnfoldOptions,
} from '../workbook/unfoldFormula';

/** The worksheet functions, by id; null for an id that there is not. */
export interface FunctionTools {
  readonly run: UnfoldOptions['run'];
  readonly explain: (id: string, args: readonly unknown[]) => CallWorking | null;
  /** What was put in, in words. */
  readonly sayInputs: (id: string, args: readonly unknown[]) => readonly string[];
}

export interface InputWorking {
  /** In words, with the unit. */
  readonly description: string;
  /** null where it cannot be worked out here. */
  readonly value: string | null;
  /** null when it is left out. */
  readonly argument: UnfoldedArgument | null;
}

type Effect = CallWorking['effects'][number];
export interface ExplainedEffect extends Effect {
  /** What the formula around the call comes to with each change; absent where it hands on what the call gives, or cannot be told. */
  readonly wholes?: readonly ReadValue[];
}

export interface ExplainedCall {
  readonly id: string;
  readonly isAsked: boolean | null;
  /** What the function gives; null where there is none of that id. */
  readonly sentence: string | null;
  readonly inputs: readonly InputWorking[];
  /** null where an input cannot be worked out here. */
  readonly working: (Omit<CallWorking, 'effects'> & { readonly effects: readonly ExplainedEffect[] }) | null;
}

export interface Working {
  /** The cell; where the number of a problem stands. */
  readonly at: Area;
  /** Of a homework, when the cell stands in its line: the working is that of its answer then. */
  readonly problem: Pick<Problem, 'position' | 'text'> | null;
  /** Whether somebody may be looking for the answer yet, and should be asked first. */
  readonly tellsAnswer: boolean;
  readonly shown: ReadValue;
  /** What is worked out here when the cell shows something else; undefined when they agree. */
  readonly another: ReadValue | undefined;
  readonly calls: readonly ExplainedCall[];
  readonly around: Unfolded['around'];
  readonly notFollowed: Unfolded['notFollowed'];
}

/** null for a cell without a function of ours; `filledBy` is the cell whose formula fills it with a part of a list. */
export type FoundWorking = Working | { readonly filledBy: Area } | 'unreadable' | null;

/** @throws HostError */
export type ReadWorking = (workbook: LiveWorkbook, at: Area) => Promise<FoundWorking | 'noFunctions'>;

/** They are told the right answer, or the call that gives it. */
const checking = ['CHECK.ANSWER', 'CHECK.SLIP'];

export async function readWorking(
  workbook: LiveWorkbook,
  at: Area,
  functions: FunctionTools,
  described: readonly FunctionHelp[],
): Promise<FoundWorking> {
  const sheets = await workbook.sheets();
  const templates = withLaterHomework(knownTemplates, sheets);
  const problem = await readProblem(workbook, at, sheets, templates);
  if (problem !== null) {
    const calls = [withOneAnswer(explainCall(problem.call, functions, described))];
    const nothingElse = { shown: null, another: undefined, around: [], notFollowed: [] };
    return { at: problem.at, problem, tellsAnswer: true, calls, ...nothingElse };
  }
  const tables = templates.flatMap((template) => template.tables.map(({ name }) => name));
  const options = { namespace: functionNamespace, tables, run: functions.run };
  const unfolded = await unfoldFormula(workbook, at, options);
  if (unfolded === 'unreadable') return unfolded;
  if (unfolded === null) {
    const filledBy = await findSpillOrigin(workbook, at, options);
    return filledBy && { filledBy };
  }
  const { shown, result, calls, around, notFollowed } = unfolded;
  const explained = calls.map((call) => explainCall(call, functions, described));
  const another = result === undefined || isSame(shown, result) ? undefined : result;
  const tellsAnswer = calls.some(({ id }) => checking.includes(id));
  return { at, problem: null, tellsAnswer, shown, another, calls: explained, around, notFollowed };
}

function explainCall(
  { id, isAsked, args, values, wholeWith }: Problem['call'] & Partial<UnfoldedCall>,
  { explain, sayInputs }: FunctionTools,
  described: readonly FunctionHelp[],
): ExplainedCall {
  const text = described.find((one) => one.id === id);
  const given = values.map((one) => one?.value);
  const said = sayInputs(id, given);
  const parameters = text?.parameters ?? [];
  const system = systemOf(given[parameters.findIndex(({ name }) => name === 'units')]);
  const inputs = parameters.map(({ name, description }, index) => ({
    description: system === null || name === 'units' ? description : inUnits(description, system),
    value: values[index] === null ? null : (said[index] ?? ''),
    argument: args[index] ?? null,
  }));
  const working = values.includes(null) ? null : explain(id, given);
  const effects = working?.effects.map((effect) => ({ ...effect, ...wholesOf(effect, wholeWith) })) ?? [];
  return {
    id,
    isAsked,
    sentence: text?.description ?? null,
    inputs,
    working: working && { ...working, effects },
  };
}

function wholesOf(
  { place, changes }: Effect,
  wholeWith: UnfoldedCall['wholeWith'] | undefined,
): Pick<ExplainedEffect, 'wholes'> {
  if (wholeWith === undefined) return {};
  const wholes = changes.map(({ outcome }) => wholeWith(place, outcome));
  const known = wholes.filter((one) => one !== undefined);
  const isHandedOn = changes.every(({ outcome }, i) => isSame(wholes[i] ?? null, oneOf(outcome)));
  return known.length < wholes.length || isHandedOn ? {} : { wholes: known };
}

/** null for a list. */
function oneOf(outcome: Effect['changes'][number]['outcome']): ReadValue {
  if ('error' in outcome) return outcome;
  const [first = null, ...others] = [outcome.value].flat(2);
  return others.length === 0 ? first : null;
}

/** A problem asks for one value. */
function withOneAnswer(call: ExplainedCall): ExplainedCall {
  const { working } = call;
  if (working === null || working.firstOfRow === null) return call;
  return { ...call, working: { ...working, result: working.firstOfRow } };
}

/** Left out or blank it is "us"; null for what cannot be told. Without such a parameter units are never two. */
function systemOf(given: unknown): 'us' | 'metric' | null {
  const [first] = [given].flat(2) as unknown[];
  if (first === undefined || first === null || first === 0) return 'us';
  const name = typeof first === 'string' ? first.trim().toLowerCase() : null;
  return name === '' || name === 'us' ? 'us' : name === 'metric' ? 'metric' : null;
}

/** A formula that points at an empty cell shows 0; hosts differ in the last digits and on what an error says. */
function isSame(shown: ReadValue, result: ReadValue): boolean {
  if (isCellError(shown) || isCellError(result)) {
    return isCellError(shown) && isCellError(result) && shown.error === result.error;
  }
  const other = result ?? 0;
  if (typeof shown !== 'number' || typeof other !== 'number') return shown === other;
  return Math.abs(shown - other) <= 1e-9 * Math.max(Math.abs(shown), Math.abs(other));
}
