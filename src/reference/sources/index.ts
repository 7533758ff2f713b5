/** The publications behind the figures, by id. `source.json` says how the list was made. */
import data from './data.json';

export interface Source {
  readonly title: string;
  readonly publisher: string;
  /** null where the copy read bears no date. */
  readonly year: number | null;
  /** Table, section or pages. */
  readonly where: string;
  /** Empty where no copy was read. */
  readonly address: string;
  readonly licence: string;
  readonly status: 'read' | 'secondary copy' | 'from memory, check';
}

export type SourceId = keyof typeof data;

/** The two words that stand where no publication does. */
export const unsourcedGrounds = ['common practice, no source', 'judgement'] as const;

for (const source of Object.values(data)) Object.freeze(source);

export const sources = Object.freeze(data) as Readonly<Record<SourceId, Source>>;
