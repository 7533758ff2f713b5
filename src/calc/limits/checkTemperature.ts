import { checkNumber } from './limits';

/** Wider than any weather in either scale: judgement. */
const temperatures = { atLeast: -150, atMost: 150 };

/** A temperature of the air, in F or C. @throws outOfRange */
export function checkTemperature(name: string, degrees: number): void {
  checkNumber(name, degrees, 'degrees', temperatures);
}
