/** How Excel hands over the cells of an argument. A flag of the invocation says that such shapes are in it. */
export const flags = { errors: 4, richValues: 8 };

/** A value with a format or a data type of its own. */
export function richValue(value: unknown, numberFormat?: string): unknown {
  const type = typeof value === 'number' ? 'Double' : typeof value === 'boolean' ? 'Boolean' : 'String';
  const format = numberFormat === undefined ? {} : { numberFormat };
  return asRich({ type, basicType: type, basicValue: value, ...format });
}

/** Any rich value, as an earlier call delivered it. */
export const asRich = (value: unknown): unknown => ({ value: JSON.stringify(value) });

/** An error in a cell, as a function that takes errors gets it. */
export const errorValue = (code: string): unknown => ({ type: 'CustomFunctionError', code });

/** An error among rich values. */
export const richError = (code: string): unknown =>
  asRich({ type: 'Error', basicType: 'Error', basicValue: code });

/** A range, each cell put into its shape. */
export function eachCell(argument: unknown, shape: (cell: unknown) => unknown): unknown {
  return Array.isArray(argument) ? (argument as unknown[][]).map((row) => row.map(shape)) : shape(argument);
}
