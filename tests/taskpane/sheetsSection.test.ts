// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { HostError, type HostProblem } from '../../src/workbook/port';
import { failureSentence } from '../../src/taskpane/problemSentence';
import { enter, fillFake, openPane, until, type OpenPane } from './openPane';

const isIdle = (pane: OpenPane) => (): void => expect(pane.root.getAttribute('aria-busy')).toBe('false');

describe('filling the sheets', () => {
  it('makes all that are missing, from the season as the pane has it', async () => {
    const pane = await openPane();
    expect(pane.section('Sheets').textContent).toContain('Seasonnot there yet');
    enter(pane.field('Last frost of spring'), '2027-05-02');
    enter(pane.field('First frost of fall'), '2027-10-10');
    enter(pane.field('Units'), 'metric');
    pane.button('Fill the sheets').click();
    await until(() =>
      expect(pane.spoken()).toContain(
        'Made: Season, Plots, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges.',
      ),
    );
    expect(pane.spoken()).toContain('Next: type a line for each plot in Plots.');
    const { workbook } = pane;
    const value = async (name: string): Promise<unknown> =>
      (await workbook.read(workbook.named(name))).values[0]?.[0];
    expect(await value('LAST_FROST')).toBe(46509);
    expect(await value('FIRST_FROST')).toBe(46670);
    expect(await value('UNITS')).toBe('metric');
    expect(await value('ASSURANCE')).toBe(0.9);
    expect(pane.section('Season').textContent).not.toContain('not in it yet');
    expect(pane.button('Put into the sheet').hidden).toBe(false);
    expect(pane.button('Refresh the sheets')).toBeDefined();
  });

  it('without frosts says that they are next', async () => {
    const pane = await openPane();
    pane.button('Fill the sheets').click();
    await until(() =>
      expect(pane.spoken()).toContain(
        'without them: Last frost of spring, First frost of fall. Then type a line for each plot in Plots.',
      ),
    );
  });

  it('asks before it renews more plots than the engine bears, and lets go on or leave', async () => {
    const plots = Array.from({ length: 1501 }, (_, i) => ({ Plot: `Lot ${i}` }));
    const pane = await openPane((workbook) => fillFake(workbook, plots));
    const changes = pane.workbook.changes.length;
    pane.button('Refresh the sheets').click();
    await until(() => expect(document.activeElement).toBe(pane.button('Go on')));
    expect(pane.section('Sheets').textContent).toContain('The Plots sheet has 1501 lines.');
    await until(isIdle(pane));
    pane.button('Leave the sheets as they are').click();
    expect(document.activeElement).toBe(pane.button('Refresh the sheets'));
    expect(pane.workbook.changes).toHaveLength(changes);
    pane.button('Refresh the sheets').click();
    await until(() => expect(document.activeElement).toBe(pane.button('Go on')));
    await until(isIdle(pane));
    pane.button('Go on').click();
    await until(() =>
      expect(pane.spoken()).toContain(
        'Refreshed: Season, Plots, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges.',
      ),
    );
    // 1,501 plots are filled and renewed: on a busy machine more than a minute.
  }, 300_000);

  it('passes over a name in use', async () => {
    const pane = await openPane(async (workbook) => workbook.addForeignSheet('Plots'));
    pane.button('Fill the sheets').click();
    await until(() =>
      expect(pane.spoken()).toContain(
        'Made: Season, Plots 2, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges.',
      ),
    );
    expect(pane.section('Sheets').textContent).toContain('in this workbook, called "Plots 2"');
  });

  it('does not start while a field of the season is wrong', async () => {
    const pane = await openPane();
    enter(pane.field('Last frost of spring'), '2027-05-02');
    enter(pane.field('First frost of fall'), '2027-04-10');
    pane.button('Fill the sheets').click();
    await until(() => expect(pane.spoken()).toContain('Nothing was filled. Mend the marked fields'));
    expect(document.activeElement).toBe(pane.field('First frost of fall'));
    expect(pane.workbook.changes).toHaveLength(0);
  });

  it('opens the seldom changed figures when one of them is wrong', async () => {
    const pane = await openPane();
    enter(pane.field('Transplants culled'), '500');
    pane.button('Fill the sheets').click();
    await until(() => expect(document.activeElement).toBe(pane.field('Transplants culled')));
    expect(pane.field('Transplants culled').closest('details')?.open).toBe(true);
  });
});

describe('refreshing the sheets', () => {
  it('renews the formulas, leaves what was typed over them, and counts it', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, [{ Plot: 'A', Crop: 'gourd' }]));
    pane.workbook.type(pane.workbook.cell('Plots', 0, 'Plants'), 40);
    pane.button('Refresh the sheets').click();
    await until(() =>
      expect(pane.spoken()).toContain(
        'Refreshed: Season, Plots, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges. 1 cell holds something typed',
      ),
    );
    pane.workbook.type(pane.workbook.cell('Plots', 0, 'Yield'), 300);
    await until(isIdle(pane));
    pane.button('Refresh the sheets').click();
    await until(() =>
      expect(pane.spoken()).toContain('2 cells hold something typed over a formula and were left alone'),
    );
    const { values } = await pane.workbook.read(pane.workbook.cell('Plots', 0, 'Plants'));
    expect(values).toEqual([[40]]);
  });

  it('names rows of ours that are gone', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, []));
    pane.workbook.type(pane.workbook.cell('Crops', 9, 'Crop'), 'mine');
    pane.button('Refresh the sheets').click();
    await until(() => expect(pane.spoken()).toContain('No longer there: gourd in Crops. If they are wanted'));
    for (let row = 0; row < 6; row++) pane.workbook.type(pane.workbook.cell('Crops', row, 'Crop'), row);
    await until(isIdle(pane));
    pane.button('Refresh the sheets').click();
    await until(() => expect(pane.spoken()).toMatch(/No longer there: (.+ in Crops; ){5}2 more\./));
  });

  it('leaves changes in the fields for their own button', async () => {
    const pane = await openPane((workbook) => fillFake(workbook, []));
    enter(pane.field('Risk those dates carry'), '10');
    pane.button('Refresh the sheets').click();
    await until(() => expect(pane.spoken()).toContain('Refreshed'));
    expect(pane.field('Risk those dates carry').value).toBe('10');
    expect(pane.described('Risk those dates carry')).toContain('The sheet says 50 %');
  });
});

describe('while it works', () => {
  it('shows how far, holds every button that writes, keeps the focus, and takes no second click', async () => {
    const pane = await openPane();
    const release = pane.workbook.hold();
    const fill = pane.button('Fill the sheets');
    fill.focus();
    fill.click();
    fill.click();
    await until(() =>
      expect(pane.root.querySelector('progress')?.closest<HTMLElement>('.progress')?.hidden).toBe(false),
    );
    expect(pane.root.getAttribute('aria-busy')).toBe('true');
    expect(fill.getAttribute('aria-disabled')).toBe('true');
    expect(pane.button('Put into the sheet').getAttribute('aria-disabled')).toBe('true');
    expect(pane.spoken()).toContain('Working on the sheets…');
    expect(document.activeElement).toBe(fill);
    fill.click();
    release();
    await until(isIdle(pane));
    expect(pane.workbook.changes).toHaveLength(1);
    expect(document.activeElement).toBe(fill);
    expect(fill.getAttribute('aria-disabled')).toBe('false');
    expect(pane.root.querySelector('progress')?.closest<HTMLElement>('.progress')?.hidden).toBe(true);
  });
});

describe('a refusal', () => {
  it('is said at once, with what to do, and that nothing was changed', async () => {
    const pane = await openPane();
    pane.workbook.failNext('apply', new HostError({ code: 'tableNameTaken', table: 'Plots' }));
    pane.button('Fill the sheets').click();
    await until(() =>
      expect(pane.section('Sheets').querySelector('[role=alert]')?.textContent).toBe(
        'Nothing was changed. The workbook has another table called "Plots". Rename that table, then try again.',
      ),
    );
    expect(pane.section('Sheets').querySelector('[role=status]')?.textContent).toBe('');
    await until(isIdle(pane));
    pane.button('Fill the sheets').click();
    await until(() =>
      expect(pane.spoken()).toContain(
        'Made: Season, Plots, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges.',
      ),
    );
  });

  const problems: readonly HostProblem[] = [
    { code: 'sheetNameTaken', sheet: 'Plots' },
    { code: 'noSuchSheet', sheet: 'Plots' },
    { code: 'noSuchTable', table: 'Plots' },
    { code: 'nameTaken', name: 'UNITS' },
    { code: 'tableNameTaken', table: 'Plots' },
    { code: 'changedMeanwhile', sheet: 'Plots' },
    { code: 'sheetLocked', sheet: 'Plots' },
    { code: 'cellsInTheWay', sheet: 'Plots', row: 11, column: 27 },
    { code: 'sheetDamaged', sheet: 'Plots', missing: 'Width' },
    { code: 'columnGone', sheet: 'Plots', missing: 'Width' },
    { code: 'daysFrom1904' },
    { code: 'notInFront' },
    { code: 'changedByOthers' },
    { code: 'cellsJoined' },
    { code: 'tooLarge' },
    { code: 'fileExists', file: 'plan.xlsx' },
    { code: 'fileNotWritable', file: 'plan.xlsx' },
    { code: 'failed', action: 'filling' },
  ];
  it.each(problems)('for $code names what it is about and leaves no placeholder', (problem) => {
    const { code, ...about } = problem;
    const sentence = failureSentence(new HostError(problem));
    expect(sentence).not.toMatch(/[{}]/);
    expect(sentence).not.toContain(code);
    for (const [key, value] of Object.entries(about)) {
      if (key !== 'row' && key !== 'column') expect(sentence).toContain(value);
    }
    if (code === 'cellsInTheWay') expect(sentence).toContain('AB12');
  });

  it('that was not foreseen keeps what the program said', () => {
    expect(failureSentence(new Error('out of memory'))).toMatch(
      /not foreseen.*The program said: out of memory$/,
    );
  });
});
