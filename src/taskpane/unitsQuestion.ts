/** Asked before the units of the season change: what becomes of the numbers that were typed in the old ones. */
import { catalogue } from '../texts/catalogue';
import { createAsks, type Asks } from './asks';
import { element } from './elements';

const words = catalogue.pane.units;

export type UnitsAnswer = 'convert' | 'only';

/** @param onAnswer null leaves the units as they are */
export function createUnitsQuestion(onAnswer: (answer: UnitsAnswer | null) => void): Asks {
  const button = (text: string, answer: UnitsAnswer | null): HTMLButtonElement => {
    const made = element('button', { type: 'button' }, text);
    made.addEventListener('click', () => onAnswer(answer));
    return made;
  };
  return createAsks('units', [
    button(words.convert, 'convert'),
    button(words.leaveNumbers, 'only'),
    button(words.leave, null),
  ]);
}

/** A blank cell means the first of the choices. */
export function isOtherUnits(one: unknown, other: unknown): boolean {
  const system = (value: unknown): string => String(value ?? '').toLowerCase() || 'us';
  return system(one) !== system(other);
}
