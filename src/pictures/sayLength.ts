import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { locale } from '../texts/language';

const words = catalogue.plotPictures.length;

export type Units = 'us' | 'metric';

const inchesPerFoot = 12;
const centimetresPerMetre = 100;

/** At most so many decimals, thousands set apart. */
export function sayCount(value: number, decimals = 0): string {
  return Number(value.toFixed(decimals)).toLocaleString(locale, { maximumFractionDigits: decimals });
}

/** A length as a tape is read: feet and inches to a tenth, or metres to a centimetre. */
export function sayLength(value: number, units: Units): string {
  if (units === 'metric') {
    const isShort = value < 1;
    return isShort
      ? saySpacing(value * centimetresPerMetre, units)
      : fill(words.metres, { metres: sayCount(value, 2) });
  }
  // Rounded first, so that 12 inches never stand beside feet.
  const all = Number((value * inchesPerFoot).toFixed(1));
  const feet = Math.floor(all / inchesPerFoot);
  const inches = sayCount(all - feet * inchesPerFoot, 1);
  if (feet === 0) return fill(words.inches, { inches });
  if (inches === '0') return fill(words.feet, { feet: sayCount(feet) });
  return fill(words.feetAndInches, { feet: sayCount(feet), inches });
}

/** What is told in inches or centimetres, however much it is. */
export function saySpacing(value: number, units: Units): string {
  return units === 'metric'
    ? fill(words.centimetres, { centimetres: sayCount(value, 1) })
    : fill(words.inches, { inches: sayCount(value, 1) });
}

/**
 * The longest round length up to the given one: 1, 2 or 5 times a power of ten, under a foot in inches.
 *
 * @param most above 0, in feet or metres, as the length that comes back
 */
export function roundLength(most: number, units: Units): number {
  const unit = units === 'us' && most < 1 ? 1 / inchesPerFoot : 1;
  const count = most / unit;
  const power = 10 ** Math.floor(Math.log10(count));
  return (count >= 5 * power ? 5 : count >= 2 * power ? 2 : 1) * power * unit;
}
