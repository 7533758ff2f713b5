/** The years that seed keeps in good storage, by the kinds of reference/seedStandards; gourd and citron have none. */
import data from './data.json';

export interface SeedLife {
  /** Years of the shortest-lived and the longest-lived account. */
  readonly low: number;
  readonly high: number;
  /** Keys of reference/sources. */
  readonly grounds: readonly string[];
}

for (const life of Object.values(data)) {
  Object.freeze(life.grounds);
  Object.freeze(life);
}

export const seedLife = Object.freeze(data) as Readonly<Partial<Record<string, SeedLife>>>;
