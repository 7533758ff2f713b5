/**
 * Every unit; the factors between them are those of reference/unitFactors.
 *
 * A calculation is given its unit system and computes in that system's own units, so that its working shows
 * the numbers the grower typed.
 */
import { unitFactors } from '../../reference/unitFactors';

export type UnitSystemName = 'us' | 'metric';

export type Unit =
  | 'ft'
  | 'in'
  | 'sqFt'
  | 'acre'
  | 'oz'
  | 'lb'
  | 'cuIn'
  | 'cuFt'
  | 'gallon'
  | 'm'
  | 'cm'
  | 'sqM'
  | 'hectare'
  | 'g'
  | 'kg'
  | 'ml'
  | 'litre'
  | 'mm'
  | 'perAcre'
  | 'perHectare'
  | 'seedsPerOz'
  | 'seedsPerG'
  | 'lbPer100Ft'
  | 'kgPer100M'
  | 'perLb'
  | 'perKg'
  | 'perFt'
  | 'perM'
  | 'perCuFt'
  | 'perLitre'
  | 'perThousandGallons'
  | 'perCuM'
  /** As depth on a field: a plant's depth and spacing are in cm. */
  | 'inOfWater'
  | 'beetlesPerPlant'
  | 'lbPerAcre'
  | 'kgPerHectare'
  | 'gphPer100Ft'
  | 'lphPerM'
  | 'F'
  | 'C'
  /** Of whichever scale the argument is in. */
  | 'degrees'
  | 'degreeDays'
  | 'plants'
  | 'seeds'
  | 'hills'
  | 'rows'
  | 'beds'
  | 'cells'
  | 'hives'
  | 'trays'
  | 'posts'
  | 'picks'
  | 'bushels'
  | 'jars'
  | 'hours'
  | 'days'
  | 'weeks'
  | 'years'
  | 'date'
  | 'share'
  | 'none';

export interface UnitSystem {
  readonly name: UnitSystemName;
  /** Plots, rows, hills, beds and paths. */
  readonly length: Unit;
  /** Plant spacing in the row. */
  readonly spacing: Unit;
  /** Spacing units in one length unit. */
  readonly spacingPerLength: number;
  readonly area: Unit;
  readonly land: Unit;
  /** Area units in one land unit. */
  readonly areaPerLand: number;
  readonly density: Unit;
  /** What a tray cell holds, and a heap of mix. */
  readonly cellVolume: Unit;
  readonly mixVolume: Unit;
  readonly cellVolumePerMixVolume: number;
  readonly mass: Unit;
  /** A nutrient on land. */
  readonly nutrientRate: Unit;
  /** Water as it is given and as rain is measured, and what that is on one unit of area. */
  readonly waterDepth: Unit;
  readonly waterVolume: Unit;
  readonly waterPerAreaAndDepth: number;
  /** The flow of drip tape, and the length of tape in the length unit that it is told for. */
  readonly dripFlow: Unit;
  readonly dripFlowLength: number;
  readonly seedMass: Unit;
  readonly seedCount: Unit;
  readonly yieldPer100: Unit;
  readonly temperature: Unit;
}

export const {
  inchesPerFoot,
  squareFeetPerAcre,
  cmPerInch,
  metresPerFoot,
  squareMetresPerSquareFoot,
  cmPerMetre,
  squareMetresPerHectare,
  mlPerLitre,
  pintsPerQuart,
  cubicInchesPerGallon,
  gramsPerOunce,
  kgPerPound,
  freezingF,
  fahrenheitPerCelsius,
} = unitFactors;
export const litresPerGallon = (cubicInchesPerGallon * cmPerInch ** 3) / mlPerLitre;
export const daysPerWeek = 7;
/** Yields are published for 100 ft or 100 m of row. */
export const rowLengthOfYield = 100;
/** Makers tell the flow of drip tape in gallons an hour per 100 ft, or litres an hour per metre. */
const feetOfDripFlow = 100;

/** Areas that land is told in, each an exact number of square feet or square metres. */
export const areaUnits = {
  'sq in': { counts: 1 / inchesPerFoot ** 2, of: 'sqFt' },
  'sq ft': { counts: 1, of: 'sqFt' },
  'sq yd': { counts: 9, of: 'sqFt' },
  acre: { counts: squareFeetPerAcre, of: 'sqFt' },
  'sq mi': { counts: 640 * squareFeetPerAcre, of: 'sqFt' },
  'sq m': { counts: 1, of: 'sqM' },
  are: { counts: 100, of: 'sqM' },
  hectare: { counts: squareMetresPerHectare, of: 'sqM' },
  'sq km': { counts: 100 * squareMetresPerHectare, of: 'sqM' },
} as const;

export type AreaUnit = keyof typeof areaUnits;

export const unitSystems: Readonly<Record<UnitSystemName, UnitSystem>> = {
  us: {
    name: 'us',
    length: 'ft',
    spacing: 'in',
    spacingPerLength: inchesPerFoot,
    area: 'sqFt',
    land: 'acre',
    areaPerLand: squareFeetPerAcre,
    density: 'perAcre',
    cellVolume: 'cuIn',
    mixVolume: 'cuFt',
    cellVolumePerMixVolume: inchesPerFoot ** 3,
    mass: 'lb',
    nutrientRate: 'lbPerAcre',
    waterDepth: 'in',
    waterVolume: 'gallon',
    waterPerAreaAndDepth: inchesPerFoot ** 2 / cubicInchesPerGallon,
    dripFlow: 'gphPer100Ft',
    dripFlowLength: feetOfDripFlow,
    seedMass: 'oz',
    seedCount: 'seedsPerOz',
    yieldPer100: 'lbPer100Ft',
    temperature: 'F',
  },
  metric: {
    name: 'metric',
    length: 'm',
    spacing: 'cm',
    spacingPerLength: cmPerMetre,
    area: 'sqM',
    land: 'hectare',
    areaPerLand: squareMetresPerHectare,
    density: 'perHectare',
    cellVolume: 'ml',
    mixVolume: 'litre',
    cellVolumePerMixVolume: mlPerLitre,
    mass: 'kg',
    nutrientRate: 'kgPerHectare',
    waterDepth: 'mm',
    waterVolume: 'litre',
    waterPerAreaAndDepth: 1,
    dripFlow: 'lphPerM',
    dripFlowLength: 1,
    seedMass: 'g',
    seedCount: 'seedsPerG',
    yieldPer100: 'kgPer100M',
    temperature: 'C',
  },
};
