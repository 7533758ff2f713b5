/** How big a file may be that is read at all. */
import { HostError } from './port';

/** A plan of a thousand rows takes some hundred thousand bytes. */
export const mostFileBytes = 20_000_000;

/** @throws HostError */
export function refuseHugeFile(name: string, bytes: number): void {
  if (bytes <= mostFileBytes) return;
  throw new HostError({ code: /\.(csv|tsv|txt)$/i.test(name) ? 'fileLongList' : 'fileTooBig' });
}
