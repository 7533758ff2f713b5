/**
 * The functions whose working can be shown, all but CHECK: that shows theirs, and so cannot stand in the list it
 * reads. A new subject file is added here.
 */
import type { FunctionDefinition } from './define';
import * as area from './area';
import * as beetle from './beetle';
import * as budget from './budget';
import * as crop from './crop';
import * as date from './date';
import * as dateSuccession from './dateSuccession';
import * as dateWaits from './dateWaits';
import * as flower from './flower';
import * as flowerCrosses from './flowerCrosses';
import * as flowerGroup from './flowerGroup';
import * as flowerHives from './flowerHives';
import * as frost from './frost';
import * as harvest from './harvest';
import * as harvestSize from './harvestSize';
import * as heat from './heat';
import * as pickle from './pickle';
import * as plants from './plants';
import * as plantsForYield from './plantsForYield';
import * as plantsInArea from './plantsInArea';
import * as rotation from './rotation';
import * as row from './row';
import * as season from './season';
import * as seed from './seed';
import * as seedPackList from './seedPackList';
import * as seedPacks from './seedPacks';
import * as seedStandard from './seedStandard';
import * as seedStorage from './seedStorage';
import * as seedTest from './seedTest';
import * as soil from './soil';
import * as stand from './stand';
import * as supply from './supply';
import * as supplyWater from './supplyWater';
import * as tray from './tray';

const subjects = [
  area,
  beetle,
  budget,
  crop,
  date,
  dateSuccession,
  dateWaits,
  flower,
  flowerCrosses,
  flowerGroup,
  flowerHives,
  frost,
  harvest,
  harvestSize,
  heat,
  pickle,
  plants,
  plantsForYield,
  plantsInArea,
  rotation,
  row,
  season,
  seed,
  seedPackList,
  seedPacks,
  seedStandard,
  seedStorage,
  seedTest,
  soil,
  stand,
  supply,
  supplyWater,
  tray,
];

function isDefinition(value: unknown): value is FunctionDefinition {
  return typeof value === 'object' && value !== null && 'explain' in value;
}

/** By id. */
export const explainable: ReadonlyMap<string, FunctionDefinition> = new Map(
  subjects
    .flatMap((subject) => Object.values(subject) as unknown[])
    .filter(isDefinition)
    .map((definition) => [definition.id, definition]),
);
