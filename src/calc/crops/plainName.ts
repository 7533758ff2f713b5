/**
 * A typed name as it is compared: capitals, outer and repeated spaces and the shape of an apostrophe do not count.
 *
 * @param name as typed
 * @returns the name in small letters with single spaces
 * Source: project convention: what a spreadsheet's own look-ups overlook, a typed name may vary.
 * @example plainName('  Summer  SQUASH ') // 'summer squash'
 */
export function plainName(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/[\u2018\u2019]/g, "'");
}
