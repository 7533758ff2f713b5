/** The sheets: one button that makes what is missing and renews our formulas in the rest. */
import { fillSheets, findSheet, type FillReport, type FillRequest } from '../workbook/fillSheets';
import type { CellValue, LiveWorkbook, SheetInfo } from '../workbook/port';
import type { SheetTemplate } from '../workbook/template';
import { withLaterHomework } from '../templates/homework';
import { manyPlots } from '../templates/plots';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { createAsks } from './asks';
import { element, paneId, section, setText } from './elements';
import { createNotice } from './notice';
import { failureSentence } from './problemSentence';
import { createToolsPart } from './toolsPart';

const { pane } = catalogue;

export interface SheetsSection {
  readonly element: HTMLElement;
  show(sheets: readonly SheetInfo[]): void;
}

/** The season as the pane has it, for a sheet that is not there yet; null while a field is wrong. */
type SeasonValues = () => Readonly<Record<string, CellValue>> | null;

export interface SheetsParts {
  readonly workbook: LiveWorkbook;
  readonly templates: readonly SheetTemplate[];
  readonly season: SheetTemplate;
  /** Whose sheet people type into once all are made. */
  readonly typedNext: SheetTemplate;
  readonly actions: Actions;
  readonly seasonValues: SeasonValues;
  readonly refresh: () => Promise<void>;
}

const words = pane.sheets;

export function createSheetsSection(parts: SheetsParts): SheetsSection {
  const { workbook, templates, season, actions } = parts;
  const { element: all } = section('sheets', words.heading);
  const states = templates.map((template) => ({ template, cell: element('dd') }));
  const list = element(
    'dl',
    { class: 'states' },
    ...states.map(({ template, cell }) => element('div', {}, element('dt', {}, template.sheet), cell)),
  );
  const button = element('button', { type: 'button', class: 'main' }, words.fill);
  const goOn = element('button', { type: 'button' }, pane.many.goOn);
  const leave = element('button', { type: 'button' }, pane.many.leave);
  const asks = createAsks('refresh', [goOn, leave]);
  const progress = createProgress();
  const notice = createNotice(actions);
  all.append(
    element('p', { class: 'lead' }, words.lead),
    list,
    element('div', { class: 'buttons' }, button),
    asks.element,
    progress.element,
    notice.element,
    createToolsPart(parts),
  );
  actions.add(button);

  const show = (sheets: readonly SheetInfo[]): void => {
    for (const { template, cell } of states) setText(cell, sayState(template, findSheet(sheets, template)));
    const isComplete = templates.every(
      (template) => template.optional === true || findSheet(sheets, template) !== undefined,
    );
    setText(button, isComplete ? words.refresh : words.fill);
  };

  const run = async (isSure: boolean): Promise<void> => {
    asks.hide();
    const there = await workbook.sheets();
    if (!isSure && findSheet(there, parts.typedNext) !== undefined) {
      const plots = await workbook.readTable(parts.typedNext.tables[0]?.name ?? '');
      const count = plots?.rows.length ?? 0;
      if (count > manyPlots) return asks.ask(fill(pane.many.refresh, { count }), button);
    }
    const isSeasonThere = findSheet(there, season) !== undefined;
    const form = isSeasonThere ? {} : parts.seasonValues();
    if (form === null) return notice.warn(words.seasonFirst);
    const wanted = withLaterHomework(templates, there).filter(
      (template) => template.optional !== true || findSheet(there, template) !== undefined,
    );
    const requests: FillRequest[] = wanted.map((template) => ({
      template,
      inputs: [],
      form: template === season ? form : {},
    }));
    notice.say(words.working);
    progress.start();
    const tell = (done: number): void => {
      const step = progress.show(done);
      if (step !== null) notice.say(fill(words.workedPercent, { percent: step }));
    };
    const report = await fillSheets(workbook, requests, pane.undo.sheets, tell);
    await parts.refresh();
    const blank = isSeasonThere ? [] : blankDates(season, form);
    notice.say([sayReport(report), ...sayNext(report, parts.typedNext, blank)].join(' '));
  };

  const start = (isSure: boolean): void =>
    void actions.run(() =>
      run(isSure)
        .catch((cause: unknown) => notice.warn(failureSentence(cause)))
        .finally(() => progress.stop()),
    );
  button.addEventListener('click', () => start(false));
  goOn.addEventListener('click', () => start(true));
  leave.addEventListener('click', asks.hide);
  show([]);
  return { element: all, show };
}

function sayState(template: SheetTemplate, sheet: SheetInfo | undefined): string {
  if (sheet === undefined) return template.optional === true ? words.notAsked : words.missing;
  if (sheet.locked) return words.locked;
  return sheet.name === template.sheet ? words.there : fill(words.thereAs, { name: sheet.name });
}

function sayReport({ made, refreshed, kept, gone }: FillReport): string {
  const sentences: string[] = [];
  if (made.length > 0) sentences.push(fill(words.made, { sheets: made.join(', ') }));
  if (refreshed.length > 0) sentences.push(fill(words.refreshed, { sheets: refreshed.join(', ') }));
  if (kept > 0) sentences.push(fill(words.kept, { count: kept }));
  if (gone.length > 0) sentences.push(sayGone(gone));
  return sentences.join(' ');
}

/** @param blank labels of what is asked before a line can be computed */
function sayNext({ made }: FillReport, typedNext: SheetTemplate, blank: readonly string[]): string[] {
  const sheet = made.find((name) => name.startsWith(typedNext.sheet));
  if (sheet === undefined) return [];
  return [
    blank.length === 0
      ? fill(words.madeNext, { sheet })
      : fill(words.madeNextDates, { sheet, labels: blank.join(', ') }),
  ];
}

/** Nothing stands in for a date of the season. */
function blankDates({ form }: SheetTemplate, given: FillRequest['form']): string[] {
  const dates = form.filter(({ kind, format }) => kind === 'input' && format === 'date');
  return dates.filter(({ name }) => (given[name] ?? null) === null).map(({ label }) => label);
}

const mostRowsNamed = 5;

function sayGone(gone: FillReport['gone']): string {
  const rows = gone.slice(0, mostRowsNamed).map(({ sheet, row }) => fill(words.goneRow, { sheet, row }));
  const more = gone.length - rows.length;
  if (more > 0) rows.push(fill(words.goneMore, { more }));
  return fill(words.gone, { rows: rows.join('; ') });
}

interface ProgressBar {
  readonly element: HTMLElement;
  start(): void;
  /** The quarter reached, as per cent, when it is a new one: often enough to be spoken. */
  show(done: number): number | null;
  stop(): void;
}

function createProgress(): ProgressBar {
  const id = paneId('progress');
  const bar = element('progress', { id, max: 1 });
  const all = element(
    'div',
    { class: 'progress', hidden: true },
    element('label', { for: id }, words.progress),
    bar,
  );
  let quarter = 0;
  return {
    element: all,
    start() {
      quarter = 0;
      // Without a value the bar says that work goes on, not how far.
      bar.removeAttribute('value');
      all.hidden = false;
    },
    show(done) {
      bar.value = Math.min(1, Math.max(0, done));
      const reached = Math.floor(bar.value * 4);
      if (reached <= quarter || reached >= 4) return null;
      quarter = reached;
      return quarter * 25;
    },
    stop() {
      all.hidden = true;
    },
  };
}
