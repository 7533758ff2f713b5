import type { CellContent, SheetTemplate, TableColumn, TableTemplate } from '../workbook/template';
import { call, column, input, operate, when } from '../workbook/expressions';
import { crops, traits, type Trait } from '../reference/crops';
import { english } from '../texts/english';

const words = english.sheets.crops;
const names = words.columns;
const units = input('UNITS');

const metricUnits: Readonly<Record<string, string>> = {
  ft: 'm',
  in: 'cm',
  F: '°C',
  seedsPerOz: 'seeds/g',
  lbPer100Ft: 'kg per 100 m',
};
const usUnits = english.units as Readonly<Record<string, string>>;

const unitOf = (trait: Trait): CellContent => {
  const us = usUnits[traits[trait].unit] ?? '';
  const metric = metricUnits[traits[trait].unit];
  return metric === undefined ? us : { compute: when(operate(units, '=', 'metric'), metric, us) };
};

const traitNames = Object.keys(traits) as Trait[];

/** Yields start from the low end; all else from the middle of the range. */
const figure = (trait: Trait, bound: 'low' | 'mid' | 'high'): CellContent => ({
  compute: call('CROP.VALUE', column(names.crop), trait, bound, units),
});

const columnOf = (header: string, width: number, unit: CellContent = null): TableColumn => ({
  header,
  kind: 'computed',
  compute: null,
  format: 'general',
  width,
  choices: [],
  note: '',
  unit,
});

const figureColumn = (trait: Trait, header: string, width: number): TableColumn => {
  const { unit } = traits[trait];
  // The same in both systems has no metric unit.
  const converts = metricUnits[unit] === undefined ? {} : { converts: unit };
  return { ...columnOf(header, width, unitOf(trait)), ...converts };
};

/** Of columns that hold words. */
const wordWidths: Partial<Record<Trait, number>> = { 'flower type': 16, species: 22 };

const usualFigures: TableTemplate = {
  name: 'Crops',
  heading: words.usual,
  grows: false,
  columns: [
    columnOf(names.crop, 22),
    ...traitNames.map((trait) => figureColumn(trait, trait, wordWidths[trait] ?? 13)),
    figureColumn('yield per 100', names.yieldHigh, 13),
  ],
  rows: crops.map((crop) => [
    crop.name,
    ...traitNames.map((trait) =>
      crop.figures[trait] === undefined
        ? words.noFigure
        : figure(trait, trait === 'yield per 100' ? 'low' : 'mid'),
    ),
    crop.figures['yield per 100'] === undefined ? words.noFigure : figure('yield per 100', 'high'),
  ]),
};

const understood: TableTemplate = {
  name: 'CropNames',
  heading: words.names,
  grows: false,
  columns: [columnOf(names.name, 22), columnOf(names.crop, 22)],
  rows: crops.flatMap((crop) => [crop.name, ...crop.synonyms].map((name) => [name, crop.name])),
};

const ranges: TableTemplate = {
  name: 'CropFigures',
  heading: '',
  grows: false,
  columns: [
    columnOf(names.crop, 20),
    columnOf(names.figure, 20),
    columnOf(names.low, 16),
    columnOf(names.high, 16),
    columnOf(names.unit, 13),
    columnOf(names.source, 100),
  ],
  rows: crops.flatMap((crop) =>
    traitNames
      .filter((trait) => crop.figures[trait] !== undefined)
      .map((trait) => [
        crop.name,
        trait,
        figure(trait, 'low'),
        figure(trait, 'high'),
        unitOf(trait),
        { compute: call('CROP.SOURCE', column(names.crop), trait) },
      ]),
  ),
};

export const cropsTemplate: SheetTemplate = {
  id: 'crops',
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form: [],
  tables: [usualFigures, understood],
  page: { landscape: true, pagesWide: 2, repeatFirstColumn: true },
};

export const cropRangesTemplate: SheetTemplate = {
  id: 'cropRanges',
  version: 1,
  sheet: words.rangesSheet,
  title: words.rangesSheet,
  lead: words.rangesLead,
  cautions: [],
  form: [],
  tables: [ranges],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};
