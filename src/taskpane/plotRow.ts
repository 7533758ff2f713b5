/** A line of the Plots sheet in a few words. */
import { isCellError, type ReadValue } from '../workbook/port';
import type { Line, LinesRead } from '../workbook/readLines';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { PlotRow } from './plotList';

const words = catalogue.pane.plots;
const { plot, crop, length, width, plants, seedToSow, notes } = catalogue.sheets.plots.columns;

/** @param index of the line, from 0 */
export function plotName(line: Line, index: number): string {
  const name = say(line.values[plot.header]);
  return name === '' ? fill(words.unnamedLine, { line: index + 1 }) : name;
}

/** @param isSettled whether what is computed is this line's; else it is not shown */
export function plotRow(line: Line, index: number, units: LinesRead['units'], isSettled: boolean): PlotRow {
  const { values } = line;
  const size = [say(values[length.header]), say(values[width.header])];
  const parts = [
    say(values[crop.header]) || words.noCrop,
    ...(size.includes('')
      ? []
      : [
          fill(words.size, { length: size[0] ?? '', width: size[1] ?? '', unit: units[length.header] ?? '' }),
        ]),
    ...(isSettled ? sayComputed(line) : [words.calculating]),
  ];
  return {
    name: plotName(line, index),
    details: parts.join(words.separator),
    mark: isSettled ? markOf(line) : '',
  };
}

function sayComputed({ values }: Line): string[] {
  const grown = values[plants.header];
  const sown = values[seedToSow.header];
  return [
    ...(typeof grown === 'number' ? [fill(words.plants, { count: sayWhole(grown) })] : []),
    ...(typeof sown === 'number' ? [fill(words.seeds, { count: sayWhole(sown) })] : []),
  ];
}

function markOf({ values }: Line): string {
  if (Object.values(values).some(isCellError)) return words.toMendMark;
  return say(values[notes.header]) === '' ? '' : words.toLookAtMark;
}

function say(value: ReadValue | undefined): string {
  return value === undefined || value === null || isCellError(value) ? '' : String(value).trim();
}

function sayWhole(value: number): string {
  return String(Math.round(value));
}
