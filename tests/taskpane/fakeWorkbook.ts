/**
 * A workbook in memory with a person in front of it, for tests of the pane. It stores what is written, checks what a
 * host must check, and computes nothing: a test says what a computed cell gives.
 */
import {
  HostError,
  isCarried,
  type Area,
  type CellContent,
  type Change,
  type LiveWorkbook,
  type NewSheet,
  type Progress,
  type ReadValue,
  type Reentered,
  type Unsettled,
} from '../../src/workbook/port';

interface Sheet {
  readonly made: NewSheet | null;
  readonly contents: Map<string, CellContent>;
  readonly results: Map<string, ReadValue>;
  isLocked: boolean;
}

interface Table {
  readonly name: string;
  readonly area: Area;
  readonly headers: readonly string[];
}

export interface FakeWorkbook extends LiveWorkbook {
  readonly changes: readonly Change[];
  readonly revealed: readonly Area[];
  /** How many listeners are still there. */
  listeners(): number;
  /** As a person types; listeners are told. */
  type(area: Pick<Area, 'sheet' | 'row' | 'column'>, value: ReadValue): void;
  /** What a computed cell gives; listeners are told. */
  compute(area: Pick<Area, 'sheet' | 'row' | 'column'>, value: ReadValue): void;
  /** The area of a named cell that must be there. */
  named(name: string): Area;
  /** The cell in the column of that header, in that row of the table, counted from 0. */
  cell(table: string, row: number, header: string): Area;
  select(area: Area): void;
  addForeignSheet(name: string): void;
  removeName(name: string): void;
  lock(sheet: string): void;
  /** What entering our formulas again comes to: the workbook itself tells no formula of ours from others. */
  reentered: Reentered;
  /** Cells whose results are still to come, for ever. */
  unsettled: readonly Unsettled[];
  /** The next change is refused, or the next reading when it says so. */
  failNext(what: 'apply' | 'settle' | 'reveal' | 'reenter', error: Error): void;
  /** Changes wait until the function given back is called. */
  hold(): () => void;
  /** Tells the listeners once more, as a recalculation does. */
  tellChange(): void;
}

const key = (row: number, column: number): string => `${row} ${column}`;

function usedOf(sheet: string, contents: ReadonlyMap<string, CellContent>): Area | null {
  const cells = [...contents.keys()].map((at) => at.split(' ').map(Number));
  const end = (part: number): number => Math.max(-1, ...cells.map((at) => at[part] ?? -1)) + 1;
  return cells.length === 0 ? null : { sheet, row: 0, column: 0, rows: end(0), columns: end(1) };
}

export function createFakeWorkbook(): FakeWorkbook {
  const sheets = new Map<string, Sheet>();
  const tables = new Map<string, Table>();
  const names = new Map<string, Area>();
  const changes: Change[] = [];
  const revealed: Area[] = [];
  const onChange = new Set<() => void>();
  const onSelection = new Set<(area: Area) => void>();
  const failures = new Map<string, Error>();
  let selected: Area | null = null;
  let gate: Promise<void> = Promise.resolve();

  const demandSheet = (name: string): Sheet => {
    const sheet = sheets.get(name);
    if (sheet === undefined) throw new HostError({ code: 'noSuchSheet', sheet: name });
    return sheet;
  };
  const fail = (what: string): void => {
    const error = failures.get(what);
    failures.delete(what);
    if (error !== undefined) throw error;
  };
  const valueAt = (sheet: Sheet, row: number, column: number): ReadValue => {
    const content = sheet.contents.get(key(row, column)) ?? null;
    if (sheet.results.has(key(row, column))) return sheet.results.get(key(row, column)) ?? null;
    return typeof content === 'object' ? null : content;
  };
  const stampOf = (name: string): string => {
    const { contents, results } = demandSheet(name);
    return JSON.stringify([[...contents], [...results]]);
  };
  const write = (
    sheet: Sheet,
    change: Pick<Change['cells'][number], 'row' | 'column' | 'contents'>,
    before: Sheet,
  ): void => {
    change.contents.forEach((cells, row) =>
      cells.forEach((given, column) => {
        const at = key(change.row + row, change.column + column);
        const content = isCarried(given)
          ? (before.contents.get(key(given.carriedFrom, change.column + column)) ?? null)
          : given;
        sheet.contents.set(at, content);
        if (typeof content !== 'object' || content === null) sheet.results.delete(at);
      }),
    );
  };
  const check = (change: Change): void => {
    for (const { sheet, stamp } of change.expect) {
      if (stampOf(sheet) !== stamp) throw new HostError({ code: 'changedMeanwhile', sheet });
    }
    for (const sheet of change.newSheets) {
      if (sheets.has(sheet.name)) throw new HostError({ code: 'sheetNameTaken', sheet: sheet.name });
      for (const table of sheet.tables) {
        if (tables.has(table.name)) throw new HostError({ code: 'tableNameTaken', table: table.name });
      }
    }
    for (const { sheet } of change.cells) {
      if (demandSheet(sheet).isLocked) throw new HostError({ code: 'sheetLocked', sheet });
    }
  };
  const tell = (): void => onChange.forEach((listener) => listener());

  const workbook: FakeWorkbook = {
    changes,
    revealed,
    reentered: { cells: 0, locked: [] },
    unsettled: [],
    listeners: () => onChange.size + onSelection.size,
    async sheets() {
      return [...sheets].map(([name, { made, isLocked, contents }]) => ({
        name,
        mark: made?.mark ?? null,
        locked: isLocked,
        used: usedOf(name, contents),
      }));
    },
    async read(area) {
      const sheet = demandSheet(area.sheet);
      const map = <Cell>(cell: (row: number, column: number) => Cell): Cell[][] =>
        Array.from({ length: area.rows }, (_, row) =>
          Array.from({ length: area.columns }, (__, column) => cell(area.row + row, area.column + column)),
        );
      return {
        values: map((row, column) => valueAt(sheet, row, column)),
        formulas: map((row, column) => {
          const content = sheet.contents.get(key(row, column)) ?? null;
          return typeof content === 'object' && content !== null
            ? `=${JSON.stringify(content.compute)}`
            : null;
        }),
      };
    },
    async readTable(name) {
      const table = tables.get(name);
      if (table === undefined) return null;
      const { values } = await workbook.read(table.area);
      return { name, area: table.area, headers: table.headers, rows: values.slice(1) };
    },
    async locate(name) {
      return names.get(name) ?? null;
    },
    async stamp(sheet) {
      return stampOf(sheet);
    },
    async apply(change: Change, progress?: Progress) {
      progress?.(0);
      await gate;
      fail('apply');
      check(change);
      for (const made of change.newSheets) {
        const sheet: Sheet = { made, contents: new Map(), results: new Map(), isLocked: false };
        sheets.set(made.name, sheet);
        for (const block of made.blocks) write(sheet, block, sheet);
        for (const [name, [row, column]] of Object.entries(made.names)) {
          names.set(name, { sheet: made.name, row, column, rows: 1, columns: 1 });
        }
        for (const { name, row, column, rows, columns, headers } of made.tables) {
          tables.set(name, { name, headers, area: { sheet: made.name, row, column, rows, columns } });
        }
        progress?.(sheets.size / 4);
      }
      const before = new Map(
        [...sheets].map(([name, sheet]) => [name, { ...sheet, contents: new Map(sheet.contents) }]),
      );
      for (const block of change.cells)
        write(demandSheet(block.sheet), block, before.get(block.sheet) as Sheet);
      for (const { table: name, rows } of change.tableRows) {
        const table = tables.get(name);
        if (table === undefined) throw new HostError({ code: 'noSuchTable', table: name });
        const { sheet, row, column } = table.area;
        const block = { row: row + table.area.rows, column, contents: rows };
        write(demandSheet(sheet), block, before.get(sheet) as Sheet);
        tables.set(name, { ...table, area: { ...table.area, rows: table.area.rows + rows.length } });
      }
      changes.push(change);
      progress?.(1);
      tell();
    },
    async settle() {
      fail('settle');
      return workbook.unsettled;
    },
    async reenterFormulas() {
      fail('reenter');
      return workbook.reentered;
    },
    async selection() {
      return selected;
    },
    onSelection(listener) {
      onSelection.add(listener);
      return () => onSelection.delete(listener);
    },
    onChange(listener) {
      onChange.add(listener);
      return () => onChange.delete(listener);
    },
    async reveal(area) {
      fail('reveal');
      revealed.push(area);
    },
    type({ sheet, row, column }, value) {
      const on = demandSheet(sheet);
      const isValue = typeof value !== 'object' || value === null;
      on.contents.set(key(row, column), isValue ? value : null);
      if (isValue) on.results.delete(key(row, column));
      else on.results.set(key(row, column), value);
      tell();
    },
    compute({ sheet, row, column }, value) {
      demandSheet(sheet).results.set(key(row, column), value);
      tell();
    },
    named(name) {
      const area = names.get(name);
      if (area === undefined) throw new Error(`no cell is called ${name}`);
      return area;
    },
    cell(table, row, header) {
      const there = tables.get(table);
      const column = there?.headers.indexOf(header) ?? -1;
      if (there === undefined || column < 0) throw new Error(`no ${header} in ${table}`);
      const { area } = there;
      return {
        sheet: area.sheet,
        row: area.row + 1 + row,
        column: area.column + column,
        rows: 1,
        columns: 1,
      };
    },
    select(area) {
      selected = area;
      onSelection.forEach((listener) => listener(area));
    },
    addForeignSheet(name) {
      sheets.set(name, { made: null, contents: new Map(), results: new Map(), isLocked: false });
    },
    removeName(name) {
      names.delete(name);
    },
    lock(sheet) {
      demandSheet(sheet).isLocked = true;
    },
    failNext(what, error) {
      failures.set(what, error);
    },
    hold() {
      let release = (): void => undefined;
      gate = new Promise((resolve) => (release = resolve));
      return release;
    },
    tellChange: tell,
  };
  return workbook;
}
