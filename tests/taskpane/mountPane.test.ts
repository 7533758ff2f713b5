// @vitest-environment jsdom
import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import { describe, expect, it, vi } from 'vitest';
import { english } from '../../src/texts/english';
import { paneTools } from '../../src/entries/paneTools';
import { mountPane } from '../../src/taskpane/mountPane';
import { createFakeWorkbook } from './fakeWorkbook';
import { enter, fillFake, openPane, until } from './openPane';

/** What cannot be known without a laid-out page is computed in paneColours.test.ts and looked at. */
const axeOptions: axe.RunOptions = {
  rules: { 'color-contrast': { enabled: false }, 'page-has-heading-one': { enabled: true } },
};

async function violations(root: HTMLElement): Promise<string[]> {
  document.documentElement.lang = 'en';
  document.title = 'pane';
  const found = await axe.run(root, axeOptions);
  expect(found.passes.length).toBeGreaterThan(10);
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
}

describe('to somebody who does not see the page', () => {
  it('is in order before there is a sheet', async () => {
    const { root } = await openPane();
    expect(await violations(root)).toEqual([]);
  });

  it('is in order with sheets, wrong fields, findings, and all opened', async () => {
    const pane = await openPane(async (workbook) => {
      await fillFake(workbook, [{ Plot: 'A', Crop: 'gourd' }]);
      workbook.compute(workbook.cell('Plots', 0, 'Plants'), { error: '#VALUE!', message: 'No row fits.' });
      workbook.compute(workbook.cell('Plots', 0, 'Notes'), 'Test the seed.');
    });
    for (const details of pane.root.querySelectorAll('details')) details.open = true;
    enter(pane.field('Risk those dates carry'), 'half');
    enter(pane.field('Place'), 'Elsewhere');
    pane.button('Refresh the sheets').click();
    await until(() => expect(pane.spoken()).toContain('Refreshed'));
    expect(await violations(pane.root)).toEqual([]);
  });

  it('is in order with a plot in its form, another half taken out, and all opened', async () => {
    const pane = await openPane((workbook) =>
      fillFake(workbook, [{ Plot: 'A', Crop: 'gourd' }, { Plot: 'B' }]),
    );
    pane.root.querySelector<HTMLInputElement>('[type=radio]')?.click();
    pane.button('Remove').click();
    pane.button('Change').click();
    for (const details of pane.root.querySelectorAll('details')) details.open = true;
    enter(pane.field('Plot'), 'b');
    pane.button('Put the plot into the sheet').click();
    await until(() => expect(pane.spoken()).toContain('Mend the marked fields'));
    expect(pane.described('Plot')).toContain('Another plot is called "b"');
    expect(document.activeElement).toBe(pane.field('Plot'));
    expect(await violations(pane.root)).toEqual([]);
  });

  it('has every id once and every reference resolved', async () => {
    const { root } = await openPane();
    const ids = [...root.querySelectorAll('[id]')].map((one) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const one of root.querySelectorAll('[aria-labelledby], [aria-describedby]')) {
      const wanted = `${one.getAttribute('aria-labelledby') ?? ''} ${one.getAttribute('aria-describedby') ?? ''}`;
      for (const id of wanted.split(' ').filter((word) => word !== '')) expect(ids).toContain(id);
    }
  });
});

describe('with the keyboard alone', () => {
  it('goes through fields and buttons in the order of the page, with no shortcut in between', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, []));
    const stops = [
      ...pane.root.querySelectorAll<HTMLElement>('a, input, select, textarea, button, summary'),
    ].filter(
      (one) =>
        one.closest('[hidden]') === null && one.closest('details:not([open]) > :not(summary)') === null,
    );
    expect(stops.every((one) => one.tabIndex <= 0 && !(one as HTMLButtonElement).disabled)).toBe(true);
    const names = stops.map((one) =>
      one.matches('input, select, textarea') ? one.getAttribute('name') : one.textContent,
    );
    expect(names).toEqual([
      'Todo en español',
      'Season',
      'Sheets',
      'Plots',
      'Calendar',
      'Weather',
      'Season questions',
      'Homework',
      'How a figure comes about',
      'To look at',
      'Crops',
      'Functions',
      'PLACE',
      'SEASON_YEAR',
      'LAST_FROST',
      'FIRST_FROST',
      'FROST_RISK',
      'UNITS',
      'ASSURANCE',
      'Seldom changed',
      'Put into the sheet',
      'Refresh the sheets',
      'Repair, and hand on',
      'New plot',
      'Paste plots from a sheet or a file',
      'Make the calendar',
      'given record',
      'given units',
      'given hemisphere',
      'Load a file',
      'How much row for a weekly harvest?',
      'How much seed for a stand?',
      'What still fits before frost?',
      'Make a sheet of problems',
      'Show the working of the selected cell',
      'Show the crops',
      'Show the functions',
      'Before you sow, spray, eat or can',
    ]);
  });

  it('jumps past the form to a section, whose link counts as its heading does', async () => {
    const pane = await openPane(async (workbook) => {
      await fillFake(workbook, [{ Plot: 'A', Crop: 'gourd' }]);
      workbook.compute(workbook.cell('Plots', 0, 'Notes'), 'Test the seed.');
    });
    // The test page lays nothing out and so cannot scroll.
    const scroll = vi.fn();
    Element.prototype.scrollIntoView = scroll;
    const link = [...pane.root.querySelectorAll('nav a')].find((one) => one.textContent === 'To look at (1)');
    const address = location.href;
    (link as HTMLAnchorElement).click();
    const heading = pane.section('To look at').querySelector('h2');
    expect(document.activeElement).toBe(heading);
    expect(scroll.mock.contexts).toEqual([heading]);
    expect(location.href).toBe(address);
  });

  it('sends the season by Enter in a field', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, []));
    enter(pane.field('Place'), 'Elsewhere', true);
    pane.field('Place').form?.requestSubmit();
    await until(() => expect(pane.spoken()).toContain('Put into the sheet: Place.'));
    expect(document.activeElement).toBe(pane.field('Place'));
  });
});

describe('the pane', () => {
  it('offers nothing that adds lines where the program cannot, and says what to do instead', async () => {
    const workbook = createFakeWorkbook();
    await fillFake(workbook, [{ Plot: 'A', Crop: 'gourd' }]);
    const shown = async (cannotAddRows: boolean): Promise<string[]> => {
      const root = document.createElement('main');
      document.body.replaceChildren(root);
      const handle = await mountPane(root, { ...workbook, cannotAddRows }, paneTools);
      const said = [...root.querySelectorAll('button, summary, p')]
        .filter((one) => one.closest('[hidden]') === null)
        .map((one) => one.textContent ?? '');
      handle.dispose();
      return said;
    };
    const { plots, paste } = english.pane;
    const adding = [plots.add, plots.copy, paste.heading];
    expect(await shown(false)).toEqual(expect.arrayContaining(adding));
    const old = await shown(true);
    for (const text of adding) expect(old).not.toContain(text);
    expect(old).toEqual(expect.arrayContaining([plots.cannotAdd, plots.edit]));
  });

  it('says the cautions', async () => {
    const { root } = await openPane();
    for (const caution of Object.values(english.cautions)) expect(root.textContent).toContain(caution);
  });

  it('says that it reads, and nothing of what it has not read, until the workbook was read once', async () => {
    for (const prepare of [fillFake, async () => {}]) {
      const workbook = createFakeWorkbook();
      await prepare(workbook, [{ Plot: 'A', Crop: 'gourd' }]);
      let calculate = (): void => {};
      const calculated = new Promise<void>((resolve) => (calculate = resolve));
      const settle = vi.fn(() => calculated.then(() => workbook.settle(0)));
      const root = document.createElement('main');
      document.body.replaceChildren(root);
      const mounted = mountPane(root, { ...workbook, settle }, paneTools);
      await until(() => expect(settle).toHaveBeenCalled());
      const { pane } = english;
      const shown = (): string[] =>
        [...root.querySelectorAll('a, button, dd, h2, p')]
          .filter((one) => one.closest('[hidden], .waiting') === null)
          .map((one) => one.textContent ?? '');
      const unread = shown();
      expect(unread).toContain(pane.reading);
      expect(unread.join(' ')).not.toContain(pane.sheets.fill);
      expect(unread).not.toContain(pane.sheets.missing);
      // What people typed needs no calculating.
      expect(unread.includes(pane.season.heading)).toBe(prepare === fillFake);
      calculate();
      const handle = await mounted;
      expect(shown()).not.toContain(pane.reading);
      expect(shown()).toContain(prepare === fillFake ? pane.sheets.refresh : pane.sheets.fill);
      expect(root.querySelectorAll('section[hidden], nav[hidden]')).toHaveLength(0);
      handle.dispose();
    }
  });

  it('opens over a workbook that cannot be read, says so, and reads again when asked', async () => {
    const workbook = createFakeWorkbook();
    workbook.failNext('settle', new Error('the engine is asleep'));
    const root = document.createElement('main');
    document.body.replaceChildren(root);
    const handle = await mountPane(root, workbook, paneTools);
    expect(root.querySelector('header')?.textContent).toContain('The sheets could not be read.');
    root.querySelector<HTMLButtonElement>('header button')?.click();
    await until(() => expect(root.querySelector('header [role=alert]')?.textContent).toBe(''));
    handle.dispose();
  });

  it('stops listening and leaves nothing behind when it is closed', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, []));
    expect(pane.workbook.listeners()).toBe(2);
    pane.workbook.tellChange();
    pane.handle.dispose();
    expect(pane.workbook.listeners()).toBe(0);
    expect(pane.root.childNodes).toHaveLength(0);
    expect(pane.root.className).toBe('');
    await new Promise((resolve) => setTimeout(resolve, 400));
    expect(pane.root.childNodes).toHaveLength(0);
  });

  it('has no style or script inside the page, for a content security policy', async () => {
    const { root } = await openPane((workbook) => fillFake(workbook, []));
    expect(root.querySelector('[style], style, script')).toBeNull();
    const handlers = [...root.querySelectorAll('*')]
      .flatMap((one) => one.getAttributeNames())
      .filter((name) => name.startsWith('on'));
    expect(handlers).toEqual([]);
  });

  it('styles every class that it uses', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, [{ Plot: 'A' }]));
    const css = readFileSync('src/taskpane/pane.css', 'utf8');
    const classes = new Set([...pane.root.querySelectorAll('[class]')].flatMap((one) => [...one.classList]));
    expect(classes.size).toBeGreaterThan(10);
    expect([...classes].filter((name) => !css.includes(`.${name}`))).toEqual([]);
  });
});
