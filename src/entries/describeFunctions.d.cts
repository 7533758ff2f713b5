import type { DescribedFunction } from '../workbook/functionHelp';

/** In the order of README. @throws Error with what the generator finds wrong in a comment */
export function describeFunctions(
  files: readonly string[],
  readme: string,
): Promise<readonly DescribedFunction[]>;
