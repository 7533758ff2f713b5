import {
  addName,
  addSheet,
  addTable,
  deleteSheet,
  isSame,
  renameSheet,
  renameTable,
  resizeTable,
  showSheet,
  usedSpan,
  type Book,
  type Name,
  type Shape,
  type Sheet,
  type Table,
  type Visibility,
} from './book';
import { refuse } from './excelError';
import { isModel, placeOf, type Model, type Stage } from './model';
import { rangeModel } from './rangeModel';
import { parseAddress, printAddress } from './span';

export function sheetModel(stage: Stage, sheet: Sheet): Model {
  const { book } = stage;
  return {
    className: 'Worksheet',
    get: {
      Id: () => sheet.id,
      Name: () => sheet.name,
      Visibility: () => sheet.visibility,
      Position: () => book.sheets.indexOf(sheet),
    },
    put: {
      Name: (name) => renameSheet(book, sheet, String(name)),
      Visibility: (visibility) => showSheet(book, sheet, visibility as Visibility),
    },
    call: {
      GetRange: (address) => rangeModel(stage, sheet, parseAddress(String(address))),
      GetRangeByIndexes: (row, column, rows, columns) =>
        rangeModel(stage, sheet, {
          row: Number(row),
          column: Number(column),
          rows: Number(rows),
          columns: Number(columns),
        }),
      GetUsedRangeOrNullObject(valuesOnly) {
        // Without it, cells that only look like something count too: the host must not ask for those.
        if (valuesOnly !== true) refuse('InvalidArgument', 'valuesOnly');
        // What lists spill into is known from the last time that results were asked for.
        const used = usedSpan(sheet, [...(stage.results.get(sheet)?.keys() ?? [])]);
        return used === null ? null : rangeModel(stage, sheet, used);
      },
      Delete: () => deleteSheet(book, sheet),
      Activate() {
        if (sheet.visibility !== 'Visible') refuse('InvalidOperation', 'a hidden sheet cannot be activated');
        book.active = sheet;
        book.selection = { sheet, span: { row: 0, column: 0, rows: 1, columns: 1 } };
      },
    },
    child: {
      Protection: () => ({ className: 'WorksheetProtection', get: { Protected: () => sheet.isProtected } }),
      Names: () => namesModel(stage, sheet.names, sheet),
      Tables: () => ({
        className: 'TableCollection',
        call: {
          Add(range, hasHeaders) {
            const place = placeOf(sheet, range);
            if (hasHeaders !== true || place.sheet !== sheet) refuse('InvalidArgument', 'table');
            return tableModel(stage, addTable(book, sheet, place.span));
          },
        },
      }),
      FreezePanes: () => ({
        className: 'WorksheetFreezePanes',
        call: {
          FreezeAt: (range) =>
            void (sheet.page['freezeAt'] = printAddress(sheet.name, placeOf(sheet, range).span)),
          FreezeRows: (count) => void (sheet.page['freezeRows'] = count),
          FreezeColumns: (count) => void (sheet.page['freezeColumns'] = count),
        },
      }),
      PageLayout: () => pageModel(sheet),
      Shapes: () => shapesModel(sheet),
      Notes: () => ({
        className: 'NoteCollection',
        call: {
          Add(at, text) {
            const { span } = placeOf(sheet, at);
            if (sheet.isProtected) refuse('AccessDenied', 'the sheet is protected');
            if (typeof text !== 'string' || span.rows * span.columns !== 1) refuse('InvalidArgument', 'note');
            sheet.notes.push({ span, text: String(text) });
            return { className: 'Note' };
          },
        },
      }),
    },
  };
}

export function tableModel(stage: Stage, table: Table): Model {
  const { book } = stage;
  return {
    className: 'Table',
    get: { Id: () => table.id, Name: () => table.name, ShowTotals: () => table.showTotals },
    put: {
      Name: (name) => renameTable(book, table, String(name)),
      ShowFilterButton: (isShown) => void (table.showFilterButton = isShown === true),
      Style: (style) => void (table.style = String(style)),
    },
    call: {
      GetRange: () => rangeModel(stage, table.sheet, table.span),
      Resize(range) {
        const place = placeOf(table.sheet, range);
        if (place.sheet !== table.sheet) refuse('InvalidArgument', 'a range of another sheet');
        resizeTable(book, table, place.span);
      },
    },
    child: { Worksheet: () => sheetModel(stage, table.sheet) },
  };
}

/** `owner` is null for the names of the workbook. */
export function namesModel(stage: Stage, names: Name[], owner: Sheet | null): Model {
  const { book } = stage;
  const find = (key: unknown): Name | undefined => names.find(({ name }) => isSame(name, String(key)));
  const model = (name: Name): Model => ({
    className: 'NamedItem',
    get: {
      Name: () => name.name,
      Visible: () => name.visible,
      Formula: () => printTarget(name),
    },
    put: {
      Visible: (visible) => void (name.visible = visible === true),
      Formula: (formula) => setFormula(book, name, formula),
    },
    call: {
      Delete() {
        names.splice(names.indexOf(name), 1);
        book.version += 1;
      },
    },
  });
  return {
    className: 'NamedItemCollection',
    items: () => names.map(model),
    item: (key) => model(find(key) ?? refuse('ItemNotFound', `name ${String(key)}`)),
    call: {
      Add(name, reference) {
        if (owner?.isProtected === true) refuse('AccessDenied', 'the sheet is protected');
        const target = isModel(reference) ? reference.range : reference;
        if (target === undefined) refuse('InvalidArgument', 'reference');
        return model(addName(book, names, String(name), target as Name['target']));
      },
      GetItemOrNullObject(key) {
        const found = find(key);
        return found === undefined ? null : model(found);
      },
    },
  };
}

function setFormula(book: Book, name: Name, formula: unknown): void {
  if (typeof formula !== 'string' || !formula.startsWith('=')) return refuse('InvalidArgument', 'formula');
  const [, quoted, plain, cell] = /^=(?:'((?:[^']|'')+)'|(\w+))!(\$[A-Z]+\$\d+)$/.exec(formula) ?? [];
  const sheet = book.sheets.find((each) => isSame(each.name, quoted?.replaceAll("''", "'") ?? plain ?? ''));
  name.target = sheet === undefined ? formula : { sheet, span: parseAddress(cell ?? '') };
  book.version += 1;
}

function printTarget({ target }: Name): string {
  if (typeof target === 'string') return target;
  const { sheet, span } = target;
  const address = printAddress(sheet.name, span).replace(/!.*$/, '!');
  const absolute = printAddress(sheet.name, span)
    .slice(address.length)
    .replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
  return `=${address}${absolute}`;
}

function pageModel(sheet: Sheet): Model {
  const put = (...names: string[]): Model['put'] =>
    Object.fromEntries(names.map((name) => [name, (value: unknown) => void (sheet.page[name] = value)]));
  const rows = (name: string) => (range: unknown) =>
    void (sheet.page[name] =
      typeof range === 'string' ? range : printAddress(sheet.name, placeOf(sheet, range).span));
  return {
    className: 'PageLayout',
    put:
      put(
        'Orientation',
        'Zoom',
        'LeftMargin',
        'RightMargin',
        'TopMargin',
        'BottomMargin',
        'HeaderMargin',
        'FooterMargin',
      ) ?? {},
    call: { SetPrintTitleRows: rows('titleRows'), SetPrintTitleColumns: rows('titleColumns') },
    child: {
      HeadersFooters: () => ({
        className: 'HeaderFooterGroup',
        child: {
          DefaultForAllPages: () => ({
            className: 'HeaderFooter',
            put: put('LeftFooter', 'RightFooter') ?? {},
          }),
        },
      }),
    },
  };
}

function shapesModel(sheet: Sheet): Model {
  const names = ['Left', 'Top', 'Width', 'Height', 'Name', 'AltTextDescription', 'LockAspectRatio'];
  const model = (shape: Shape): Model => ({
    className: 'Shape',
    get: { Id: () => String(sheet.shapes.indexOf(shape)), Name: () => shape.properties['Name'] },
    put: Object.fromEntries(
      names.map((name) => [name, (value: unknown) => void (shape.properties[name] = value)]),
    ),
    call: { Delete: () => void sheet.shapes.splice(sheet.shapes.indexOf(shape), 1) },
  });
  return {
    className: 'ShapeCollection',
    items: () => sheet.shapes.map(model),
    call: {
      GetItem(key) {
        const found = sheet.shapes.find(({ properties }) => properties['Name'] === key);
        return found === undefined ? refuse('ItemNotFound', `shape ${String(key)}`) : model(found);
      },
      AddImage(base64) {
        if (sheet.isProtected) refuse('AccessDenied', 'the sheet is protected');
        if (typeof base64 !== 'string' || !base64.startsWith('iVBOR')) refuse('InvalidArgument', 'not a PNG');
        const shape = { properties: { Name: `Picture ${sheet.shapes.length + 1}` }, base64: String(base64) };
        sheet.shapes.push(shape);
        return model(shape);
      },
    },
  };
}

export function sheetsModel(stage: Stage): Model {
  const { book, events } = stage;
  const find = (key: unknown): Sheet | undefined =>
    book.sheets.find(({ id, name }) => id === key || isSame(name, String(key)));
  const event = (name: string): Record<string, () => void> => ({
    [`_Register${name}Event`]: () => void events.add(name),
    [`_Unregister${name}Event`]: () => void events.delete(name),
  });
  return {
    className: 'WorksheetCollection',
    items: () => book.sheets.map((sheet) => sheetModel(stage, sheet)),
    item: (key) => sheetModel(stage, find(key) ?? refuse('ItemNotFound', `sheet ${String(key)}`)),
    call: {
      Add: (name) => sheetModel(stage, addSheet(book, String(name))),
      GetItemOrNullObject(key) {
        const found = find(key);
        return found === undefined ? null : sheetModel(stage, found);
      },
      ...event('DataChanged'),
      ...event('Calculated'),
      ...event('Added'),
      ...event('Deleted'),
      ...event('SelectionChanged'),
    },
  };
}
