/** In a page of our own: whether the plan is kept, its way out as a file, and another plan in its place. */
import type { Desk, FileRead, Filling } from '../workbook/desk';
import { refuseHugeFile } from '../workbook/fileLimits';
import type { LiveWorkbook, SheetInfo } from '../workbook/port';
import { findTypedOver, readLines, type LinesRead } from '../workbook/readLines';
import type { SheetTemplate } from '../workbook/template';
import { withLaterHomework } from '../templates/homework';
import { plotsTable } from '../templates/plots';
import { knownTemplates } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { locale } from '../texts/language';
import type { Actions } from './actions';
import { createAsks } from './asks';
import { element, section, setText } from './elements';
import { handOut } from './handOut';
import { createNotice } from './notice';
import { plotName } from './plotRow';
import { failureSentence } from './problemSentence';

const { plan: words, nothingChanged } = catalogue.pane;

const xlsxType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** More sentences than these are too many to take in at once. */
const mostSaid = 8;

/** Plans as files. */
export interface PlanFiles {
  /** The .xlsx of the plan; null where the workbook has no sheet of ours. @throws HostError */
  write(workbook: LiveWorkbook): Promise<Uint8Array | null>;
  /** @param workbook what is open: a list of plots goes with its season. @throws HostError */
  read(name: string, bytes: Uint8Array, workbook: LiveWorkbook): Promise<FileRead>;
}

/** What a spreadsheet program does for its own workbooks. */
export interface PlanPlace {
  readonly desk: Desk;
  readonly files: PlanFiles;
  readonly fillDemo: Filling;
  readonly fillEmpty: Filling;
  /** What led to this workbook; '' where there is nothing to say. */
  readonly said: string;
  /** From now on the pane is over this workbook. */
  reopen(workbook: LiveWorkbook, said: string): Promise<void>;
}

export interface PlanSection {
  readonly element: HTMLElement;
  /** Ends the listening. */
  stop(): void;
}

export function createPlanSection(workbook: LiveWorkbook, place: PlanPlace, actions: Actions): PlanSection {
  const { desk, files } = place;
  const { element: all } = section('plan', words.heading);
  const kept = element('p', { class: 'lead' });
  const notKept = element('p', { role: 'alert', class: 'notice notice-bad' });
  const notice = createNotice(actions);

  const run = (action: () => Promise<void>): void => {
    void actions.run(() => action().catch((cause: unknown) => notice.warn(failureSentence(cause))));
  };
  const button = (label: string, action: () => Promise<void>): HTMLButtonElement => {
    const made = element('button', { type: 'button' }, label);
    actions.add(made);
    made.addEventListener('click', () => run(action));
    return made;
  };
  const save = async (): Promise<void> => {
    notice.say(words.saving);
    const bytes = await files.write(workbook);
    if (bytes === null) return notice.warn(words.noPlan);
    handOut(words.fileName, new Uint8Array(bytes), xlsxType);
    const lines = await readLines(workbook, plotsTable);
    const over = lines === null ? '' : nameTypedOver(lines);
    const there = await workbook.sheets();
    const templates = withLaterHomework(knownTemplates, there);
    const isOurs = ({ mark }: SheetInfo): boolean => templates.some(({ id }) => id === mark?.template);
    const own = there.filter((sheet) => sheet.used !== null && !isOurs(sheet));
    const sheets = own.map(({ name }) => name).join(', ');
    const columns = await nameOwnColumns(workbook, templates);
    const said = [
      words.saved,
      ...(own.length === 0 ? [] : [fill(words.ownSheets, { sheets })]),
      ...(columns === '' ? [] : [fill(words.ownColumns, { columns })]),
      ...(over === '' ? [] : [fill(words.typedOver, { cells: over })]),
    ];
    notice.say(said.join(' '));
  };
  const openFile = async (file: File): Promise<void> => {
    notice.say(words.opening);
    refuseHugeFile(file.name, file.size);
    const bytes = new Uint8Array(await file.arrayBuffer());
    const opened = await files.read(file.name, bytes, workbook);
    if ('refused' in opened) return notice.warn(`${nothingChanged} ${opened.refused}`);
    await place.reopen(await desk.replace(opened.fill), saySome(opened.said));
  };
  const takeOver = async (): Promise<void> => {
    const taken = await desk.takeOver();
    if (taken === null) notice.warn(words.notTaken);
    else await place.reopen(taken, words.tookOver);
  };
  const take = button(words.take, takeOver);
  const saveAside = async (): Promise<void> => {
    handOut(words.aside.fileName, desk.asideText(), 'application/json');
    notice.say(words.saved);
  };
  const openAside = async (): Promise<void> => {
    const { workbook: shown, isOpened } = await desk.openAside();
    await place.reopen(shown, isOpened ? words.aside.opened : words.aside.still);
  };
  const aside = element(
    'div',
    { hidden: desk.countAside() === 0 },
    element('p', { class: 'hint' }, fill(words.aside.there, { count: desk.countAside() })),
    element(
      'div',
      { class: 'buttons' },
      button(words.aside.save, saveAside),
      button(words.aside.open, openAside),
    ),
  );
  // Pressed by the button, which says what it is for.
  const chooser = element('input', { type: 'file', accept: '.xlsx,.csv,.tsv,.txt', hidden: true });
  const choose = element('button', { type: 'button' }, words.open);
  actions.add(choose);
  choose.addEventListener('click', () => {
    if (!actions.isBusy()) chooser.click();
  });
  chooser.addEventListener('change', () => {
    const file = chooser.files?.[0];
    if (file !== undefined) run(() => openFile(file));
    // The same file can be chosen again.
    chooser.value = '';
  });

  const showKeeping = (): void => {
    const keeping = desk.keeping();
    setText(kept, keeping.code === 'kept' ? fill(words.keeping.kept, { at: sayMoment(keeping.at) }) : '');
    kept.hidden = kept.textContent === '';
    setText(notKept, keeping.code === 'kept' ? '' : words.keeping[keeping.code]);
    take.hidden = keeping.code !== 'otherTabClosed';
  };

  all.append(
    kept,
    notKept,
    element('div', { class: 'buttons' }, button(words.save, save), choose, take),
    chooser,
    element('p', { class: 'help' }, words.fileHelp),
    notice.element,
    aside,
    createStartAgain(place, button),
  );
  showKeeping();
  notice.say(place.said);
  return { element: all, stop: desk.onKeeping(showKeeping) };
}

type MakeButton = (label: string, run: () => Promise<void>) => HTMLButtonElement;

/** Another plan in place of this one; asked once more before. */
function createStartAgain(place: PlanPlace, button: MakeButton): HTMLElement {
  const { desk } = place;
  let start = async (): Promise<void> => undefined;
  const yes = button('', () => start());
  const no = element('button', { type: 'button' }, words.no);
  const asks = createAsks('start-again', [yes, no]);
  no.addEventListener('click', asks.hide);
  const offer = (
    { button: label, done }: (typeof words)['demoAgain' | 'emptyAgain'],
    filling: Filling,
    isExample = false,
  ) => {
    const made = element('button', { type: 'button' }, label);
    made.addEventListener('click', () => {
      start = async () => place.reopen(await desk.replace(filling, isExample), done);
      setText(yes, fill(words.yes, { action: label }));
      asks.ask(words.ask, made);
      // Enter pressed twice puts no plan away.
      no.focus();
    });
    return made;
  };
  const back = button(words.back, async () => place.reopen(await desk.bringBack(), words.broughtBack));
  back.hidden = !desk.hasBefore();
  return element(
    'details',
    {},
    element('summary', {}, words.again),
    element('p', { class: 'help' }, words.againHelp),
    element(
      'div',
      { class: 'buttons' },
      offer(words.demoAgain, place.fillDemo, true),
      offer(words.emptyAgain, place.fillEmpty),
      back,
    ),
    asks.element,
  );
}

/** By plot and column, the first of them when they are many. */
function nameTypedOver(read: LinesRead): string {
  const over = findTypedOver(read, plotsTable);
  const named = over.slice(0, mostSaid).flatMap(({ index, header }) => {
    const line = read.lines[index];
    return line === undefined ? [] : [fill(words.typedCell, { plot: plotName(line, index), header })];
  });
  const more = over.length - named.length;
  return named.join(', ') + (more > 0 ? fill(catalogue.pane.tools.andMore, { more }) : '');
}

/** Columns that people put into tables of ours. */
async function nameOwnColumns(workbook: LiveWorkbook, templates: readonly SheetTemplate[]): Promise<string> {
  const tables = templates.flatMap((template) => template.tables);
  const named = await Promise.all(
    tables.map(async ({ name, columns }) => {
      const there = await workbook.readTable(name);
      const own =
        there?.headers.filter((header) => columns.every((column) => column.header !== header)) ?? [];
      return own.map((header) => fill(words.ownColumn, { header, sheet: there?.area.sheet ?? '' }));
    }),
  );
  return named.flat().join(', ');
}

function saySome(sentences: readonly string[]): string {
  const more = sentences.length - mostSaid;
  return [...sentences.slice(0, mostSaid), ...(more > 0 ? [fill(words.more, { count: more })] : [])].join(
    ' ',
  );
}

function sayMoment(at: number): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}
