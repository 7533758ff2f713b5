/** The cells of one sheet, and where its tables are. */
import type { ReadValue, Span } from '../../workbook/port';
import { mostColumns, mostRows, placeOf, spanOf } from './cellPlace';
import type { Package } from './readPackage';
import { readRelations } from './readRelations';
import { textCollector, unescapeCharacters } from './readTexts';
import { readXml, type XmlReader } from './readXml';
import { damaged, emptyRows, tooBig } from './refusals';

/** With something in them, of one sheet. */
export const mostCells = 400_000;

/** Under the last filled one, where reading had to stop: they are what makes the file big. Source: judgement. */
const manyEmptyRows = 1000;

export interface SheetTable extends Span {
  readonly name: string;
}

export interface SheetCells {
  /** By row, then column. */
  readonly values: ReadonlyMap<number, ReadonlyMap<number, ReadValue>>;
  /** With their "=", which is all there is of a formula that the file keeps with another cell. */
  readonly formulas: ReadonlyMap<number, ReadonlyMap<number, string>>;
  readonly tables: readonly SheetTable[];
  /** The last with something in it; -1 where there is nothing. */
  readonly lastRow: number;
  readonly lastColumn: number;
}

/** @param texts those that cells share. @throws HostError */
export function readSheetCells(parts: Package, part: string, texts: readonly string[]): SheetCells {
  if (!parts.has(part)) throw damaged(`no part ${part}`);
  const values = new Map<number, Map<number, ReadValue>>();
  const formulas = new Map<number, Map<number, string>>();
  const inline = textCollector(part);
  const tableIds: string[] = [];
  let row = -1;
  let column = -1;
  let type = '';
  let raw: string | null = null;
  let isRaw = false;
  let formula: string | null = null;
  let isFormula = false;
  let count = 0;
  let lastRow = -1;
  let lastColumn = -1;

  function put(value: ReadValue): void {
    if (value === null && formula === null) return;
    count += 1;
    if (count > mostCells) throw tooBig(`${part} has more than ${mostCells} cells`);
    lastRow = Math.max(lastRow, row);
    lastColumn = Math.max(lastColumn, column);
    values.set(row, (values.get(row) ?? new Map<number, ReadValue>()).set(column, value));
    if (formula === null) return;
    formulas.set(row, (formulas.get(row) ?? new Map<number, string>()).set(column, formula));
  }

  const reader: XmlReader = {
    open(name, attribute) {
      inline.open(name);
      if (name === 'row') {
        row = attribute('r') === undefined ? row + 1 : Number(attribute('r')) - 1;
        column = -1;
        if (!Number.isInteger(row) || row < 0 || row >= mostRows) throw damaged(`${part}: row ${row + 1}`);
      } else if (name === 'c') {
        const address = attribute('r');
        const place = address === undefined ? { row, column: column + 1 } : placeOf(address);
        if (place === null || place.column >= mostColumns) throw damaged(`${part}: cell ${address}`);
        ({ row, column } = place);
        type = attribute('t') ?? 'n';
        raw = null;
        formula = null;
        inline.begin();
      } else if (name === 'v') {
        isRaw = true;
        raw = '';
      } else if (name === 'f') {
        isFormula = true;
        formula = '=';
      } else if (name === 'tablePart') {
        tableIds.push(attribute(':id') ?? '');
      }
    },
    text(text) {
      inline.text(text);
      if (isRaw) raw += text;
      if (isFormula) formula += text;
    },
    close(name) {
      inline.close(name);
      if (name === 'v') isRaw = false;
      if (name === 'f') isFormula = false;
      if (name === 'c')
        put(type === 'inlineStr' ? inline.end() : valueOf(type, raw, formula !== null, texts));
    },
  };
  try {
    readXml(parts, part, reader);
  } catch (cause) {
    const empty = row - lastRow;
    throw empty > manyEmptyRows
      ? emptyRows(`${part}: ${empty} empty rows up to row ${row + 1}`, cause)
      : cause;
  }
  return { values, formulas, tables: readTables(parts, part, tableIds), lastRow, lastColumn };
}

const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** What stands in a cell of that type. A number that is none stays as the text it is: whoever reads it says so. */
function valueOf(type: string, raw: string | null, hasFormula: boolean, texts: readonly string[]): ReadValue {
  // Nobody has calculated it.
  if (raw === null) return hasFormula ? { error: '#N/A', message: null } : null;
  if (type === 's') {
    const text = /^\d+$/.test(raw) ? texts[Number(raw)] : undefined;
    if (text === undefined) throw damaged(`no shared text ${raw}`);
    return text;
  }
  if (type === 'b') return raw === '1' || raw === 'true';
  if (type === 'e') return { error: raw, message: null };
  if (type === 'd') return raw.slice(0, 'yyyy-mm-dd'.length);
  if (type === 'str') return unescapeCharacters(raw);
  const value = number.test(raw.trim()) ? Number(raw) : Number.NaN;
  return Number.isFinite(value) ? value : raw;
}

function readTables(parts: Package, part: string, ids: readonly string[]): SheetTable[] {
  const relations = ids.length === 0 ? [] : readRelations(parts, part);
  return ids.flatMap((id) => {
    let table: SheetTable | null = null;
    readXml(parts, relations.find((one) => one.id === id)?.target ?? '', {
      open(name, attribute) {
        const span = name === 'table' ? spanOf(attribute('ref') ?? '') : null;
        if (span !== null) table = { name: attribute('displayName') ?? attribute('name') ?? '', ...span };
      },
    });
    return table === null ? [] : [table];
  });
}
