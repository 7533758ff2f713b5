/** "{width} {unit}" with the values put in. A placeholder without a value is a fault of ours and stays visible. */
export function fill(sentence: string, values: Readonly<Record<string, string | number>>): string {
  return sentence.replace(/\{(\w+)\}/g, (whole, key: string) => String(values[key] ?? whole));
}
