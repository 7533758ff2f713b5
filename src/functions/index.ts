/** Every worksheet function by its id. A new subject file is added to the list below. */
import type { FunctionDefinition } from './define';
import * as date from './date';
import * as harvest from './harvest';
import * as plants from './plants';
import * as season from './season';

const subjects = [date, harvest, plants, season];

function isDefinition(value: unknown): value is FunctionDefinition {
  return typeof value === 'object' && value !== null && 'explain' in value;
}

export const functions: ReadonlyMap<string, FunctionDefinition> = new Map(
  subjects
    .flatMap((subject) => Object.values(subject) as unknown[])
    .filter(isDefinition)
    .map((definition) => [definition.id, definition]),
);
