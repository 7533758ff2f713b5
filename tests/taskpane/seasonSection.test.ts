// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { HostError, type Change } from '../../src/workbook/port';
import { change } from '../contract/contractWorkbook';
import { enter, fillFake, openPane, until, type OpenPane } from './openPane';

const lastFrost = 'Last frost of spring';
const firstFrost = 'First frost of fall';
const risk = 'Risk those dates carry';
const assurance = 'Assurance of a full stand';
const place = 'Place';

const put = (pane: OpenPane): void => pane.button('Put into the sheet').click();

function lastChange(pane: OpenPane): Change {
  const change = pane.workbook.changes.at(-1);
  if (change === undefined) throw new Error('nothing was written');
  return change;
}

async function reread(pane: OpenPane, check: () => void): Promise<void> {
  pane.workbook.tellChange();
  await until(check);
}

describe('the fields over a sheet that is there', () => {
  let pane: OpenPane;
  beforeEach(async () => {
    pane = await openPane((workbook) => fillFake(workbook, []));
  });

  it('show what the cells say, each in its kind of field', () => {
    expect(pane.field(lastFrost).type).toBe('date');
    expect(pane.field(lastFrost).value).toBe('2027-05-02');
    expect(pane.field(risk).value).toBe('50');
    expect(pane.field('Units').tagName).toBe('SELECT');
    expect(pane.field('Units').value).toBe('us');
    expect(pane.field(place).value).toBe('Invented garden');
    expect(pane.field('Days clear before fall frost').value).toBe('');
  });

  it('are described by unit and remark', () => {
    expect(pane.described(risk)).toMatch(/^% \| 50% for a mean date/);
  });

  it('leave a formula that somebody typed into the sheet, and say so', async () => {
    const cell = pane.workbook.named('LAST_FROST');
    const cells = [{ ...cell, contents: [[{ compute: { value: 46509 } }]] }];
    await pane.workbook.apply(change({ cells }));
    pane.workbook.compute(cell, 46509);
    enter(pane.field(lastFrost), '2027-05-09');
    enter(pane.field(risk), '7');
    put(pane);
    const kept = `Left alone, for a formula stands there: ${lastFrost}.`;
    await until(() => expect(pane.spoken()).toContain(`Put into the sheet: ${risk}. ${kept}`));
    expect(lastChange(pane).cells.map(({ contents }) => contents)).toEqual([[[0.07]]]);
    expect(pane.field(lastFrost).value).toBe('2027-05-09');
  });

  it('write only what differs', async () => {
    enter(pane.field(risk), '7');
    enter(pane.field(firstFrost), '2027-10-20');
    put(pane);
    await until(() => expect(pane.spoken()).toContain('Put into the sheet'));
    const { cells, title, newSheets } = lastChange(pane);
    expect(title).toBe('Put the season into the sheet');
    expect(newSheets).toEqual([]);
    // 2027-10-20 is ten days after 46670; 7 % is 0.07, not 0.07000000000000001.
    expect(cells.map((cell) => cell.contents)).toEqual([[[46680]], [[0.07]]]);
    expect(cells[0]).toMatchObject({
      row: pane.workbook.named('FIRST_FROST').row,
      column: 1,
      sheet: 'Season',
    });
    expect(pane.spoken()).toContain(`${firstFrost}, ${risk}`);
    expect(pane.described(risk)).not.toContain('The sheet says');
  });

  it('are said to be put until the sheet says otherwise, as after an undo', async () => {
    enter(pane.field(risk), '7');
    put(pane);
    await until(() => expect(pane.spoken()).toContain(`Put into the sheet: ${risk}.`));
    await pane.workbook.apply(change({ cells: [{ ...pane.workbook.named('PLACE'), contents: [['Ours']] }] }));
    await reread(pane, () => expect(pane.field(place).value).toBe('Ours'));
    expect(pane.spoken()).not.toContain('Put into the sheet');
    enter(pane.field(risk), '8');
    put(pane);
    await until(() => expect(pane.spoken()).toContain(`Put into the sheet: ${risk}.`));
    const before = [{ ...pane.workbook.named('FROST_RISK'), contents: [[0.07]] }];
    await pane.workbook.apply(change({ cells: before }));
    await reread(pane, () => expect(pane.field(risk).value).toBe('7'));
    expect(pane.spoken()).not.toContain('Put into the sheet');
  });

  it('write nothing when nothing differs, also when it is written otherwise', async () => {
    const before = pane.workbook.changes.length;
    enter(pane.field(assurance), '90.0 %');
    expect(pane.field(assurance).value).toBe('90');
    put(pane);
    await until(() => expect(pane.spoken()).toContain('The sheet says the same already'));
    expect(pane.workbook.changes).toHaveLength(before);
  });

  it('empty a cell', async () => {
    enter(pane.field(place), '');
    put(pane);
    await until(() => expect(lastChange(pane).cells[0]?.contents).toEqual([[null]]));
  });

  it('keep text as text', async () => {
    enter(pane.field(place), '=2+2');
    put(pane);
    await until(() => expect(lastChange(pane).cells[0]?.contents).toEqual([['=2+2']]));
  });

  it.each([
    [assurance, '100', 'above 0 % and below 100 %'],
    [assurance, '0', 'above 0 % and below 100 %'],
    [assurance, '0.9', 'type 90'],
    [risk, '101', 'at least 0 % and at most 100 %'],
    [risk, '-1', 'at least 0 % and at most 100 %'],
    [risk, 'half', '"half" is not a number'],
    [risk, '50 %%', '"50 %" is not a number'],
    ['Seeds a tray cell', '1.5', 'not a whole number'],
    ['Seeds a tray cell', '0', 'at least 1'],
    ['Days clear before fall frost', '1,234', '"1,234" is not a number'],
    ['Year of the last frost', '27', 'at least 1901'],
  ])('refuse %s "%s" beside the field, and write nothing', (label, typed, advice) => {
    const before = pane.workbook.changes.length;
    enter(pane.field(label), typed);
    enter(pane.field(place), 'Elsewhere');
    expect(pane.described(label)).toContain(advice);
    expect(pane.field(label).getAttribute('aria-invalid')).toBe('true');
    put(pane);
    expect(pane.spoken()).toContain('Nothing was written. Mend the marked field first.');
    expect(document.activeElement).toBe(pane.field(label));
    expect(pane.workbook.changes).toHaveLength(before);
  });

  it('take a decimal comma', async () => {
    enter(pane.field(risk), '12,5');
    put(pane);
    await until(() => expect(lastChange(pane).cells[0]?.contents).toEqual([[0.125]]));
  });

  it('refuse reversed frost dates with advice for the south', () => {
    enter(pane.field(firstFrost), '2027-04-10');
    expect(pane.described(firstFrost)).toContain(
      '(Apr 10, 2027) must come after the last frost of spring (May 2, 2027). South of the equator',
    );
    enter(pane.field(firstFrost), '2028-04-10');
    expect(pane.field(firstFrost).hasAttribute('aria-invalid')).toBe(false);
    enter(pane.field(firstFrost), '2028-05-03');
    expect(pane.described(firstFrost)).toContain('367 days apart');
    enter(pane.field(firstFrost), '2028-05-02');
    expect(pane.field(firstFrost).hasAttribute('aria-invalid')).toBe(false);
  });

  it('say nothing is wrong before the person has left the field', () => {
    enter(pane.field(risk), '5x', true);
    expect(pane.described(risk)).not.toContain('not a number');
    pane.field(risk).blur();
    expect(pane.described(risk)).toContain('"5x" is not a number');
    enter(pane.field(risk), '5', true);
    expect(pane.field(risk).hasAttribute('aria-invalid')).toBe(false);
  });

  it('follow the grid without taking the focus', async () => {
    pane.field(place).focus();
    pane.workbook.type(pane.workbook.named('LAST_FROST'), 46514);
    await until(() => expect(pane.field(lastFrost).value).toBe('2027-05-07'));
    expect(document.activeElement).toBe(pane.field(place));
  });

  it('keep what the person is typing, and note what the sheet says', async () => {
    enter(pane.field(risk), '10', true);
    pane.workbook.type(pane.workbook.named('FROST_RISK'), 0.2);
    await until(() => expect(pane.described(risk)).toContain('The sheet says 20 %'));
    expect(pane.field(risk).value).toBe('10');
    pane.workbook.type(pane.workbook.named('FROST_RISK'), null);
    await until(() => expect(pane.described(risk)).toContain('The sheet is blank here'));
    pane.workbook.type(pane.workbook.named('FROST_RISK'), 0.1);
    await until(() => expect(pane.described(risk)).not.toContain('sheet'));
  });

  it('keep a number half typed that says the same so far', async () => {
    enter(pane.field(risk), '50.0', true);
    pane.workbook.type(pane.workbook.named('PLACE'), 'Moved');
    await until(() => expect(pane.field(place).value).toBe('Moved'));
    expect(pane.field(risk).value).toBe('50.0');
  });

  it('show before writing what somebody typed in the same cell meanwhile', async () => {
    const before = pane.workbook.changes.length;
    enter(pane.field(risk), '10');
    pane.workbook.type(pane.workbook.named('FROST_RISK'), 0.2);
    put(pane);
    await until(() => expect(pane.spoken()).toContain('changed in the same place meanwhile'));
    expect(pane.workbook.changes).toHaveLength(before);
    expect(pane.described(risk)).toContain('The sheet says 20 %');
    put(pane);
    await until(() => expect(pane.workbook.changes).toHaveLength(before + 1));
  });

  it('do not overwrite what somebody typed meanwhile in another cell', async () => {
    enter(pane.field(risk), '10');
    pane.workbook.type(pane.workbook.named('PLACE'), 'Typed in the grid');
    put(pane);
    await until(() => expect(pane.spoken()).toContain('Put into the sheet'));
    expect(lastChange(pane).cells).toHaveLength(1);
    expect(pane.field(place).value).toBe('Typed in the grid');
  });

  it('go back to what the sheet says, and the focus is not lost', () => {
    enter(pane.field(risk), '10');
    const back = pane.button('Drop my changes');
    expect(back.hidden).toBe(false);
    back.focus();
    back.click();
    expect(pane.field(risk).value).toBe('50');
    expect(back.hidden).toBe(true);
    expect(document.activeElement).toBe(pane.field(place));
  });

  it('name a cell that no field can show', async () => {
    pane.workbook.type(pane.workbook.named('LAST_FROST'), 'May 2');
    await until(() =>
      expect(pane.described(lastFrost)).toContain('The sheet says "May 2", which is not a date'),
    );
    pane.workbook.type(pane.workbook.named('UNITS'), 'furlongs');
    await until(() =>
      expect(pane.described('Units')).toContain('The sheet says "furlongs". Choose one of: us, metric'),
    );
    enter(pane.field(lastFrost), '2027-05-02');
    expect(pane.field(lastFrost).hasAttribute('aria-invalid')).toBe(false);
  });

  it('word a refusal and say that nothing was changed', async () => {
    enter(pane.field(risk), '10');
    pane.workbook.lock('Season');
    put(pane);
    await until(() =>
      expect(pane.spoken()).toContain(
        'Nothing was changed. The sheet "Season" is protected. Take the protection off, then try again.',
      ),
    );
    expect(pane.field(risk).value).toBe('10');
  });

  it('say it again when it happens again', async () => {
    enter(pane.field(risk), '10');
    for (const detail of ['one', 'two']) {
      pane.workbook.failNext(
        'apply',
        new HostError({ code: 'failed', action: 'writing' }, { cause: new Error(detail) }),
      );
      put(pane);
      await until(() => expect(pane.spoken()).toContain(`The program said: ${detail}`));
      await until(() => expect(pane.root.getAttribute('aria-busy')).toBe('false'));
    }
  });

  it('show what the sheet computes, and its errors', async () => {
    const { workbook } = pane;
    workbook.compute(workbook.named('FROST_FREE_DAYS'), 161);
    workbook.compute(workbook.named('SET_OUT_DATE'), 46523);
    workbook.compute(workbook.named('HARDEN_OFF_DATE'), {
      error: '#VALUE!',
      message: 'The last frost is missing.',
    });
    const result = (label: string): Element | null | undefined =>
      [...pane.root.querySelectorAll('dt')].find((term) => term.textContent === label)?.nextElementSibling;
    await until(() => expect(result('Days between the frosts')?.textContent).toBe('161'));
    expect(result('Set out transplants from')?.textContent).toBe('May 16, 2027');
    expect(result('Harden off from')?.textContent).toBe('Error: The last frost is missing.');
    expect(pane.root.querySelector('input[name=FROST_FREE_DAYS]')).toBeNull();
  });

  it('survive a sheet that lost a cell', async () => {
    pane.workbook.removeName('ASSURANCE');
    await reread(pane, () =>
      expect(pane.spoken()).toContain('"Season" is gone: "Assurance of a full stand"'),
    );
    expect(pane.button('Put into the sheet').hidden).toBe(true);
    expect(pane.button('Read the sheets again').hidden).toBe(false);
  });
});

describe('the fields before there is a sheet', () => {
  it("show the template's own values and offer nothing to write into", async () => {
    const pane = await openPane();
    expect(pane.field(risk).value).toBe('50');
    expect(pane.field('Units').value).toBe('us');
    expect(pane.field(lastFrost).value).toBe('');
    expect(pane.button('Put into the sheet').hidden).toBe(true);
    expect(pane.section('Season').textContent).toContain(
      'There is no Season sheet yet. "Fill the sheets" below',
    );
    expect(pane.section('Season').textContent).not.toContain('not in it yet');
  });
});
