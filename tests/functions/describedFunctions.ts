/** The functions as functions.json describes them to Excel. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { generateCustomFunctionsMetadata } from 'custom-functions-metadata';

export interface DescribedParameter {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
}
export interface DescribedFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly DescribedParameter[];
}

const folder = 'src/functions';

/** Files that hold a wrapper. */
export const wrapperFiles: string[] = readdirSync(folder)
  .map((name) => join(folder, name))
  .filter((file) => readFileSync(file, 'utf8').includes('@customfunction'));

/** What the vendor's generator makes of the wrappers' comments. @throws Error with what it finds wrong */
export async function describeFunctions(): Promise<readonly DescribedFunction[]> {
  const { errors, metadataJson } = await generateCustomFunctionsMetadata(wrapperFiles);
  if (errors.length > 0) throw new Error(errors.join('\n'));
  return (JSON.parse(metadataJson) as { functions: DescribedFunction[] }).functions;
}

/** A parameter in a word: an optional one has a question mark. */
export const signatureOf = ({ parameters }: DescribedFunction): readonly string[] =>
  parameters.map(({ name, optional }) => `${name}${optional === true ? '?' : ''}`);
