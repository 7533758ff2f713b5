/** What pictures are made into PNG with, for a page: files beside it. */
import type { PngParts } from '../pictures/svgToPng';

const wasm = new URL('@resvg/resvg-wasm/index_bg.wasm', import.meta.url);
const fonts = [
  new URL('@fontsource/roboto/files/roboto-latin-400-normal.woff2', import.meta.url),
  new URL('@fontsource/roboto/files/roboto-latin-700-normal.woff2', import.meta.url),
  new URL('@fontsource/roboto/files/roboto-latin-ext-400-normal.woff2', import.meta.url),
  new URL('@fontsource/roboto/files/roboto-latin-ext-700-normal.woff2', import.meta.url),
];

export async function fetchPngParts(): Promise<PngParts> {
  const read = async (url: URL): Promise<Uint8Array> => {
    const answer = await fetch(url);
    if (!answer.ok) throw new Error(`${url.pathname}: ${answer.status}`);
    return new Uint8Array(await answer.arrayBuffer());
  };
  const [engine, ...letters] = await Promise.all([wasm, ...fonts].map(read));
  return { wasm: engine ?? new Uint8Array(), fonts: letters };
}
