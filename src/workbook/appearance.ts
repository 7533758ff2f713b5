/**
 * How cells look, the same in every host: earth and leaf on white, readable at WCAG AA, and told apart by border, weight
 * and lightness alone when printed in grey.
 */
import type { Dressing, Format, Role, Shade } from './port';
import type { TableColumn } from './template';

export const formatCodes: Readonly<Record<Format, string>> = {
  general: 'General',
  text: '@',
  // A formula entered into a cell of text format would stay a text.
  words: 'General',
  whole: '#,##0',
  tenth: '#,##0.0',
  hundredth: '#,##0.00',
  percent: '0%',
  percentTenth: '0.0%',
  percentHundredth: '0.00%',
  money: '#,##0.00',
  // Of one: a foot of film costs less than a cent is worth showing.
  price: '#,##0.00##',
  date: 'yyyy-mm-dd',
  day: 'd',
};

export interface Look {
  readonly bold: boolean;
  readonly italic: boolean;
  readonly sizePt: number;
  /** RRGGBB */
  readonly color: string;
  readonly fill: string | null;
  readonly wrap: boolean;
  readonly centred: boolean;
  readonly border: boolean;
}

/** RRGGBB. Dark enough to print. */
export const borderColor = 'A8AFA3';

const plain: Look = {
  bold: false,
  italic: false,
  sizePt: 11,
  color: '1F2A1F',
  fill: null,
  wrap: false,
  centred: false,
  border: false,
};

export const looks: Readonly<Record<Role, Look>> = {
  plain,
  title: { ...plain, bold: true, sizePt: 16, color: '1B4D2B' },
  lead: { ...plain, color: '4A554A' },
  caution: { ...plain, color: '8A3B00', bold: true },
  label: { ...plain, bold: true },
  remark: { ...plain, color: '4A554A' },
  header: { ...plain, bold: true, color: 'FFFFFF', fill: '2F6B3F', wrap: true, centred: true, border: true },
  input: { ...plain, color: '1A3F8B', fill: 'FFF9E5', border: true },
  computed: { ...plain, border: true },
  prose: { ...plain, border: true, wrap: true },
  unit: { ...plain, italic: true, color: '4A554A', centred: true },
};

/** Figures stand hard against the right edge of their cells: what is read beside them begins a little way in. */
export function isIndented({ role, format }: Pick<Dressing, 'role' | 'format'>): boolean {
  return role === 'remark' || (holdsTexts(format) && !looks[role].centred);
}

/** What that takes from a cell's width. */
export const indentCharacters = 1;

/** Of a column, that what is read in it has the width that its template says. */
export function widthOf({ width, format }: Pick<TableColumn, 'width' | 'format'>): number {
  return holdsTexts(format) ? width + indentCharacters : width;
}

function holdsTexts(format: Format): boolean {
  return format === 'text' || format === 'words';
}

/** In place of a cell's own color and fill. Straw, leaf and bark: in grey each is a clear step darker. */
export const shades: Readonly<Record<Shade, { readonly color: string; readonly fill: string }>> = {
  pale: { color: '1F2A1F', fill: 'F0DF9A' },
  middle: { color: '0F150F', fill: '6FA054' },
  deep: { color: 'FFFFFF', fill: '6B3410' },
};
