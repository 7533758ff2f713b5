/** What pictures are made into PNG with, for commands: read from the packages. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { PngParts } from '../pictures/svgToPng';

const fonts = ['latin-400', 'latin-700', 'latin-ext-400', 'latin-ext-700'];

export function pngParts(): PngParts {
  // The command is bundled into a file of the project's own node_modules.
  const require = createRequire(join(process.cwd(), 'package.json'));
  const read = (path: string): Uint8Array => new Uint8Array(readFileSync(require.resolve(path)));
  return {
    wasm: read('@resvg/resvg-wasm/index_bg.wasm'),
    fonts: fonts.map((name) => read(`@fontsource/roboto/files/roboto-${name}-normal.woff2`)),
  };
}
