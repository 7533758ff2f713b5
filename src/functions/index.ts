/** Every worksheet function by its id. A new subject file is added to the list below. */
import type { FunctionDefinition } from './define';
import * as crop from './crop';
import * as date from './date';
import * as flower from './flower';
import * as flowerCrosses from './flowerCrosses';
import * as flowerGroup from './flowerGroup';
import * as flowerHives from './flowerHives';
import * as harvest from './harvest';
import * as plants from './plants';
import * as season from './season';
import * as seed from './seed';
import * as seedPacks from './seedPacks';
import * as seedStandard from './seedStandard';
import * as seedStorage from './seedStorage';
import * as seedTest from './seedTest';
import * as tray from './tray';

const subjects = [
  crop,
  date,
  flower,
  flowerCrosses,
  flowerGroup,
  flowerHives,
  harvest,
  plants,
  season,
  seed,
  seedPacks,
  seedStandard,
  seedStorage,
  seedTest,
  tray,
];

function isDefinition(value: unknown): value is FunctionDefinition {
  return typeof value === 'object' && value !== null && 'explain' in value;
}

export const functions: ReadonlyMap<string, FunctionDefinition> = new Map(
  subjects
    .flatMap((subject) => Object.values(subject) as unknown[])
    .filter(isDefinition)
    .map((definition) => [definition.id, definition]),
);
