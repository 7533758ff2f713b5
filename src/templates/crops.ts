import type {
  CellContent,
  Expression,
  Format,
  SheetTemplate,
  TableColumn,
  TableTemplate,
} from '../workbook/template';
import { columnOf } from '../workbook/columnOf';
import { call, column, input, native, operate, when } from '../workbook/expressions';
import { crops, traits, type Crop, type Trait } from '../reference/crops';
import { practice } from '../reference/practice';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { idInLanguage } from '../texts/language';

const words = catalogue.sheets.crops;
const names = words.columns;
const units = input('UNITS');

const usUnits = catalogue.units as Readonly<Record<string, string>>;
const metricUnits: Readonly<Record<string, string>> = {
  ft: catalogue.units.m,
  in: catalogue.units.cm,
  F: catalogue.units.C,
  seedsPerOz: catalogue.units.seedsPerG,
  lbPer100Ft: catalogue.units.kgPer100M,
};

const unitOf = (trait: Trait): CellContent => {
  const us = usUnits[traits[trait].unit] ?? '';
  const metric = metricUnits[traits[trait].unit];
  return metric === undefined ? us : { compute: when(operate(units, '=', 'metric'), metric, us) };
};

type Kind = (typeof traits)[Trait]['kind'];
const traitNames = Object.keys(traits) as Trait[];

/** Nobody is promised the better end of these. All else starts from the middle of the range. */
const fromLowEnd: readonly Trait[] = ['yield per 100', 'storage days'];

const figure = (trait: Trait, bound: 'low' | 'mid' | 'high'): { readonly compute: Expression } => ({
  compute: call('CROP.VALUE', column(names.crop), trait, bound, units),
});

/** Decimals that a figure of the kind is worth showing in either system: what is converted comes with a dozen. */
const decimals: Partial<Record<Kind, 0 | 1 | 2>> = {
  length: 2,
  spacing: 2,
  seedCount: 1,
  temperature: 0,
  yield: 0,
};
const formats = ['whole', 'tenth', 'hundredth'] as const;

/** Plots computes on the figures of the Crops sheet, so they are shown short and kept exact. */
const formatOf = (trait: Trait): Format => {
  const { kind } = traits[trait];
  const places = decimals[kind];
  if (places !== undefined) return formats[places];
  return kind === 'share' ? 'percent' : 'general';
};

/** For reading alone: one column holds figures of every kind, and no formula asks for a word of the functions here. */
const shortFigure = (crop: Crop, trait: Trait, bound: 'low' | 'high'): CellContent => {
  const known = crop.figures[trait];
  const exact = figure(trait, bound);
  if (known !== undefined && 'text' in known) {
    const said = (words.values as Readonly<Record<string, string>>)[known.text] ?? known.text;
    return said === known.text ? exact : { compute: { value: said } };
  }
  const places = decimals[traits[trait].kind];
  return places === undefined ? exact : { compute: native('ROUND', exact.compute, places) };
};

const figureColumn = (trait: Trait, header: string, width: number): TableColumn => {
  const { unit } = traits[trait];
  // The same in both systems has no metric unit.
  const converts = metricUnits[unit] === undefined ? {} : { converts: unit };
  return columnOf(header, width, { unit: unitOf(trait), format: formatOf(trait), ...converts });
};

/** Of columns that hold words. */
const wordWidths: Partial<Record<Trait, number>> = { 'flower type': 16, species: 22 };

const usualFigures: TableTemplate = {
  name: 'Crops',
  heading: words.usual,
  grows: false,
  keepsTypedOver: true,
  columns: [
    columnOf(names.crop, 22),
    ...traitNames.map((trait) => figureColumn(trait, words.traits[trait], wordWidths[trait] ?? 13)),
    figureColumn('yield per 100', names.yieldHigh, 13),
  ],
  rows: crops.map((crop) => [
    crop.name,
    ...traitNames.map((trait) =>
      crop.figures[trait] === undefined
        ? words.noFigure
        : figure(trait, fromLowEnd.includes(trait) ? 'low' : 'mid'),
    ),
    crop.figures['yield per 100'] === undefined ? words.noFigure : figure('yield per 100', 'high'),
  ]),
};

const understood: TableTemplate = {
  name: 'CropNames',
  heading: words.names,
  grows: false,
  keepsTypedOver: true,
  columns: [columnOf(names.name, 22), columnOf(names.crop, 22)],
  rows: crops.flatMap((crop) => [crop.name, ...crop.synonyms].map((name) => [name, crop.name])),
};

/** "6 to 8", "2", "10%": as it stands in a sentence. */
const sayPractice = (figure: (typeof practice)[keyof typeof practice]): string => {
  if ('value' in figure) return figure.unit === 'share' ? `${figure.value * 100}%` : String(figure.value);
  return figure.low === figure.high ? String(figure.low) : fill(words.range, figure);
};
const practiceValues = Object.fromEntries(
  Object.entries(practice).map(([name, figure]) => [name, sayPractice(figure)]),
);

const growingNotes: TableTemplate = {
  name: 'CropNotes',
  heading: words.practice,
  grows: false,
  keepsTypedOver: true,
  columns: [columnOf(names.of, 22), { ...columnOf(names.note, 13), runsOn: true }],
  rows: words.practiceNotes.map(([of, note]) => [of, fill(note, practiceValues)]),
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
        words.traits[trait],
        shortFigure(crop, trait, 'low'),
        shortFigure(crop, trait, 'high'),
        unitOf(trait),
        { compute: call('CROP.SOURCE', column(names.crop), trait) },
      ]),
  ),
};

export const cropsTemplate: SheetTemplate = {
  id: idInLanguage('crops'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form: [],
  tables: [usualFigures, growingNotes, understood],
  page: { landscape: true, pagesWide: 2, repeatFirstColumn: true },
};

export const cropRangesTemplate: SheetTemplate = {
  id: idInLanguage('cropRanges'),
  version: 1,
  sheet: words.rangesSheet,
  title: words.rangesSheet,
  lead: words.rangesLead,
  cautions: [],
  form: [],
  tables: [ranges],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};
