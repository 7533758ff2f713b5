/** The templates as data: what they name exists, what they ask is read, and no chain of our functions is long. */
import { describe, expect, it } from 'vitest';
import { inMetric } from '../../src/calc/units/inMetric';
import type { Unit } from '../../src/calc/units/units';
import { functions } from '../../src/functions';
import { demoPlots, demoPrices, demoSeason } from '../../src/templates/demoGarden';
import { plotsTemplate } from '../../src/templates/plots';
import { pricesTemplate } from '../../src/templates/prices';
import { allTemplates, knownTemplates } from '../../src/templates/sheets';
import type { Expression } from '../../src/workbook/port';
import type { SheetTemplate, TableColumn, TableTemplate } from '../../src/workbook/template';

function parts(expression: Expression): Expression[] {
  const below: readonly Expression[] =
    'args' in expression
      ? expression.args.flatMap((arg) => arg ?? [])
      : 'operator' in expression
        ? [expression.left, expression.right]
        : [];
  return [expression, ...below.flatMap(parts)];
}

function expressionsOf(template: SheetTemplate): Expression[] {
  const contents = [
    ...template.form.map((line) => line.content),
    ...template.tables.flatMap((table) => [
      ...table.columns.flatMap((column) => [
        column.unit,
        column.dated?.month ?? null,
        column.dated?.day ?? null,
        column.compute === null ? null : { compute: column.compute },
      ]),
      ...(table.rows ?? []).flat(),
    ]),
    ...(template.lists ?? []).flatMap(({ compute, columns }) => [
      { compute },
      ...columns.map(({ unit }) => unit),
    ]),
  ];
  return contents.flatMap((content) =>
    typeof content === 'object' && content !== null ? parts(content.compute) : [],
  );
}

const all = knownTemplates.flatMap(expressionsOf);
const inputsRead = new Set(all.flatMap((part) => ('input' in part ? [part.input] : [])));
const tables = knownTemplates.flatMap((template) => template.tables);
const plots = plotsTemplate.tables[0] as TableTemplate;
const callIds = (expression: Expression): string[] =>
  parts(expression).flatMap((part) => ('call' in part ? [part.call] : []));

describe.each(knownTemplates.map((template) => [template.sheet, template] as const))(
  'the %s template',
  (_, template) => {
    it('survives JSON unchanged', () => {
      expect(JSON.parse(JSON.stringify(template))).toEqual(template);
    });

    it('converts by units that the converter tells apart', () => {
      for (const { header, converts } of template.tables.flatMap(({ columns }) => columns)) {
        const asked = typeof converts === 'object' ? Object.values(converts.units) : [converts ?? []].flat();
        for (const unit of asked) expect(inMetric(1, unit as Unit).unit, header).not.toBe(unit);
      }
    });

    it('converts by a column that stands in the table, and by rows or choices that are there', () => {
      for (const { columns, rows } of template.tables) {
        for (const { converts } of columns) {
          if (typeof converts !== 'object') continue;
          const by = columns.findIndex(({ header }) => header === converts.by);
          const known = ['', ...(columns[by]?.choices ?? []), ...(rows ?? []).map((row) => row[by])];
          expect(known).toEqual(expect.arrayContaining(Object.keys(converts.units)));
        }
      }
    });

    it('calls only functions that exist, with as many arguments as they take', () => {
      for (const part of expressionsOf(template)) {
        if (!('call' in part)) continue;
        const parameters = functions.get(part.call)?.parameters;
        expect(parameters, part.call).toBeDefined();
        expect(part.args.length, part.call).toBeLessThanOrEqual(parameters?.length ?? 0);
        const leftOut = parameters?.filter(
          (parameter, i) => !parameter.optional && (part.args[i] ?? null) === null,
        );
        expect(
          leftOut?.map(({ name }) => name),
          part.call,
        ).toEqual([]);
      }
    });

    it('names only tables, columns and cells that exist', () => {
      const lines = new Set(
        knownTemplates.flatMap((each) => [
          ...each.form.map((line) => line.name),
          ...(each.lists ?? []).flatMap(({ columns }) => columns.map(({ name }) => name)),
          ...each.tables.flatMap(({ columns }) => columns.map(({ dated }) => dated?.name ?? '')),
        ]),
      );
      for (const part of expressionsOf(template)) {
        if ('input' in part) expect(lines).toContain(part.input);
        if ('allOf' in part) {
          const table = tables.find(({ name }) => name === part.table);
          expect(table?.columns.map(({ header }) => header)).toContain(part.allOf);
        }
      }
      for (const table of template.tables) {
        const headers = table.columns.map(({ header }) => header);
        const computed = table.columns.flatMap(({ compute }) => (compute === null ? [] : parts(compute)));
        const named = computed.flatMap((part) => ('column' in part ? [part.column] : []));
        expect(headers).toEqual(expect.arrayContaining(named));
      }
    });

    it('has each header once, and a note on every column of a growing table', () => {
      for (const table of template.tables) {
        const headers = table.columns.map(({ header }) => header.toLowerCase());
        expect(new Set(headers).size).toBe(headers.length);
        if (table.grows) expect(table.columns.filter(({ note }) => note === '')).toEqual([]);
      }
    });
  },
);

describe('what is asked is read', () => {
  /** Place is there for whoever the sheet is handed to. */
  const forPeople = ['PLACE', 'RECORD_PLACE'];

  it('every input of a form', () => {
    const asked = knownTemplates.flatMap(({ form }) => form).filter(({ kind }) => kind === 'input');
    const unread = asked.map(({ name }) => name).filter((name) => !inputsRead.has(name));
    expect(unread).toEqual(forPeople);
  });

  it('every named column of a list, but the years that stand first in each', () => {
    const named = knownTemplates.flatMap(({ lists = [] }) =>
      lists.flatMap(({ columns }) => columns.slice(1).map(({ name }) => name)),
    );
    expect(named.filter((name) => name !== '' && !inputsRead.has(name))).toEqual([]);
  });

  it('every input column of Plots, by a column that computes', () => {
    const read = new Set(
      plots.columns.flatMap(({ compute }) =>
        compute === null ? [] : parts(compute).flatMap((part) => ('column' in part ? [part.column] : [])),
      ),
    );
    const unread = plots.columns.filter(({ kind, header }) => kind === 'input' && !read.has(header));
    expect(unread.map(({ header }) => header)).toEqual([]);
  });
});

describe('the Plots table', () => {
  const byHeader = new Map(plots.columns.map((column) => [column.header, column]));

  /** How many of our functions wait for one another at the end of the chain that leads into this column. */
  function chain(column: TableColumn): number {
    if (column.compute === null) return 0;
    const before = parts(column.compute).flatMap((part) => {
      const named = 'column' in part ? byHeader.get(part.column) : undefined;
      return named === undefined || named === column ? [] : [chain(named)];
    });
    const longest = Math.max(0, ...before);
    // Taken as asks our function only where its look-up failed; then no number waits for it.
    const calls = column.header === 'Taken as' ? 0 : callIds(column.compute).length;
    return longest + (calls > 0 ? 1 : 0);
  }

  it.each(
    plots.columns.filter(({ compute }) => compute !== null).map((column) => [column.header, column] as const),
  )('%s waits for at most one other of our functions', (_, column) => {
    expect(chain(column)).toBeLessThanOrEqual(2);
  });

  it('Notes gathers the others in native text', () => {
    expect(callIds(byHeader.get('Notes')?.compute as Expression)).toEqual([]);
  });
});

describe('the invented garden', () => {
  it('fills only columns and cells that are asked for', () => {
    const asked = plots.columns.filter(({ kind }) => kind === 'input').map(({ header }) => header);
    for (const row of demoPlots) expect(asked).toEqual(expect.arrayContaining(Object.keys(row)));
    for (const [name, rows] of Object.entries(demoPrices)) {
      const table = pricesTemplate.tables.find((one) => one.name === name);
      const typed = table?.columns.filter(({ kind }) => kind === 'input').map(({ header }) => header);
      expect(table?.rows?.map(([row]) => row)).toEqual(expect.arrayContaining(Object.keys(rows)));
      for (const cells of Object.values(rows))
        expect(typed).toEqual(expect.arrayContaining(Object.keys(cells)));
    }
    const lines = allTemplates.flatMap(({ form }) => form).map(({ name }) => name);
    expect(lines).toEqual(expect.arrayContaining(Object.keys(demoSeason)));
  });
});

describe('the lines above the tables', () => {
  /** Characters that fit between the first column and the pane in a window 1,280 wide; cautions are bold. */
  const inSight = { lead: 118, cautions: 110 };
  it.each(knownTemplates.map((template) => [template.sheet, template] as const))(
    'of %s are in sight',
    (_, template) => {
      const lines = [...template.lead, ...template.cautions];
      expect(lines.length).toBeGreaterThan(0);
      expect(template.lead.filter((line) => line.length > inSight.lead)).toEqual([]);
      expect(template.cautions.filter((line) => line.length > inSight.cautions)).toEqual([]);
    },
  );
});
