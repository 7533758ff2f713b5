/**
 * A worksheet function declared as data: its id, its parameters, the calculation it calls. One runner turns the
 * shapes of cells into arguments, refusals into cell errors and day numbers into serials, for all of them.
 */
import { CalcError, notAvailableCodes, refuse, type Problem } from '../calc/errors';
import type { Entry, Recorder } from '../calc/working';
import type { SourceId } from '../reference/sources';
import type { catalogue } from '../texts/catalogue';
import { dayOfSerial, serialOfDay } from '../workbook/serialDate';
import { sayProblem } from './wording';

export type Scalar = number | string | boolean;
export interface CellFault {
  readonly error: '#N/A' | '#VALUE!' | '#NUM!';
  readonly message: string;
}
/** What stands in the cell. `pattern` is the number format that belongs to the value. */
export interface CellOutcome {
  readonly value: Scalar | Scalar[][];
  readonly pattern?: string;
}

/** One parameter: its name as in functions.json, and how its cell is read. @throws CalcError */
export interface Parameter<T> {
  readonly name: string;
  readonly optional: boolean;
  /** The words that it takes, where it takes no others. */
  readonly choices?: readonly string[];
  /** What its one cell holds; absent for words and ranges. */
  readonly holds?: 'number' | 'date';
  /** What the cells of its range hold; absent for one cell. A day of a record only says which day a reading is of. */
  readonly holdsMany?: 'number' | 'date' | 'dayOfRecord' | 'word';
  read(raw: unknown): T;
}

type ValuesOf<P extends readonly Parameter<unknown>[]> = {
  [K in keyof P]: P[K] extends Parameter<infer T> ? T : never;
};

/** A 'day' result is a whole day number and becomes a serial shown as a date. */
type ResultKind = 'plain' | 'day';

interface Specification<P extends readonly Parameter<unknown>[]> {
  readonly id: string;
  readonly parameters: readonly [...P];
  readonly result: ResultKind;
  /** Columns of a list, from 0, whose numbers are serials although the list is 'plain'. */
  readonly dateColumns?: readonly number[];
  /** What an answer stands on where its calculation notes no publication; what its defaults stand on, when left out. */
  readonly grounds?: readonly (SourceId | keyof typeof catalogue.citations.grounds)[];
  calculate(values: ValuesOf<P>, record?: Recorder): Scalar | Scalar[][];
}

export interface FunctionDefinition {
  readonly id: string;
  readonly parameters: readonly Parameter<unknown>[];
  readonly result: ResultKind;
  readonly dateColumns: readonly number[];
  run(args: readonly unknown[]): CellOutcome | CellFault;
  /** The arguments as the calculation takes them. @throws CalcError */
  read(args: readonly unknown[]): readonly unknown[];
  /** The bare calculation on arguments that were read: day numbers where the result is days. @throws CalcError */
  calculate(values: readonly unknown[]): Scalar | Scalar[][];
  /** Runs with the working recorded: of an answer a source at least, of a refusal the steps up to it. */
  explain(args: readonly unknown[]): {
    readonly outcome: CellOutcome | CellFault;
    readonly entries: readonly Entry[];
  };
}

export function define<P extends readonly Parameter<unknown>[]>(
  specification: Specification<P>,
): FunctionDefinition {
  const { id, parameters, result, dateColumns = [], grounds, calculate } = specification;
  function read(args: readonly unknown[]): ValuesOf<P> {
    checkNumberOfArguments({ id, parameters }, args);
    return parameters.map((parameter, i) => parameter.read(args[i])) as ValuesOf<P>;
  }
  function compute(args: readonly unknown[], record?: Recorder): CellOutcome | CellFault {
    try {
      return toOutcome(calculate(read(args), record), result);
    } catch (error) {
      if (error instanceof CalcError) return toFault(error.problem);
      throw error;
    }
  }
  return {
    id,
    parameters,
    result,
    dateColumns,
    read,
    calculate: (values) => calculate(values as ValuesOf<P>),
    run: (args) => compute(args),
    explain(args) {
      const entries: Entry[] = [];
      const outcome = compute(args, (entry) => entries.push(entry));
      if ('error' in outcome || entries.some((entry) => 'source' in entry)) return { outcome, entries };
      const stoodOn: readonly string[] =
        grounds ?? entries.flatMap((entry) => ('assumed' in entry ? entry.ground : []));
      return { outcome, entries: [...entries, ...stoodOn.map((source) => ({ source }))] };
    },
  };
}

/** @throws CalcError tooManyArguments: a spreadsheet program may hand over more than the function has */
export function checkNumberOfArguments(
  { id, parameters }: Pick<FunctionDefinition, 'id' | 'parameters'>,
  args: readonly unknown[],
): void {
  const most = parameters.length;
  if (args.slice(most).some((given) => given !== undefined)) refuse({ code: 'tooManyArguments', id, most });
}

function toOutcome(value: Scalar | Scalar[][], kind: ResultKind): CellOutcome | CellFault {
  const flat = Array.isArray(value) ? value.flat() : [value];
  if (flat.some((one) => typeof one === 'number' && !Number.isFinite(one))) {
    return toFault({ code: 'tooLarge' });
  }
  if (kind === 'plain') return { value };
  const serial = (one: Scalar): Scalar => (typeof one === 'number' ? serialOfDay(one) : one);
  /** A day that the spreadsheet has no date for is #NUM!, as in its own functions. */
  const isDated = (one: Scalar): boolean => typeof one !== 'number' || dayOfSerial(serialOfDay(one)) !== null;
  if (!flat.every(isDated)) return toFault({ code: 'tooLarge' });
  return {
    value: Array.isArray(value) ? value.map((row) => row.map(serial)) : serial(value),
    pattern: 'yyyy-mm-dd',
  };
}

function toFault(problem: Problem): CellFault {
  const error =
    problem.code === 'tooLarge' ? '#NUM!' : notAvailableCodes.has(problem.code) ? '#N/A' : '#VALUE!';
  return { error, message: sayProblem(problem) };
}
