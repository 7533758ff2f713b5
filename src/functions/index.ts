/** Every worksheet function by its id. */
import { slip, verdict, working } from './check';
import type { FunctionDefinition } from './define';
import { explainable } from './explainable';

export const functions: ReadonlyMap<string, FunctionDefinition> = new Map(
  [...explainable.values(), verdict, working, slip].map((definition) => [definition.id, definition]),
);
