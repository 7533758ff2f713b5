/** What a workbook's own part says: its sheets, which of them are ours, and its named cells. */
import { HostError, type Mark } from '../../workbook/port';
import { markName, readCellName, readMark } from '../../workbook/sheetMark';
import { isSameName } from './bookState';
import { placeOf } from './cellPlace';
import type { Package } from './readPackage';
import { readRelations } from './readRelations';
import { readXml } from './readXml';

export interface SheetPart {
  readonly name: string;
  readonly mark: Mark | null;
  readonly part: string;
}

export interface NamedPlace {
  readonly name: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface WorkbookParts {
  readonly sheets: readonly SheetPart[];
  readonly names: readonly NamedPlace[];
  /** The part with the texts that cells share; null where there is none. */
  readonly texts: string | null;
  readonly is1904: boolean;
}

/** A part that another kind of packed file has, and how its name ends. */
const otherKinds = [
  ['xl/workbook.bin', '.xlsb'],
  ['content.xml', '.ods'],
  ['Index/Document.iwa', '.numbers'],
  ['Index.zip', '.numbers'],
] as const;

/** @throws HostError */
export function readWorkbookParts(parts: Package): WorkbookParts {
  const kind = otherKinds.find(([part]) => parts.has(part))?.[1];
  if (kind !== undefined) throw new HostError({ code: 'fileOtherKind', kind });
  const workbook = readRelations(parts, '').find(({ type }) => type === 'officeDocument')?.target;
  if (workbook === undefined || !parts.has(workbook)) throw new HostError({ code: 'fileNoWorkbook' });
  const relations = readRelations(parts, workbook);
  const partOf = (id: string): string => relations.find((one) => one.id === id)?.target ?? '';

  const sheets: { name: string; part: string }[] = [];
  const names: { name: string; sheetIndex: number | null; formula: string }[] = [];
  let is1904 = false;
  let isInName = false;
  readXml(parts, workbook, {
    open(name, attribute) {
      if (name === 'workbookPr') is1904 = ['1', 'true'].includes(attribute('date1904') ?? '');
      if (name === 'sheet') {
        sheets.push({ name: attribute('name') ?? '', part: partOf(attribute(':id') ?? '') });
      }
      if (name !== 'definedName') return;
      isInName = true;
      const index = attribute('localSheetId');
      const sheetIndex = index === undefined ? null : Number(index);
      names.push({ name: attribute('name') ?? '', sheetIndex, formula: '' });
    },
    text(text) {
      const last = names.at(-1);
      if (isInName && last !== undefined) last.formula += text;
    },
    close(name) {
      if (name === 'definedName') isInName = false;
    },
  });
  const places = names.flatMap(({ name, sheetIndex, formula }) => {
    const place = sheetIndex === null ? placeInSheet(formula) : null;
    return place === null ? [] : [{ name, ...place }];
  });
  const ownMark = (index: number): Mark | null =>
    readMark(names.find((one) => one.name === markName && one.sheetIndex === index)?.formula ?? '');
  const markOfCell = (sheet: string): Mark | null =>
    places
      .filter((place) => isSameName(place.sheet, sheet))
      .map(({ name }) => readCellName(name))
      .find((mark) => mark !== null) ?? null;
  return {
    sheets: sheets.map((sheet, index) => ({ ...sheet, mark: ownMark(index) ?? markOfCell(sheet.name) })),
    names: places,
    texts: relations.find(({ type }) => type === 'sharedStrings')?.target ?? null,
    is1904,
  };
}

/** Of a reference to a single cell, such as 'My season'!$B$7. */
function placeInSheet(reference: string): Omit<NamedPlace, 'name'> | null {
  const [, quoted, bare, address = ''] =
    /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+)$/.exec(reference) ?? [];
  const place = placeOf(address.replaceAll('$', ''));
  const sheet = quoted?.replaceAll("''", "'") ?? bare;
  return place === null || sheet === undefined ? null : { sheet, ...place };
}
