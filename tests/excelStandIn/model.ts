import type { Book, Sheet } from './book';
import type { Results } from './calculateBook';
import { refuse } from './excelError';
import { parseAddress, type Span } from './span';

/** How the stand-in describes an object of Excel to the part that answers requests. */
export interface Model {
  /** As the published types name it. */
  readonly className: string;
  /** Properties by their name in requests. */
  readonly get?: Readonly<Record<string, () => unknown>>;
  readonly put?: Readonly<Record<string, (value: unknown) => void>>;
  /** null is the null object of the …OrNullObject methods. */
  readonly call?: Readonly<Record<string, (...args: readonly unknown[]) => unknown>>;
  readonly child?: Readonly<Record<string, () => Model>>;
  /** Of a collection: its members, and one of them by its key. */
  readonly items?: () => readonly Model[];
  readonly item?: (key: unknown) => Model;
  /** Of a range: where it is, for methods that take a range. */
  readonly range?: Place;
}

export interface Place {
  readonly sheet: Sheet;
  readonly span: Span;
}

/** What all models of one request look at. */
export interface Stage {
  readonly book: Book;
  readonly results: Results;
  /** The events that the library asked for, by their name in requests. */
  readonly events: Set<string>;
}

/** A range, or an address in `sheet`. */
export function placeOf(sheet: Sheet, argument: unknown): Place {
  if (isModel(argument) && argument.range !== undefined) return argument.range;
  if (typeof argument === 'string') return { sheet, span: parseAddress(argument) };
  return refuse('InvalidArgument', 'not a range');
}

export function isModel(value: unknown): value is Model {
  return typeof value === 'object' && value !== null && 'className' in value;
}
