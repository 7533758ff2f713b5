import { element } from './elements';

/** To where the browser puts what is downloaded. */
export function handOut(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  element('a', { href: address, download: name }).click();
  // Some browsers take the bytes a moment later.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
