/**
 * Every unit and every conversion factor, nowhere else.
 *
 * A calculation is given its unit system and computes in that system's own units, so that its working shows
 * the numbers the grower typed.
 */

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

/** International foot and inch, US customary acre of 43,560 sq ft, US gallon, avoirdupois ounce: NIST Handbook 44, appendix C. */
export const inchesPerFoot = 12;
export const squareFeetPerAcre = 43560;
export const cmPerInch = 2.54;
export const metresPerFoot = 0.3048;
export const squareMetresPerSquareFoot = 0.09290304;
export const cmPerMetre = 100;
export const squareMetresPerHectare = 10000;
export const mlPerLitre = 1000;
export const pintsPerQuart = 2;
export const cubicInchesPerGallon = 231;
export const litresPerGallon = (cubicInchesPerGallon * cmPerInch ** 3) / mlPerLitre;
export const gramsPerOunce = 28.349523125;
export const kgPerPound = 0.45359237;
/** Freezing point of water, and degrees F in one degree C: the definition of the Fahrenheit scale. */
export const freezingF = 32;
export const fahrenheitPerCelsius = 1.8;
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
