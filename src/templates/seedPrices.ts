/** The price list of seed: a growing table of the Seed order sheet, a line for each pack on offer. */
import type { Expression, Format, TableColumn, TableTemplate } from '../workbook/template';
import { columnOf } from '../workbook/columnOf';
import { allOf, call, column, native, operate, when } from '../workbook/expressions';
import { catalogue } from '../texts/catalogue';
import { cropTakenAs } from './cropLookUps';
import { namesOfCrops } from './plots';
import { cropWidth } from './sayCrop';

const words = catalogue.seedOrder.prices;
const { columns: headers } = words;
const { quantities } = catalogue;

type PriceKey = keyof typeof headers;
const priced = (key: PriceKey): Expression => column(headers[key].header);
export const ofPrices = (key: PriceKey): Expression => allOf('SeedPrices', headers[key].header);

/** A line on which something stands. */
const isUsed = native(
  'OR',
  ...(['crop', 'size', 'price'] as const).map((key) => operate(operate(priced(key), '&', ''), '<>', '')),
);

const asked = (key: PriceKey, format: Format, width: number, more: Partial<TableColumn> = {}): TableColumn =>
  columnOf(headers[key].header, width, { ...headers[key], kind: 'input', format, ...more });
const computed = (key: PriceKey, compute: Expression, format: Format, width: number): TableColumn =>
  asked(key, format, width, { kind: 'computed', compute: when(isUsed, compute, '') });

export const seedPricesTable: TableTemplate = {
  name: 'SeedPrices',
  heading: words.heading,
  grows: true,
  rows: null,
  columns: [
    asked('crop', 'text', cropWidth, namesOfCrops),
    asked('size', 'whole', 10, {
      limits: { atLeast: 1, isWhole: true },
      quantity: quantities.pack_size,
    }),
    asked('price', 'money', 10, { limits: { above: 0 }, quantity: quantities.pack_price }),
    computed(
      'perThousand',
      operate(
        operate(
          1000,
          '*',
          call('SEED.PACKCOST', 1, priced('crop'), priced('crop'), priced('size'), priced('price')),
        ),
        '/',
        priced('size'),
      ),
      'money',
      11,
    ),
    computed('takenAs', cropTakenAs(priced('crop')), 'words', cropWidth),
    asked('lot', 'text', 17),
  ],
};
