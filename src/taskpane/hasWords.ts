/** Whether a text has every word that is searched for, in any letters and as parts of words too. */
export function hasWords(text: string, searched: string): boolean {
  const plain = text.toLowerCase();
  return searched
    .toLowerCase()
    .split(/\s+/)
    .every((word) => plain.includes(word));
}
