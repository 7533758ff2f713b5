/** The names that somebody may have meant, nearest first; an entry hands in how they are found. */
export type NearestNames = (given: string, names: readonly string[]) => readonly string[];
