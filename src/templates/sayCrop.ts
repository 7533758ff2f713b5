/** The names of crops in the language that was chosen. The sheets carry them; the functions take them as their own. */
import { crops, type Crop } from '../reference/crops';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { language, type Language } from '../texts/language';

const ownNames: Readonly<Record<Language, ReadonlyMap<string, string>>> = {
  en: new Map(),
  es: new Map(crops.map(({ name, spanishNames: [first = name] }) => [name, first])),
};

/** @param name of the crop in the reference; any other stays as it is */
export function wordOfCrop(name: string): string {
  return ownNames[language].get(name) ?? name;
}

const namesOfWords: Readonly<Record<string, string>> = Object.fromEntries(
  crops.flatMap(({ name }) => [
    [name, name],
    [wordOfCrop(name), name],
  ]),
);

/** The name in the reference that a sheet has as a word of its language, or by its own name; undefined for any other. */
export function cropOfWord(word: string): string | undefined {
  return Object.hasOwn(namesOfWords, word) ? namesOfWords[word] : undefined;
}

const namesInOrder: Readonly<Record<Language, (crop: Crop) => readonly string[]>> = {
  en: ({ name, synonyms }) => [name, ...synonyms],
  es: ({ name, synonyms, spanishNames }) => [...new Set([...spanishNames, name, ...synonyms])],
};

/** By the names of the sheets, all others that each crop has: those of the language first. */
export const otherNamesOfCrops: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  crops.map((crop) => {
    const word = wordOfCrop(crop.name);
    return [word, namesInOrder[language](crop).filter((other) => other !== word)];
  }),
);

/** Of a column of them, in characters: the browser's grid puts an arrow beside a name that can be chosen. */
export const cropWidth = Math.max(...Object.keys(otherNamesOfCrops).map((name) => name.length)) + 1;

/** What a cell said that names a crop in sheets of earlier versions: in every language the name of the reference. */
export const formerCropNames: Readonly<Record<string, string>> = Object.fromEntries(
  [...ownNames[language]].filter(([name, word]) => name !== word),
);

/** With its name in the reference, which the functions answer, where that is another. */
export function sayCrop(name: string): string {
  const word = wordOfCrop(name);
  return word === name ? name : fill(catalogue.pane.choice, { word, choice: name });
}
