/** What the Weather sheet asks: fields over its form, and the crop and day of a plot put into them at once. */
import type { CellValue, ReadValue } from '../workbook/port';
import { readForm, writeForm, type FormRead } from '../workbook/readForm';
import type { LinesRead } from '../workbook/readLines';
import { starts } from '../templates/plots';
import { weatherTemplate } from '../templates/weather';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, paneId } from './elements';
import { createFormField } from './formField';
import { plotName } from './plotRow';
import type { WeatherDesk } from './weatherDesk';

const words = catalogue.pane.weather.choices;
const { columns } = catalogue.sheets.plots;
const inputs = weatherTemplate.form.filter(({ kind }) => kind === 'input');

export interface WeatherChoices {
  readonly element: HTMLElement;
  show(read: FormRead, plots: LinesRead | null): void;
}

export function createWeatherChoices(desk: WeatherDesk): WeatherChoices {
  const { workbook, say, warn } = desk;
  const fields = inputs.map((line) => createFormField(line, () => mark()));
  const plotId = paneId('compared plot');
  const plot = element('select', { id: plotId, 'aria-describedby': `${plotId}-help` });
  const put = element('button', { type: 'submit' }, words.put);
  desk.addButton(put);
  let sown: readonly SownPlot[] = [];

  const mark = (): void => {
    for (const field of fields) {
      const checked = field.check();
      field.markWrong(field.isDone() && 'wrong' in checked ? checked.wrong : null);
    }
  };
  const write = async (): Promise<void> => {
    for (const field of fields) field.setDone();
    mark();
    const wrong = fields.filter((field) => 'wrong' in field.check());
    wrong[0]?.focus();
    if (wrong.length > 0) return warn(fill(words.toMend, { count: wrong.length }));
    const values = Object.fromEntries(
      fields
        .filter((field) => field.isTouched())
        .flatMap((field): [string, CellValue][] => {
          const checked = field.check();
          return 'value' in checked ? [[field.line.name, checked.value]] : [];
        }),
    );
    await putValues(values);
  };
  const putValues = async (values: Readonly<Record<string, CellValue>>): Promise<void> => {
    if (Object.keys(values).length === 0) return say(words.nothing);
    const read = await readForm(workbook, weatherTemplate);
    if (read === null) return;
    const kept = await writeForm(workbook, read, values, catalogue.pane.undo.weatherChoices);
    await desk.refresh();
    const labelled = (names: readonly string[]): string =>
      inputs
        .filter(({ name }) => names.includes(name))
        .map(({ label }) => label)
        .join(', ');
    if (kept.length > 0) return warn(fill(words.kept, { labels: labelled(kept) }));
    say(fill(words.written, { labels: labelled(Object.keys(values)) }));
  };
  const form = element(
    'form',
    { novalidate: true, 'aria-label': words.heading },
    element(
      'div',
      { class: 'field' },
      element('label', { for: plotId }, words.plot),
      element('div', { class: 'control' }, plot),
      element('p', { id: `${plotId}-help`, class: 'help' }, words.plotHelp),
    ),
    element('div', { class: 'fields' }, ...fields.map((field) => field.element)),
    element('div', { class: 'buttons' }, put),
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    desk.run(write);
  });
  plot.addEventListener('change', () => {
    const chosen = sown[plot.selectedIndex - 1];
    if (chosen !== undefined) {
      desk.run(() => putValues({ HEAT_CROP: chosen.crop, HEAT_SOWING: chosen.day }));
    }
  });

  return {
    element: element('details', {}, element('summary', {}, words.heading), form),
    show(read, plots) {
      for (const field of fields) field.show(read.values[field.line.name] ?? null, true);
      const now = plots === null ? [] : sownPlots(plots);
      if (JSON.stringify(now) === JSON.stringify(sown) && plot.options.length > 0) return;
      sown = now;
      const names = [words.plotChoose, ...sown.map(({ name }) => name)];
      plot.replaceChildren(...names.map((name) => element('option', {}, name)));
    },
  };
}

interface SownPlot {
  readonly name: string;
  readonly crop: string;
  readonly day: number;
}

/** Plots that are sown where they grow, on a known day: heat is counted from sowing. */
function sownPlots({ lines }: LinesRead): readonly SownPlot[] {
  return lines.flatMap((line, index): SownPlot[] => {
    const crop: ReadValue = line.values[columns.takenAs.header] ?? null;
    const day = line.values[columns.setOutOrSow.header] ?? null;
    const start = String(line.values[columns.start.header] ?? '');
    const isSown = start === '' || start.toLowerCase() === starts[0];
    return isSown && typeof crop === 'string' && crop !== '' && typeof day === 'number'
      ? [{ name: plotName(line, index), crop, day }]
      : [];
  });
}
