/** A daily record out of rows that were copied, or out of a text file: looked at first, then put into the sheets. */
import { refuseHugeFile } from '../workbook/fileLimits';
import { todaySerial } from '../workbook/today';
import type { WeatherRecord } from '../templates/weather';
import type { Hemisphere, ReadWeather, Units } from '../templates/weatherTools';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import { element, paneId, setText } from './elements';

const words = english.pane.weather.record;

export interface RecordParts {
  readonly readWeather: ReadWeather;
  readonly addButton: (button: HTMLButtonElement) => void;
  /** An action whose failure is said. */
  readonly run: (action: () => Promise<void>) => void;
  readonly put: (record: WeatherRecord, hemisphere: Hemisphere) => Promise<void>;
}

export interface RecordPart {
  readonly element: HTMLElement;
  /** Once the record is in the sheets. */
  clear(): void;
}

export function createRecordPart({ readWeather, addButton, run, put: putIn }: RecordParts): RecordPart {
  const id = paneId('given record');
  const area = element('textarea', {
    id,
    name: 'given record',
    rows: 6,
    spellcheck: false,
    'aria-describedby': `${id}-help`,
  });
  const units = createChoice('given units', words.units, words.unitsHelp, words.unitsChoices);
  const hemisphere = createChoice(
    'given hemisphere',
    words.hemisphere,
    words.hemisphereHelp,
    words.hemisphereChoices,
  );
  const state = element('p', { role: 'status', class: 'hint' });
  const doubts = element('ul', { class: 'problems' });
  const put = element('button', { type: 'button', class: 'main', hidden: true });
  const clear = element('button', { type: 'button', hidden: true }, words.clear);
  const load = element('button', { type: 'button' }, words.load);
  // Pressed by the button, which says what it is for.
  const chooser = element('input', { type: 'file', accept: '.csv,.tsv,.txt', hidden: true });
  for (const button of [put, clear, load]) addButton(button);
  let record: WeatherRecord | null = null;
  const placed = (): Hemisphere => (hemisphere.select.value === 'south' ? 'south' : 'north');

  const look = (): void => {
    const isEmpty = area.value.trim() === '';
    const chosen = units.select.value;
    const read = readWeather(area.value, {
      units: chosen === '' ? undefined : (chosen as Units),
      hemisphere: placed(),
      today: todaySerial(),
    });
    record = isEmpty ? null : read.record;
    setText(state, isEmpty ? '' : record === null ? words.stopped : read.found);
    doubts.replaceChildren(
      ...(isEmpty ? [] : read.doubts).map(({ line, sentence, stops }) =>
        element('li', stops ? { class: 'wrong' } : {}, fill(words.line, { line, sentence })),
      ),
    );
    put.hidden = record === null;
    clear.hidden = area.value === '';
    setText(put, fill(words.put, { count: record?.days.length ?? 0 }));
  };
  for (const field of [area, units.select, hemisphere.select]) field.addEventListener('input', look);
  // By itself the browser takes seconds for a thousand lines, and four times as long for twice as many.
  area.addEventListener('paste', (event) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (text === '') return;
    event.preventDefault();
    area.setRangeText(text, area.selectionStart, area.selectionEnd, 'end');
    look();
  });
  put.addEventListener('click', () => {
    const given = record;
    if (given !== null) run(() => putIn(given, placed()));
  });
  load.addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', () => {
    const file = chooser.files?.[0];
    if (file !== undefined) {
      run(async () => {
        refuseHugeFile(file.name, file.size);
        area.value = await file.text();
        look();
      });
    }
    // The same file can be chosen again.
    chooser.value = '';
  });
  const empty = (): void => {
    area.value = '';
    look();
  };
  clear.addEventListener('click', () => {
    empty();
    area.focus();
  });

  return {
    element: element(
      'div',
      {},
      element('h3', {}, words.heading),
      element(
        'div',
        { class: 'field' },
        element('label', { for: id }, words.label),
        element('div', { class: 'control' }, area),
        element('p', { id: `${id}-help`, class: 'help' }, words.help),
      ),
      element('div', { class: 'fields' }, units.element, hemisphere.element),
      element('div', { class: 'buttons' }, load, clear),
      chooser,
      state,
      doubts,
      element('div', { class: 'buttons' }, put),
    ),
    clear: empty,
  };
}

interface Choice {
  readonly element: HTMLElement;
  readonly select: HTMLSelectElement;
}

function createChoice(
  name: string,
  label: string,
  help: string,
  choices: Readonly<Record<string, string>>,
): Choice {
  const id = paneId(name);
  const options = Object.entries(choices).map(([value, text]) => element('option', { value }, text));
  const select = element('select', { id, name, 'aria-describedby': `${id}-help` }, ...options);
  return {
    element: element(
      'div',
      { class: 'field' },
      element('label', { for: id }, label),
      element('div', { class: 'control' }, select),
      element('p', { id: `${id}-help`, class: 'help' }, help),
    ),
    select,
  };
}
