/**
 * Limits of the arguments that count days. Source: judgement, wide enough for any cucurbit and climate; a date
 * typed where a count belongs (46,000 and more) and a count of hours fall outside.
 */
import { refuse } from '../errors';
import { checkNumber } from '../limits/limits';

const limitsInDays = {
  /** Below 0 for ground under covers that keep frost off. */
  days_after: { atLeast: -60, atMost: 120 },
  days: { atLeast: 0, atMost: 60 },
  days_to_maturity: { above: 0, atMost: 365 },
  harvest_days: { atLeast: 0, atMost: 365 },
  fall_days: { atLeast: 0, atMost: 90 },
  frost_margin: { atLeast: 0, atMost: 90 },
  transplant_gain: { atLeast: 0, atMost: 60 },
  flower_to_pick: { atLeast: 0, atMost: 120 },
  label_days: { atLeast: 0, atMost: 365 },
  days_needed: { atLeast: 0, atMost: 730 },
} as const;

/** @throws outOfRange */
export function checkDays(name: keyof typeof limitsInDays, days: number): void {
  checkNumber(name, days, 'days', limitsInDays[name]);
}

/** @throws notADate when the value is no whole day number */
export function checkDay(name: string, day: number): void {
  if (!Number.isInteger(day)) refuse({ code: 'notADate', name, given: String(day) });
}
