// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { fillFake, openPane, until, type OpenPane } from './openPane';

const plots = [
  { Plot: 'Creek', Crop: 'gourd' },
  { Plot: 'Slope', Crop: 'pumpkin' },
];
const noRoom = { error: '#VALUE!', message: 'No row fits.' };

async function withFindings(): Promise<OpenPane> {
  return openPane(async (workbook) => {
    await fillFake(workbook, plots);
    workbook.compute(workbook.cell('Plots', 0, 'Notes'), 'Choose a quicker type. ');
    workbook.compute(workbook.cell('Plots', 1, 'Notes'), 'Test the seed. ');
    workbook.compute(workbook.cell('Plots', 1, 'Plants'), noRoom);
    workbook.compute(workbook.cell('Plots', 1, 'Seed to sow'), { error: '#VALUE!', message: null });
  });
}

const buttonsOf = (pane: OpenPane): string[] =>
  [...pane.section('To look at').querySelectorAll('button')].map((button) => button.textContent);

describe('what to look at', () => {
  it('lists errors before remarks, each under its plot, and counts them', async () => {
    const pane = await withFindings();
    const all = pane.section('To look at');
    expect(all.querySelector('h2')?.textContent).toBe('To look at (3)');
    expect([...all.querySelectorAll('h3, .row-name, button')].map((one) => one.textContent)).toEqual([
      'Errors (1)',
      'Slope',
      'Plants: No row fits.',
      'Remarks (2)',
      'Creek',
      'Choose a quicker type.',
      'Slope',
      'Test the seed.',
    ]);
    expect(pane.spoken()).toContain('To look at: 1 error, 2 remarks.');
  });

  it('gives advice on an error that says nothing itself', async () => {
    const pane = await openPane(async (workbook) => {
      await fillFake(workbook, plots);
      workbook.compute(workbook.cell('Plots', 1, 'Plants'), { error: '#N/A', message: null });
    });
    expect(buttonsOf(pane)).toEqual([
      'Plants: #N/A. If the program says no more at the cell, a cell that it reads is in error, or its formula was changed.',
    ]);
  });

  it('goes to the cell', async () => {
    const pane = await withFindings();
    pane.button('Plants: No row fits.').click();
    pane.button('Choose a quicker type.').click();
    expect(pane.workbook.revealed).toEqual([
      pane.workbook.cell('Plots', 1, 'Plants'),
      pane.workbook.cell('Plots', 0, 'Notes'),
    ]);
  });

  it('says why when the cell cannot be shown', async () => {
    const pane = await withFindings();
    pane.workbook.failNext('reveal', new Error('the sheet is hidden'));
    pane.button('Plants: No row fits.').click();
    await until(() => expect(pane.spoken()).toContain('The cell could not be shown.'));
  });

  it('follows the workbook and keeps the focus on the same finding', async () => {
    const pane = await withFindings();
    pane.button('Test the seed.').focus();
    pane.workbook.compute(pane.workbook.cell('Plots', 1, 'Plants'), 40);
    pane.workbook.compute(pane.workbook.cell('Plots', 1, 'Seed to sow'), 60);
    await until(() => expect(pane.spoken()).toContain('To look at: 0 errors, 2 remarks.'));
    expect(document.activeElement).toBe(pane.button('Test the seed.'));
    pane.workbook.compute(pane.workbook.cell('Plots', 1, 'Notes'), '');
    await until(() => expect(buttonsOf(pane)).toEqual(['Choose a quicker type.']));
    expect(pane.section('To look at').contains(document.activeElement)).toBe(true);
    pane.workbook.compute(pane.workbook.cell('Plots', 0, 'Notes'), '');
    await until(() => expect(pane.spoken()).toBe('Nothing to look at.'));
    expect(pane.section('To look at').textContent).toContain('no error, no remark');
  });

  it('does not touch the list when it says the same', async () => {
    const pane = await withFindings();
    const before = pane.button('Test the seed.');
    pane.workbook.compute(pane.workbook.named('FROST_FREE_DAYS'), 161);
    await until(() => expect(pane.section('Season').textContent).toContain('161'));
    expect(pane.button('Test the seed.')).toBe(before);
  });

  it('has the errors of the season too, and its doubt about the year', async () => {
    const pane = await withFindings();
    const { workbook } = pane;
    workbook.compute(workbook.named('FROST_FREE_DAYS'), {
      error: '#VALUE!',
      message: 'The frosts are reversed.',
    });
    workbook.compute(workbook.named('SET_OUT_DATE'), { error: '#VALUE!', message: null });
    const doubt = 'The last frost is in another year: retype the dates or the year';
    workbook.compute(workbook.named('YEAR_CHECK'), doubt);
    await until(() =>
      expect(buttonsOf(pane)).toEqual([
        'Days between the frosts: The frosts are reversed.',
        'Plants: No row fits.',
        doubt,
        'Choose a quicker type.',
        'Test the seed.',
      ]),
    );
    pane.button(doubt).click();
    expect(workbook.revealed).toEqual([workbook.named('YEAR_CHECK')]);
  });

  it('says of a line typed too low that it is not in the table, and leads there', async () => {
    const pane = await withFindings();
    const last = pane.workbook.cell('Plots', 1, 'Plot');
    const low = { ...last, row: last.row + 2 };
    pane.workbook.type(low, 'Lane');
    const said =
      `Row ${low.row + 1} of Plots is not in the table, so nothing is computed for it. ` +
      'If it is a plot, move it up under the last line.';
    await until(() => expect(buttonsOf(pane)).toContain(said));
    expect(pane.spoken()).toContain('To look at: 1 error, 3 remarks.');
    pane.button(said).click();
    expect(pane.workbook.revealed).toEqual([low]);
    pane.workbook.select(low);
    await until(() => expect(pane.spoken()).toContain(`: ${said}`));
  });

  it('names a row without a name by its number', async () => {
    const pane = await openPane(async (workbook) => {
      await fillFake(workbook, [{ Crop: 'gourd' }]);
      workbook.compute(workbook.cell('Plots', 0, 'Plants'), noRoom);
    });
    const { row } = pane.workbook.cell('Plots', 0, 'Plants');
    expect(pane.root.querySelector('.row-name')?.textContent).toBe(`Row ${row + 1}, no name`);
  });

  it('keeps two plots of one name apart', async () => {
    const pane = await openPane(async (workbook) => {
      await fillFake(workbook, [{ Plot: 'Twin' }, { Plot: 'Twin' }]);
      workbook.compute(workbook.cell('Plots', 0, 'Notes'), 'one');
      workbook.compute(workbook.cell('Plots', 1, 'Notes'), 'two');
    });
    expect(pane.root.querySelectorAll('.row-name')).toHaveLength(2);
  });

  it('shows text from the sheet as text', async () => {
    const pane = await openPane(async (workbook) => {
      await fillFake(workbook, [{ Plot: '<img src=x>' }]);
      workbook.compute(workbook.cell('Plots', 0, 'Notes'), '<b>bold</b>');
    });
    expect(pane.button('<b>bold</b>')).toBeDefined();
    expect(pane.root.querySelector('img, b')).toBeNull();
  });

  it('shows 200 of a thousand plots in good time and says how many more', async () => {
    const pane = await openPane(async (workbook) => {
      await fillFake(
        workbook,
        Array.from({ length: 1000 }, (_, n) => ({ Plot: `P${n}`, Crop: 'gourd' })),
      );
    });
    for (let row = 0; row < 1000; row++) {
      pane.workbook.compute(pane.workbook.cell('Plots', row, 'Notes'), `remark ${row}`);
    }
    pane.workbook.compute(pane.workbook.cell('Plots', 999, 'Plants'), noRoom);
    await until(() => expect(pane.spoken()).toContain('To look at: 1 error, 1000 remarks.'));
    expect(buttonsOf(pane)).toHaveLength(200);
    expect(buttonsOf(pane)[0]).toBe('Plants: No row fits.');
    expect(pane.section('To look at').textContent).toContain('and 801 more. The first 200 are shown.');
  });
});

describe('before there is a sheet', () => {
  it('says when there will be something, and announces nothing', async () => {
    const pane = await openPane();
    expect(pane.section('To look at').textContent).toContain('once the sheets are filled');
    expect(pane.spoken()).toBe('');
  });
});

describe('the selected cell', () => {
  it('says what its error says', async () => {
    const pane = await withFindings();
    const area = pane.workbook.cell('Plots', 1, 'Plants');
    pane.workbook.select(area);
    await until(() => expect(pane.spoken()).toMatch(/Selected cell [A-Z]+\d+: No row fits\./));
    pane.workbook.select(pane.workbook.cell('Plots', 0, 'Plants'));
    await until(() => expect(pane.spoken()).not.toContain('Selected cell'));
    pane.workbook.select(pane.workbook.cell('Plots', 1, 'Seed to sow'));
    await until(() => expect(pane.spoken()).toContain('#VALUE!. If the program says no more at the cell'));
  });

  it('says what is remarked on it', async () => {
    const pane = await withFindings();
    pane.workbook.select(pane.workbook.cell('Plots', 0, 'Notes'));
    await until(() => expect(pane.spoken()).toMatch(/Selected cell [A-Z]+\d+: Choose a quicker type\.( |$)/));
    pane.workbook.compute(pane.workbook.cell('Plots', 0, 'Notes'), '');
    await until(() => expect(pane.spoken()).not.toContain('Selected cell'));
  });

  it('forgets an answer that a later selection has overtaken', async () => {
    const pane = await withFindings();
    pane.workbook.select(pane.workbook.cell('Plots', 1, 'Plants'));
    pane.workbook.select(pane.workbook.cell('Plots', 0, 'Plants'));
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect(pane.spoken()).not.toContain('Selected cell');
  });

  it('follows when the error is mended', async () => {
    const pane = await withFindings();
    const area = pane.workbook.cell('Plots', 1, 'Plants');
    pane.workbook.select(area);
    await until(() => expect(pane.spoken()).toContain('Selected cell'));
    pane.workbook.compute(area, 40);
    await until(() => expect(pane.spoken()).not.toContain('Selected cell'));
  });
});
