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
import { formerCropNames, otherNamesOfCrops, wordOfCrop } from './sayCrop';

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
  if (kind === 'text') return 'words';
  return kind === 'share' ? 'percent' : 'general';
};

const ownWords: Readonly<Record<string, string>> = words.values;
/** null for a number, and where the function says it in the same words. */
const inOwnWords = (crop: Crop, trait: Trait): string | null => {
  const known = crop.figures[trait];
  if (known === undefined || !('text' in known)) return null;
  const said = ownWords[known.text] ?? known.text;
  return said === known.text ? null : said;
};

/** Plots asks what these say, in the words of the functions. */
const readByPlots: readonly Trait[] = ['flower type', 'days counted from'];

const usualFigure = (crop: Crop, trait: Trait): CellContent => {
  if (crop.figures[trait] === undefined) return words.noFigure;
  const said = readByPlots.includes(trait) ? null : inOwnWords(crop, trait);
  return said === null
    ? figure(trait, fromLowEnd.includes(trait) ? 'low' : 'mid')
    : { compute: { value: said } };
};

/** For reading alone: one column holds figures of every kind, and no formula asks for a word of the functions here. */
const shortFigure = (crop: Crop, trait: Trait, bound: 'low' | 'high'): CellContent => {
  const said = inOwnWords(crop, trait);
  if (said !== null) return { compute: { value: said } };
  const exact = figure(trait, bound);
  const places = decimals[traits[trait].kind];
  return places === undefined ? exact : { compute: native('ROUND', exact.compute, places) };
};

const cropColumn = (width: number): TableColumn =>
  columnOf(names.crop, width, { format: 'words', formerly: formerCropNames });

/** What stands there in words of the functions; "" where they are those of the language. */
const wordsExplained = (trait: Trait): string => {
  if (!readByPlots.includes(trait)) return '';
  const said = crops.flatMap((crop) => {
    const figureOfCrop = crop.figures[trait];
    const own = inOwnWords(crop, trait);
    return figureOfCrop === undefined || !('text' in figureOfCrop) || own === null
      ? []
      : fill(catalogue.pane.choice, { word: own, choice: figureOfCrop.text });
  });
  return [...new Set(said)].join(', ');
};

const figureColumn = (trait: Trait, header: string, width: number): TableColumn => {
  const { unit } = traits[trait];
  // The same in both systems has no metric unit.
  const converts = metricUnits[unit] === undefined ? {} : { converts: unit };
  const note = wordsExplained(trait);
  return columnOf(header, width, { unit: unitOf(trait), format: formatOf(trait), note, ...converts });
};

/** Of columns that hold words. */
const wordWidths: Partial<Record<Trait, number>> = { 'flower type': 16, species: 22 };

const usualFigures: TableTemplate = {
  name: 'Crops',
  heading: words.usual,
  grows: false,
  keepsTypedOver: true,
  columns: [
    cropColumn(22),
    ...traitNames.map((trait) => figureColumn(trait, words.traits[trait], wordWidths[trait] ?? 13)),
    figureColumn('yield per 100', names.yieldHigh, 13),
  ],
  rows: crops.map((crop) => [
    wordOfCrop(crop.name),
    ...traitNames.map((trait) => usualFigure(crop, trait)),
    crop.figures['yield per 100'] === undefined ? words.noFigure : figure('yield per 100', 'high'),
  ]),
};

const understood: TableTemplate = {
  name: 'CropNames',
  heading: words.names,
  grows: false,
  keepsTypedOver: true,
  columns: [columnOf(names.name, 22, { format: 'words' }), cropColumn(22)],
  rows: Object.entries(otherNamesOfCrops).flatMap(([crop, others]) =>
    [crop, ...others].map((name) => [name, crop]),
  ),
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
  columns: [
    columnOf(names.of, 22, { format: 'words' }),
    { ...columnOf(names.note, 13, { format: 'words' }), runsOn: true },
  ],
  rows: words.practiceNotes.map(([of, note]) => [of, fill(note, practiceValues)]),
};

const ranges: TableTemplate = {
  name: 'CropFigures',
  heading: '',
  grows: false,
  columns: [
    cropColumn(20),
    columnOf(names.figure, 20, { format: 'words' }),
    columnOf(names.low, 16),
    columnOf(names.high, 16),
    columnOf(names.unit, 13, { format: 'words' }),
    columnOf(names.source, 100, { format: 'words' }),
  ],
  rows: crops.flatMap((crop) =>
    traitNames
      .filter((trait) => crop.figures[trait] !== undefined)
      .map((trait) => [
        wordOfCrop(crop.name),
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
