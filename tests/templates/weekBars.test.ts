/** The bars of the Weeks sheet, as each program shades its cells: by the rules that came to be there. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { ConditionalFormattingService } from '@univerjs/sheets-conditional-formatting';
import { strFromU8, unzipSync } from 'fflate';
import { afterEach, expect, test } from 'vitest';
import { calendarTasks } from '../../src/functions/calendarTasks';
import { functions } from '../../src/functions';
import { startEngine } from '../../src/hosts/browser/engine';
import { openWorkbook } from '../../src/hosts/browser/openWorkbook';
import { openExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { demoPlots, demoSeason } from '../../src/templates/demoGarden';
import { makeCalendar } from '../../src/templates/makeCalendar';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates, functionNamespace } from '../../src/templates/sheets';
import { cellAddress } from '../../src/workbook/cellAddress';
import { shades } from '../../src/workbook/appearance';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { ReadValue, WorkbookPort } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';
import { openStandIn } from '../excelStandIn/openStandIn';
import { change } from '../contract/contractWorkbook';

const registered = [...functions.values()];
const settleMs = 60_000;

/** The fill and the text color that the rules of Weeks give to a cell; null where none meets it. */
type Shading = (
  row: number,
  column: number,
  value: ReadValue,
) => readonly [fill: unknown, color: unknown] | null;

interface Host {
  readonly port: WorkbookPort;
  shading(): Promise<Shading>;
}

const open: { end(): void }[] = [];
afterEach(() => {
  for (const one of open.splice(0)) one.end();
});

const hosts: Readonly<Record<string, () => Host>> = {
  file() {
    const port = createFileWorkbook({ functions: registered });
    return {
      port,
      async shading() {
        const path = join(mkdtempSync(join(tmpdir(), 'bars-')), 'plan.xlsx');
        await port.save(path, { replace: false });
        const parts = Object.entries(unzipSync(new Uint8Array(readFileSync(path))));
        rmSync(dirname(path), { recursive: true });
        return fileShading(new Map(parts.map(([name, part]) => [name, strFromU8(part)])));
      },
    };
  },
  browser() {
    const engine = startEngine(
      { functions: registered, namespace: functionNamespace, firstSheet: 'Notepad' },
      null,
    );
    const port = openWorkbook(engine, { onWrite: () => undefined, scrollTo: () => undefined });
    open.push({ end: () => port.dispose() });
    const service = engine.accessor.get(ConditionalFormattingService);
    return {
      port,
      async shading() {
        const sheetId = engine.workbook.getSheetBySheetName('Weeks')?.getSheetId() ?? '';
        return (row, column) => {
          const style = service.composeStyle(engine.unitId, sheetId, row, column)?.style;
          return style?.bg == null ? null : [style.bg.rgb, style.cl?.rgb];
        };
      },
    };
  },
  excel() {
    const standIn = openStandIn({ firstSheet: 'Notepad', functions: registered });
    open.push({ end: () => standIn.close() });
    return {
      port: openExcelWorkbook({ ...standIn, namespace: functionNamespace }),
      async shading() {
        const rules = standIn.book.sheets.find(({ name }) => name === 'Weeks')?.rules ?? [];
        return (row, column, value) => {
          const met = rules.find(({ span, properties }) => {
            const address = `${cellAddress(span.row, span.column)}:${cellAddress(span.row + span.rows - 1, span.column + span.columns - 1)}`;
            const { formula1, operator } = properties['rule'] as Excel.ConditionalCellValueRule;
            expect(operator).toBe('EqualTo');
            return isIn(address, row, column) && formula1 === `="${String(value)}"`;
          });
          return met === undefined ? null : [met.properties['fill'], met.properties['color']];
        };
      },
    };
  },
};

/** By ECMA-376 part 1, 18.3.1.10 (rules) and 18.8.14 (what they put over a cell's own look). */
function fileShading(parts: ReadonlyMap<string, string>): Shading {
  const number = [...(parts.get('xl/workbook.xml') ?? '').matchAll(/<sheet .*?name="([^"]*)"/g)].findIndex(
    ([, name]) => name === 'Weeks',
  );
  const sheet = parts.get(`xl/worksheets/sheet${number + 1}.xml`) ?? '';
  const looks = [...(parts.get('xl/styles.xml') ?? '').matchAll(/<dxf>.*?<\/dxf>/g)].map(([xml]) => ({
    fill: /<bgColor rgb="FF([0-9A-F]{6})"/.exec(xml)?.[1],
    color: /<font><color rgb="FF([0-9A-F]{6})"/.exec(xml)?.[1],
  }));
  const rules = [
    ...sheet.matchAll(
      /<conditionalFormatting sqref="([A-Z0-9:]+)"><cfRule type="cellIs" dxfId="(\d+)" priority="\d+" operator="equal"><formula>(.*?)<\/formula><\/cfRule>/g,
    ),
  ].map(([, range = '', look = '', formula = '']) => ({ range, look: looks[Number(look)], formula }));
  return (row, column, value) => {
    const quoted = [`"${String(value)}"`, `&quot;${String(value)}&quot;`];
    const met = rules.find(({ range, formula }) => isIn(range, row, column) && quoted.includes(formula));
    return met === undefined ? null : [`#${met.look?.fill}`, `#${met.look?.color}`];
  };
}

function isIn(range: string, row: number, column: number): boolean {
  const [from, to] = range.split(':').map((address) => {
    const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
    return [
      Number(digits) - 1,
      [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0) - 1,
    ];
  });
  const isBetween = (at: number, i: number): boolean => at >= (from?.[i] ?? NaN) && at <= (to?.[i] ?? NaN);
  return isBetween(row, 0) && isBetween(column, 1);
}

const shadeOf: Readonly<Record<string, readonly [string, string]>> = Object.fromEntries(
  Object.entries({ U: shades.pale, G: shades.middle, P: shades.deep }).map(([letter, { fill, color }]) => [
    letter,
    [`#${fill}`, `#${color}`],
  ]),
);

const namedLikeLetters: readonly InputRow[] = ['U', 'G', 'P'].map((Plot) => ({ ...demoPlots[0], Plot }));

/** How many cells have each letter: the shade of every cell of the table is looked at. */
async function checkBars({ port, shading }: Host): Promise<Record<string, number>> {
  await makeCalendar(port, calendarTasks, 'make');
  expect(await port.settle(settleMs)).toEqual([]);
  const table = await port.readTable('Weeks');
  const shade = await shading();
  const counts: Record<string, number> = { U: 0, G: 0, P: 0 };
  const firstWeek = table?.headers.indexOf('1') ?? -1;
  expect(firstWeek).toBeGreaterThan(0);
  table?.rows.forEach((values, i) =>
    values.forEach((value, j) => {
      const letter = j >= firstWeek && typeof value === 'string' ? value : '';
      const place = [table.area.row + 1 + i, table.area.column + j] as const;
      expect([...place, shade(...place, value)]).toEqual([...place, shadeOf[letter] ?? null]);
      if (letter in counts) counts[letter] = (counts[letter] ?? 0) + 1;
    }),
  );
  return counts;
}

test.each(Object.entries(hosts))(
  'in the %s host every letter has its shade and nothing else has, also in rows that came later',
  async (_, openHost) => {
    const host = openHost();
    const requests = allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? demoPlots : [],
      form: demoSeason,
    }));
    await fillSheets(host.port, requests, 'fill');
    expect(await host.port.settle(settleMs)).toEqual([]);
    const counts = await checkBars(host);
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(0);

    const plots = await host.port.readTable('Plots');
    const inputs = plotsTemplate.tables[0]?.columns ?? [];
    const rows = namedLikeLetters.map((row) =>
      inputs.map(({ header, compute }) => (compute === null ? (row[header] ?? null) : { compute })),
    );
    expect(plots).not.toBeNull();
    await host.port.apply(change({ tableRows: [{ table: 'Plots', rows }] }));
    expect(await host.port.settle(settleMs)).toEqual([]);
    const later = await checkBars(host);
    expect(later['P']).toBeGreaterThan(counts['P'] ?? 0);
  },
  8 * settleMs,
);

test.each(Object.entries(hosts))(
  'in the %s host a sheet that was made without the rules has them after a refresh',
  async (_, openHost) => {
    const host = openHost();
    const withoutRules: WorkbookPort = {
      ...host.port,
      apply: (asked, progress) =>
        host.port.apply(
          { ...asked, newSheets: asked.newSheets.map((sheet) => ({ ...sheet, rules: [] })) },
          progress,
        ),
    };
    const requests = allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? demoPlots.slice(0, 2) : [],
      form: demoSeason,
    }));
    await fillSheets(withoutRules, requests, 'fill');
    expect(await host.port.settle(settleMs)).toEqual([]);
    await fillSheets(host.port, requests, 'refresh');
    await fillSheets(host.port, requests, 'refresh again');
    expect(await host.port.settle(settleMs)).toEqual([]);
    const counts = await checkBars(host);
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(0);
  },
  8 * settleMs,
);
