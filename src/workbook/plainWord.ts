/** A word or name as it is compared with another: capitals, accents and outer or repeated spaces do not count. */
export function plainWord(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim().replace(/\s+/g, ' ');
}
