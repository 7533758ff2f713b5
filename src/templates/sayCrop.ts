/** A crop by its name in the language that was chosen; in the sheets its name is the same in every language. */
import { crops } from '../reference/crops';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { language, type Language } from '../texts/language';

const ownNames: Readonly<Record<Language, ReadonlyMap<string, string>>> = {
  en: new Map(),
  es: new Map(crops.map(({ name, spanishNames: [first = name] }) => [name, first])),
};

/** @param name of the crop in the Crops sheet; any other stays as it is */
export function wordOfCrop(name: string): string {
  return ownNames[language].get(name) ?? name;
}

/** For cells that choose one by its name in the Crops sheet. */
export function cropsInWords(names: readonly string[]): Readonly<Record<string, readonly string[]>> {
  return Object.fromEntries(names.map((name) => [name, [wordOfCrop(name)]]));
}

/** With its name in the Crops sheet where that is another. */
export function sayCrop(name: string): string {
  const word = wordOfCrop(name);
  return word === name ? name : fill(catalogue.pane.choice, { word, choice: name });
}
