import { initWasm, Resvg } from '@resvg/resvg-wasm';

/** What the library draws with; read by an entry, because a page and a command find files in different ways. */
export interface PngParts {
  readonly wasm: ArrayBuffer | Uint8Array;
  /** Roboto, normal and bold, of every script that the texts are written in. */
  readonly fonts: readonly Uint8Array[];
}

/** Pixels of the picture for one of the sheet, so that it stays sharp in print. */
const sharpness = 2;

let readying: Promise<void> | null = null;

/** The picture as the bytes of a PNG, drawn twice as large as it is shown. */
export async function svgToPng(svg: string, { wasm, fonts }: PngParts): Promise<Uint8Array> {
  // The library refuses to be readied twice.
  readying ??= initWasm(wasm);
  await readying;
  const drawing = new Resvg(svg, {
    fitTo: { mode: 'zoom', value: sharpness },
    font: { fontBuffers: [...fonts], defaultFontFamily: 'Roboto', sansSerifFamily: 'Roboto' },
  });
  const image = drawing.render();
  const png = image.asPng();
  image.free();
  drawing.free();
  return png;
}
