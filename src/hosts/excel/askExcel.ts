/// <reference types="office-js" />

/** One request to Excel, and what becomes of the errors of its library. */
import { HostError, type HostProblem } from '../../workbook/port';

/**
 * Queues what `prepare` asks for, sends it as one request, and reads the answer with the function that `prepare`
 * gives back. @throws HostError
 */
export async function askExcel<T>(
  excel: typeof Excel,
  action: string,
  prepare: (context: Excel.RequestContext) => () => T,
): Promise<T> {
  try {
    // Not Excel.run: it tracks every range for later requests, which costs an action each and a request to let go.
    const context = new excel.RequestContext();
    const read = prepare(context);
    await context.sync();
    return read();
  } catch (error) {
    throw hostErrorOf(error, action);
  }
}

/** The library's codes that call for an advice of their own. */
const problems: Readonly<Record<string, HostProblem>> = {
  InvalidOperationInCellEditMode: { code: 'cellBeingEdited' },
  AccessDenied: { code: 'notWritable' },
  ConnectionFailure: { code: 'noAnswer' },
  Timeout: { code: 'noAnswer' },
  InvalidOrTimedOutSession: { code: 'noAnswer' },
  ActivityLimitReached: { code: 'noAnswer' },
  RequestAborted: { code: 'noAnswer' },
  ApiNotFound: { code: 'programTooOld' },
  ApiNotAvailable: { code: 'programTooOld' },
  NotImplemented: { code: 'programTooOld' },
  UnsupportedFeature: { code: 'programTooOld' },
  UnsupportedOperation: { code: 'programTooOld' },
  InactiveWorkbook: { code: 'notInFront' },
  Conflict: { code: 'changedByOthers' },
  ItemAlreadyExists: { code: 'changedByOthers' },
  ItemNotFound: { code: 'changedByOthers' },
  FilteredRangeConflict: { code: 'cellsJoined' },
  InsertDeleteConflict: { code: 'cellsJoined' },
  MergedRangeConflict: { code: 'cellsJoined' },
  PivotTableRangeConflict: { code: 'cellsJoined' },
  InsufficientMemory: { code: 'tooLarge' },
  OperationCellsExceedLimit: { code: 'tooLarge' },
  RangeExceedsLimit: { code: 'tooLarge' },
  RequestPayloadSizeLimitExceeded: { code: 'tooLarge' },
  ResponsePayloadSizeLimitExceeded: { code: 'tooLarge' },
};

/** What failed as a part of the action failed as the action. */
export function hostErrorOf(error: unknown, action: string): HostError {
  if (error instanceof HostError && error.problem.code !== 'failed') return error;
  const cause = error instanceof HostError ? error.cause : error;
  return new HostError(problems[errorCode(cause)] ?? { code: 'failed', action }, { cause });
}

/** "" for an error that is not the library's. */
export function errorCode(error: unknown): string {
  const isCoded = typeof error === 'object' && error !== null && 'code' in error;
  return isCoded && typeof error.code === 'string' ? error.code : '';
}
