/**
 * A typed name as it is compared: capitals, accents, outer and repeated spaces and the shape of an apostrophe do not
 * count.
 *
 * @param name as typed
 * @returns the name in small letters with single spaces
 * Source: project convention: what a spreadsheet's own look-ups overlook, a typed name may vary; accents too, which many
 * keyboards lack.
 * @example plainName('  Melón  CHINO ') // 'melon chino'
 */
export function plainName(name: string): string {
  return name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/[\u2018\u2019]/g, "'");
}
