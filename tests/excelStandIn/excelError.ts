/** What Excel answers to a request that it refuses. */
export class ExcelError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

export function refuse(code: string, message: string): never {
  throw new ExcelError(code, message);
}

/** The host asked for something that the stand-in was not taught. */
export class UnknownToStandIn extends Error {}
