/**
 * What a sheet is to a change that is being written, kept in a hidden name of the sheet until the change is whole. Only
 * by this name is a sheet of an unfinished change told from somebody's sheet.
 */
export type Part =
  /** Holds what is needed to put everything back. */
  | { readonly kind: 'journal' }
  /** Made by the change. */
  | { readonly kind: 'made' }
  /** Was there before; the journal knows it by this number. */
  | { readonly kind: 'touched'; readonly number: number };

export const partName = '_part_of_unfinished_change';

/** As a name's formula. */
export function printPart(part: Part): string {
  return `="${part.kind}${part.kind === 'touched' ? ` ${part.number}` : ''}"`;
}

export function readPart(formula: string): Part | null {
  const touched = /^="touched (\d+)"$/.exec(formula);
  if (touched !== null) return { kind: 'touched', number: Number(touched[1]) };
  if (formula === '="journal"') return { kind: 'journal' };
  return formula === '="made"' ? { kind: 'made' } : null;
}
