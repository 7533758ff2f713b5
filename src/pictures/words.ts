import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { locale } from '../texts/language';

export function sayPercent(share: number): string {
  return fill(catalogue.pictures.percent, { percent: Number((share * 100).toPrecision(3)) });
}

export function sayNumber(value: number): string {
  return Number(value.toFixed(1)).toLocaleString(locale);
}

/** The title with the place, where it has a name. */
export function titleAt(title: string, place: string): string {
  return place.trim() === '' ? title : fill(catalogue.pictures.at, { title, place: place.trim() });
}
