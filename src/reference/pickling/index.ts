/** Pounds of cucumbers for jars of pickles: canner loads, and what a bushel gives at the least and the most. */
import data from './data.json';

export const jarSizes = ['quart', 'pint'] as const;
export type JarSize = (typeof jarSizes)[number];

Object.values(data.loads).forEach(Object.freeze);

export const cannerLoads = Object.freeze(data.loads) as Readonly<
  Record<JarSize, { readonly pounds: number; readonly jars: number }>
>;

export const bushelForPickles = Object.freeze(data.bushel);

export const picklingSource = 'usda-aib-539';
