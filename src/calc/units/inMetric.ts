import {
  cmPerInch,
  fahrenheitPerCelsius,
  freezingF,
  gramsPerOunce,
  inchesPerFoot,
  kgPerPound,
  litresPerGallon,
  metresPerFoot,
  mlPerLitre,
  squareFeetPerAcre,
  squareMetresPerHectare,
  squareMetresPerSquareFoot,
  unitSystems,
  type Unit,
} from './units';

const { us, metric } = unitSystems;

const litresPerCubicFoot = (inchesPerFoot ** 3 * cmPerInch ** 3) / mlPerLitre;
const mmPerCm = 10;

/**
 * A quantity of the US system in the unit that the metric system has for it.
 *
 * m = 0.3048 ft; cm = 2.54 in; sq m = 0.09290304 sq ft; C = (F - 32) / 1.8; seeds/g = seeds/oz / 28.349523125;
 * g = 28.349523125 oz; kg = 0.45359237 lb; price per kg = price per lb / 0.45359237;
 * L/h per m = gal/h per 100 ft x 3.785411784 / 30.48;
 * kg per 100 m = lb per 100 ft x 0.45359237 / 0.3048; per ha = per acre x 10,000 / (43,560 x 0.3048^2);
 * kg per ha = lb per acre x 0.45359237 x 10,000 / (43,560 x 0.3048^2); ml = 2.54^3 cu in; mm of water = 25.4 in;
 * per m = per ft / 0.3048; per L = per cu ft / 28.316846592; per cu m = per 1,000 gal / 3.785411784
 *
 * @param value a finite number [`unit`]
 * @param unit its unit; days, counts and shares are the same in both systems
 * @returns the number and its metric unit
 * Source: NIST Handbook 44, appendix C; temperature by definition of the scale.
 * @example inMetric(12, 'in') // { value: 30.48, unit: 'cm' }
 */
export function inMetric(value: number, unit: Unit): { readonly value: number; readonly unit: Unit } {
  switch (unit) {
    case us.length:
      return { value: value * metresPerFoot, unit: metric.length };
    case us.spacing:
      return { value: value * cmPerInch, unit: metric.spacing };
    case us.area:
      return { value: value * squareMetresPerSquareFoot, unit: metric.area };
    case us.temperature:
      return { value: (value - freezingF) / fahrenheitPerCelsius, unit: metric.temperature };
    case us.seedCount:
      return { value: value / gramsPerOunce, unit: metric.seedCount };
    case us.density:
      return {
        value: (value * squareMetresPerHectare) / (squareFeetPerAcre * squareMetresPerSquareFoot),
        unit: metric.density,
      };
    case us.seedMass:
      return { value: value * gramsPerOunce, unit: metric.seedMass };
    case 'lb':
      return { value: value * kgPerPound, unit: 'kg' };
    case 'perLb':
      return { value: value / kgPerPound, unit: 'perKg' };
    case 'perFt':
      return { value: value / metresPerFoot, unit: 'perM' };
    case 'perCuFt':
      return { value: value / litresPerCubicFoot, unit: 'perLitre' };
    case 'perThousandGallons':
      // A thousand gallons and a thousand litres, which are a cubic metre.
      return { value: value / litresPerGallon, unit: 'perCuM' };
    case 'inOfWater':
      return { value: value * cmPerInch * mmPerCm, unit: metric.waterDepth };
    case us.cellVolume:
      return { value: value * cmPerInch ** 3, unit: metric.cellVolume };
    case us.nutrientRate:
      return {
        value:
          (value * kgPerPound * squareMetresPerHectare) / (squareFeetPerAcre * squareMetresPerSquareFoot),
        unit: metric.nutrientRate,
      };
    case us.dripFlow:
      return {
        value: (value * litresPerGallon) / (us.dripFlowLength * metresPerFoot),
        unit: metric.dripFlow,
      };
    case us.yieldPer100:
      return { value: (value * kgPerPound) / metresPerFoot, unit: metric.yieldPer100 };
    default:
      return { value, unit };
  }
}
