/** Every worksheet function by its id. A new subject file is added to the list below. */
import type { FunctionDefinition } from './define';
import * as plants from './plants';

const subjects = [plants];

function isDefinition(value: unknown): value is FunctionDefinition {
  return typeof value === 'object' && value !== null && 'explain' in value;
}

export const functions: ReadonlyMap<string, FunctionDefinition> = new Map(
  subjects
    .flatMap((subject) => Object.values(subject) as unknown[])
    .filter(isDefinition)
    .map((definition) => [definition.id, definition]),
);
