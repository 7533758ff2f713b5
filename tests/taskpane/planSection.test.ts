// @vitest-environment jsdom
/** The pane where plans are opened and kept, over a desk of workbooks in memory. */
import axe from 'axe-core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Desk, Filling, Keeping, Started } from '../../src/workbook/desk';
import { HostError, type LiveWorkbook } from '../../src/workbook/port';
import type { PlanFiles } from '../../src/taskpane/planSection';
import { paneTools } from '../../src/entries/paneTools';
import { showPlans } from '../../src/taskpane/showPlans';
import { plotsTemplate } from '../../src/templates/plots';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import { createFakeWorkbook, type FakeWorkbook } from './fakeWorkbook';
import { fillFake, until } from './openPane';

const { plan } = english.pane;
const noon: Keeping = { code: 'kept', at: new Date(2027, 4, 2, 12, 30).getTime() };

interface FakeDesk extends Desk {
  readonly shown: FakeWorkbook[];
  tell(keeping: Keeping): void;
  /** What is put aside, and what opening it gives; null where it cannot be read. */
  aside: { text: string; opens: FakeWorkbook | null } | null;
  /** What `takeOver` opens. */
  kept: FakeWorkbook | null;
  listeners(): number;
}

function createFakeDesk(found: Started['found'] = 'nothing'): FakeDesk {
  const listening = new Set<() => void>();
  const shown: FakeWorkbook[] = [];
  let keeping = noon;
  let before: FakeWorkbook | null = null;
  const show = (workbook: FakeWorkbook): FakeWorkbook => {
    before = shown.at(-1) ?? null;
    shown.push(workbook);
    return workbook;
  };
  const filled = async (filling: Filling): Promise<FakeWorkbook> => {
    const workbook = createFakeWorkbook();
    await filling(workbook);
    return workbook;
  };
  const desk: FakeDesk = {
    shown,
    kept: null,
    aside: null,
    countAside: () => (desk.aside === null ? 0 : 1),
    asideText: () => desk.aside?.text ?? '',
    async openAside() {
      const opens = desk.aside?.opens ?? null;
      if (opens === null) return { workbook: shown.at(-1) as FakeWorkbook, isOpened: false };
      desk.aside = null;
      return { workbook: show(opens), isOpened: true };
    },
    start: async (filling) => ({ workbook: show(await filled(filling)), found }),
    replace: async (filling) => show(await filled(filling)),
    hasBefore: () => before !== null,
    bringBack: async () => show(before ?? createFakeWorkbook()),
    takeOver: async () => desk.kept && show(desk.kept),
    keeping: () => keeping,
    onKeeping(listener) {
      listening.add(listener);
      return () => listening.delete(listener);
    },
    tell(next) {
      keeping = next;
      listening.forEach((listener) => listener());
    },
    listeners: () => listening.size,
  };
  return desk;
}

const plotsIn = async (workbook: LiveWorkbook | undefined): Promise<unknown[]> =>
  (await workbook?.readTable('Plots'))?.rows.map(([name]) => name) ?? [];

describe('a page that opens and keeps plans', () => {
  let root: HTMLElement;
  let desk: FakeDesk;
  let files: PlanFiles;
  beforeEach(() => {
    root = document.createElement('main');
    document.body.replaceChildren(root);
    desk = createFakeDesk();
    files = {
      write: async () => Uint8Array.of(80, 75),
      read: async () => ({ refused: 'There is nothing in it.' }),
    };
  });
  afterEach(() => vi.restoreAllMocks());

  const button = (name: string): HTMLButtonElement => {
    const found = [...root.querySelectorAll('button')].find((one) => one.textContent === name && !one.hidden);
    if (found === undefined) throw new Error(`no button ${name}`);
    return found;
  };
  const said = (): string => root.querySelector('section')?.textContent ?? '';
  const open = () => showPlans(root, desk, files, paneTools, '');

  it('begins with the invented garden and says that it is invented, and until when it is kept', async () => {
    await open();
    expect((await plotsIn(desk.shown[0]))[0]).toBe('Creek 1');
    expect(said()).toContain(plan.demo);
    expect(said()).toMatch(/Kept in this browser as you type, last at May 2, 2027, 12:30.PM\./);
    expect(desk.shown[0]?.revealed).toMatchObject([{ sheet: 'Plots', row: 0 }]);
    expect((await axe.run(root, { rules: { 'color-contrast': { enabled: false } } })).violations).toEqual([]);
  });

  it('has the garden begun anew where it was left in the other language; a plan in it stays as it is', async () => {
    const inSpanish = { ...plotsTemplate, id: 'es.plots', sheet: 'Parcelas' };
    const workbook = createFakeWorkbook();
    await fillSheets(workbook, [{ template: inSpanish, inputs: [{ Plot: 'Arroyo 1' }], form: {} }], '');
    let isOld: Parameters<Desk['start']>[1] = () => false;
    desk.start = async (_, asked) => {
      isOld = asked;
      return { workbook, found: 'kept' };
    };
    await open();
    expect(root.textContent).toContain(english.pane.language.sheetsInOther);
    const marksOf = async (port: LiveWorkbook) => (await port.sheets()).map(({ mark }) => mark);
    expect(isOld(await marksOf(workbook))).toBe(true);

    desk = createFakeDesk();
    await open();
    expect(isOld(await marksOf(desk.shown[0] ?? workbook))).toBe(false);
  });

  it('says what could not be opened, and nothing where what was kept is there', async () => {
    desk = createFakeDesk('unreadable');
    await open();
    expect(said()).toContain(plan.unreadable);
    desk = createFakeDesk('kept');
    await open();
    expect(said()).not.toContain(plan.demo);
  });

  it.each(['otherTab', 'otherTabClosed', 'storageFull', 'brokenOff', 'noStorage'] as const)(
    'says at once when nothing is kept any more, and why: %s',
    async (code) => {
      await open();
      desk.tell({ code });
      const alerts = [...root.querySelectorAll('[role=alert]')].map((one) => one.textContent);
      expect(alerts).toContain(plan.keeping[code]);
      expect(said()).not.toContain('Kept in this browser as you type');
      desk.tell(noon);
      expect(said()).toContain('Kept in this browser as you type');
    },
  );

  it('takes over what another tab kept once that is closed', async () => {
    await open();
    expect(() => button(plan.take)).toThrow('no button');
    desk.tell({ code: 'otherTabClosed' });
    button(plan.take).click();
    await until(() => expect(said()).toContain(plan.notTaken));
    desk.kept = createFakeWorkbook();
    button(plan.take).click();
    await until(() => expect(said()).toContain(plan.tookOver));
    expect(desk.shown.at(-1)).toBe(desk.kept);
  });

  it('hands out the file, and names the sheets that are not in it', async () => {
    const made: Blob[] = [];
    URL.createObjectURL = (blob: Blob) => `blob:test/${made.push(blob)}`;
    URL.revokeObjectURL = () => undefined;
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    await open();
    const workbook = desk.shown[0];
    workbook?.addForeignSheet('Scratch');
    workbook?.addForeignSheet('Kitchen');
    workbook?.type({ sheet: 'Kitchen', row: 0, column: 0 }, 'beans');
    button(plan.save).click();
    await until(() => expect(said()).toContain('Not in it: Kitchen.'));
    expect((click.mock.contexts[0] as HTMLAnchorElement).download).toBe('cucurbit-plan.xlsx');
    expect(made.map(({ size }) => size)).toEqual([2]);
  });

  it('names the columns of people’s own in tables of ours, which are not in it', async () => {
    URL.createObjectURL = () => 'blob:test/1';
    URL.revokeObjectURL = () => undefined;
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    await open();
    const workbook = desk.shown[0] as FakeWorkbook;
    const { readTable } = workbook;
    workbook.readTable = async (name) => {
      const table = await readTable(name);
      return table === null || name !== 'Calendar' ? table : { ...table, headers: [...table.headers, 'Who'] };
    };
    button(plan.save).click();
    await until(() =>
      expect(said()).toContain('Not in it, for it is a column of your own: Who in Calendar.'),
    );
  });

  it('names by plot and column what is typed over formulas of Plots, the first of many', async () => {
    URL.createObjectURL = () => 'blob:test/1';
    URL.revokeObjectURL = () => undefined;
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    await open();
    const workbook = desk.shown[0];
    workbook?.type(workbook.cell('Plots', 0, 'Days to spare'), 7);
    button(plan.save).click();
    await until(() =>
      expect(said()).toContain('Not in it, for it is typed over a formula: Days to spare of Creek 1.'),
    );
    for (const header of ['Plants', 'Seed to sow', 'Yield', 'Notes']) {
      for (const row of [1, 2]) workbook?.type(workbook.cell('Plots', row, header), 'mine');
    }
    button(plan.save).click();
    await until(() => expect(said()).toContain('Notes of Creek 2'));
    expect(said()).toMatch(/formula: Days to spare of Creek 1, Plants of Creek 2, .* and 1 more\./);
  });

  it('says why there is no file', async () => {
    files.write = async () => null;
    await open();
    button(plan.save).click();
    await until(() => expect(said()).toContain(plan.noPlan));
    files.write = () => Promise.reject(new Error('out of paper'));
    button(plan.save).click();
    await until(() => expect(said()).toContain('out of paper'));
  });

  it('offers what was put aside as it is kept, and to try it again', async () => {
    const made: Blob[] = [];
    URL.createObjectURL = (blob: Blob) => `blob:test/${made.push(blob)}`;
    URL.revokeObjectURL = () => undefined;
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    desk.aside = { text: '{"version":2}', opens: null };
    await open();
    expect(said()).toContain('1 plan kept in this browser could not be opened and is put aside.');
    button(plan.aside.save).click();
    await until(() => expect(said()).toContain(plan.saved));
    expect((click.mock.contexts[0] as HTMLAnchorElement).download).toBe('cucurbit-plan-put-aside.json');
    expect(made.map(({ size }) => size)).toEqual(['{"version":2}'.length]);
    button(plan.aside.open).click();
    await until(() => expect(said()).toContain(plan.aside.still));
    const again = createFakeWorkbook();
    desk.aside.opens = again;
    button(plan.aside.open).click();
    await until(() => expect(said()).toContain(plan.aside.opened));
    expect(desk.shown.at(-1)).toBe(again);
    const hints = [...root.querySelectorAll('p')].filter((one) =>
      one.textContent?.includes('could not be opened and'),
    );
    expect(hints.map((hint) => hint.parentElement?.hidden)).toEqual([true]);
  });

  /** As a person does after the button: in a window of the browser's own. */
  const choose = (name: string, size = 2): void => {
    const chooser = root.querySelector<HTMLInputElement>('input[type=file]');
    const file = Object.assign(new File(['PK'], name), { arrayBuffer: async () => new ArrayBuffer(2) });
    Object.defineProperty(file, 'size', { value: size });
    Object.defineProperty(chooser, 'files', { value: [file], configurable: true });
    Object.defineProperty(chooser, 'value', { value: '', writable: true, configurable: true });
    chooser?.dispatchEvent(new Event('change'));
  };

  it('opens a plan out of a file, and says what came of it', async () => {
    await open();
    const click = vi.spyOn(HTMLInputElement.prototype, 'click');
    button(plan.open).click();
    expect(click).toHaveBeenCalledTimes(1);
    files.read = async (name, bytes, workbook) => {
      expect([name, bytes.length, workbook]).toEqual(['my plan.xlsx', 2, desk.shown[0]]);
      const said = Array.from({ length: 10 }, (_, index) => `Sentence ${index}.`);
      return { fill: (fresh) => fillFake(fresh as FakeWorkbook, [{ Plot: 'Mine' }]), said };
    };
    choose('my plan.xlsx');
    await until(() => expect(said()).toContain('Sentence 0. Sentence 1.'));
    expect(said()).toContain('Sentence 7. And 2 more of the kind.');
    expect(await plotsIn(desk.shown[1])).toEqual(['Mine']);
  });

  it('changes nothing for a file that cannot be read, and says why', async () => {
    await open();
    choose('empty.csv');
    await until(() => expect(said()).toContain('Nothing was changed. There is nothing in it.'));
    files.read = () => Promise.reject(new HostError({ code: 'fileOtherKind', kind: '.xls' }));
    choose('old.xls');
    await until(() => expect(said()).toContain('Nothing was changed. The file is of the kind .xls.'));
    files.read = () => Promise.reject(new Error('must not be read'));
    choose('huge.xlsx', 1e9);
    await until(() => expect(said()).toContain('holds far more than a plan'));
    choose('huge.csv', 1e9);
    await until(() => expect(said()).toContain('far larger than a list of plots'));
    expect(desk.shown).toHaveLength(1);
  });

  it('asks before another plan takes the place of this one, and brings it back', async () => {
    await open();
    button(plan.emptyAgain.button).click();
    expect(document.activeElement).toBe(button(plan.no));
    button(plan.no).click();
    expect(document.activeElement).toBe(button(plan.emptyAgain.button));
    expect(desk.shown).toHaveLength(1);
    button(plan.emptyAgain.button).click();
    button(`Yes: ${plan.emptyAgain.button}`).click();
    await until(() => expect(said()).toContain(plan.emptyAgain.done));
    expect(await plotsIn(desk.shown[1])).toEqual([null]);
    // The pane is over the new one alone.
    expect(desk.shown.map((workbook) => workbook.listeners())).toEqual([0, 2]);
    expect(desk.listeners()).toBe(1);
    expect(document.activeElement?.textContent).toBe(plan.heading);
    button(plan.back).click();
    await until(() => expect(said()).toContain(plan.broughtBack));
    expect((await plotsIn(desk.shown[2]))[0]).toBe('Creek 1');
  });

  it('takes the keyboard at once, and not from somebody who types while the plan is still read', async () => {
    await open();
    const grid = document.createElement('button');
    document.body.append(grid);
    let goOn = (): void => undefined;
    const read = new Promise<void>((resolve) => (goOn = resolve));
    const before = desk.replace;
    desk.replace = async (filling) => {
      const workbook = await before(filling);
      vi.spyOn(workbook, 'settle').mockReturnValueOnce(read.then(() => []));
      return workbook;
    };
    button(plan.emptyAgain.button).click();
    button(`Yes: ${plan.emptyAgain.button}`).click();
    await until(() => expect(document.activeElement?.textContent).toBe(plan.heading));
    expect(root.textContent).toContain(english.pane.reading);
    grid.focus();
    goOn();
    await until(() => expect(root.textContent).not.toContain(english.pane.reading));
    await new Promise((resolve) => setTimeout(resolve));
    expect(document.activeElement).toBe(grid);
  });
});
