// @vitest-environment jsdom
/** The pane for somebody who types Spanish: the words of the functions stay in the cells, everything round them is said. */
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { OpenPane } from './openPane';

let pane: OpenPane;
let enter: typeof import('./openPane').enter;
let until: typeof import('./openPane').until;
let plotRows: () => Promise<readonly unknown[][]>;

beforeAll(async () => {
  globalThis.cucurbitLanguage = 'es';
  vi.resetModules();
  const opened = await import('./openPane');
  ({ enter, until } = opened);
  const { createFakeWorkbook } = await import('./fakeWorkbook');
  const { allTemplates } = await import('../../src/templates/sheets');
  const { fillSheets } = await import('../../src/workbook/fillSheets');
  const workbook = createFakeWorkbook();
  const plot = { Parcela: 'Ladera', Cultivo: 'calabacín', Disposición: 'hills' };
  const requests = allTemplates.map((template) => ({
    template,
    inputs: template.id === 'es.plots' ? [plot] : [],
    form: template.id === 'es.season' ? { ...opened.season, PLACE: 'Huerto inventado' } : {},
  }));
  await fillSheets(workbook, requests, 'made for the test');
  pane = await opened.openPaneOver(workbook);
  plotRows = async () =>
    (await workbook.readTable('Plots'))?.rows.map((cells) => [...cells].slice(0, 6)) ?? [];
}, 60_000);

afterAll(() => {
  globalThis.cucurbitLanguage = undefined;
});

const optionsOf = (label: string): readonly (readonly [value: string, text: string])[] =>
  [...(pane.field(label) as unknown as HTMLSelectElement).options].map(({ value, text }) => [value, text]);

describe('a choice', () => {
  it('is said in Spanish, with the word that goes into the cell', () => {
    expect(optionsOf('Disposición').slice(1)).toEqual([
      ['rows', 'surcos (rows)'],
      ['hills', 'golpes (hills)'],
      ['beds', 'camas (beds)'],
    ]);
    expect(optionsOf('Inicio').slice(1)).toEqual([
      ['seed', 'siembra directa (seed)'],
      ['transplant', 'trasplante (transplant)'],
    ]);
    expect(optionsOf('Tipo de flor')[2]).toEqual(['gynoecious', 'ginoica (gynoecious)']);
    expect(optionsOf('Unidades').slice(1)).toEqual([
      ['us', 'estadounidenses (us)'],
      ['metric', 'métricas (metric)'],
    ]);
    expect(optionsOf('Unidades de los problemas')).toEqual(optionsOf('Unidades'));
  });

  it('that differs from the sheet says in Spanish what the sheet has', () => {
    const units = pane.field('Unidades');
    enter(units, 'metric');
    expect(pane.described('Unidades')).toContain('La hoja dice estadounidenses (us).');
    enter(units, 'us');
  });
});

describe('a crop', () => {
  it('that is typed without its accent is known, and said by its name in the sheets', () => {
    pane.button('Parcela nueva').click();
    const [crop] = [...pane.root.querySelectorAll('label')].filter(
      (label) => label.textContent === 'Cultivo',
    );
    const field = pane.root.querySelector<HTMLInputElement>(`#${crop?.getAttribute('for')}`);
    if (field === null) throw new Error('no field for the crop');
    enter(field, 'melon chino');
    expect(field.getAttribute('aria-invalid')).toBeNull();
    expect(field.closest('.field')?.textContent).toContain('Tomado como melón, cuyas cifras');
    pane.button('Cerrar sin escribir').click();
  });
});

describe('pasted rows', () => {
  it('take Spanish words and dates, and either language’s headers', async () => {
    const paste = pane.field('Filas copiadas de una hoja, o el texto de un archivo CSV');
    enter(paste, 'Plot\tCrop\tDisposicion\tInicio\nVega\tsandia\tSurcos\tTrasplante\n');
    pane.button('Poner 1 parcela en la hoja').click();
    await until(() => expect(pane.spoken()).toContain('1 parcela se puso en la hoja.'));
    expect(await plotRows()).toEqual([
      ['Ladera', 'calabacín', 'hills', null, null, null],
      ['Vega', 'sandia', 'rows', null, null, 'transplant'],
    ]);
  });
});
