import { catalogue } from './catalogue';
import { fill } from './fill';

export interface Citable {
  readonly publisher: string;
  readonly title: string;
  readonly year: number | null;
  readonly where: string;
  readonly status: 'read' | 'secondary copy' | 'from memory, check';
}

/** "publisher: title (year), where", with a word on copies and memory. */
export function sayCitation({ publisher, title, year, where, status }: Citable): string {
  const pattern = year === null ? catalogue.citations.undated : catalogue.citations.dated;
  return fill(pattern, { publisher, title, year: year ?? '', where }) + catalogue.citations[status];
}
