/** A pane over a workbook in memory, and how a person finds their way in it. */
import { vi } from 'vitest';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellValue, LiveWorkbook } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';
import { allTemplates } from '../../src/templates/sheets';
import { paneTools } from '../../src/entries/paneTools';
import { mountPane, type PaneHandle } from '../../src/taskpane/mountPane';
import type { PaneTools } from '../../src/taskpane/paneTools';
import { createFakeWorkbook, type FakeWorkbook } from './fakeWorkbook';

export interface OpenPane<Workbook extends LiveWorkbook = FakeWorkbook> {
  readonly root: HTMLElement;
  readonly workbook: Workbook;
  readonly handle: PaneHandle;
  field(label: string): HTMLInputElement;
  button(text: string): HTMLButtonElement;
  section(heading: string): HTMLElement;
  /** All that live regions say now. */
  spoken(): string;
  /** What describes a field: unit, note, what is wrong, help. */
  described(label: string): string;
}

/** 2 May and 10 October 2027. */
export const season: Readonly<Record<string, CellValue>> = {
  PLACE: 'Invented garden',
  SEASON_YEAR: 2027,
  LAST_FROST: 46509,
  FIRST_FROST: 46670,
};

export async function fillFake(workbook: LiveWorkbook, plots: readonly InputRow[]): Promise<void> {
  const requests = allTemplates.map((template) => ({
    template,
    inputs: template.id === 'plots' ? plots : [],
    form: template.id === 'season' ? season : {},
  }));
  await fillSheets(workbook, requests, 'made for the test');
}

export async function openPane(prepare?: (workbook: FakeWorkbook) => Promise<void>): Promise<OpenPane> {
  const workbook = createFakeWorkbook();
  await prepare?.(workbook);
  return openPaneOver(workbook);
}

export async function openPaneOver<Workbook extends LiveWorkbook>(
  workbook: Workbook,
  tools: PaneTools = paneTools,
): Promise<OpenPane<Workbook>> {
  const root = document.createElement('main');
  document.body.replaceChildren(root);
  const handle = await mountPane(root, workbook, tools);
  const find = <Found extends Element>(selector: string, text: string): Found => {
    const found = [...root.querySelectorAll<Found>(selector)].find((one) => one.textContent === text);
    if (found === undefined) throw new Error(`no ${selector} says "${text}"`);
    return found;
  };
  const field = (label: string): HTMLInputElement => {
    const control = root.querySelector<HTMLInputElement>(`#${find('label', label).getAttribute('for')}`);
    if (control === null) throw new Error(`${label} labels nothing`);
    return control;
  };
  return {
    root,
    workbook,
    handle,
    field,
    button: (text) => find('button', text),
    section(heading) {
      const all = [...root.querySelectorAll<HTMLElement>('section')];
      const found = all.find((one) => one.querySelector('h2')?.textContent?.startsWith(heading));
      if (found === undefined) throw new Error(`no section ${heading}`);
      return found;
    },
    spoken: () =>
      [...root.querySelectorAll('[role=status], [role=alert]')]
        .map((one) => one.textContent)
        .filter((text) => text !== '')
        .join(' | '),
    described: (label) =>
      (field(label).getAttribute('aria-describedby') ?? '')
        .split(' ')
        .map((id) => root.querySelector(`#${id}`)?.textContent ?? '')
        .filter((text) => text !== '')
        .join(' | '),
  };
}

/** As a person does: into the field, other text, and out again unless `stay`. */
export function enter(field: HTMLInputElement, text: string, stay = false): void {
  field.focus();
  field.value = text;
  field.dispatchEvent(new Event('input', { bubbles: true }));
  if (!stay) field.blur();
}

export async function until(check: () => void): Promise<void> {
  await vi.waitFor(check, { timeout: 20_000, interval: 10 });
}
