/**
 * "{width} {unit}" with the values put in; "{count|plot|plots}" is the word that goes with the number. A placeholder
 * without a value is a fault of ours and stays visible.
 */
export function fill(sentence: string, values: Readonly<Record<string, string | number>>): string {
  return sentence.replace(
    /\{(\w+)(?:\|([^|{}]*)\|([^|{}]*))?\}/g,
    (whole, key: string, one?: string, many?: string) => {
      const value = values[key];
      if (value === undefined) return whole;
      return (String(value) === '1' ? one : many) ?? String(value);
    },
  );
}
