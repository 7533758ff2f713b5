/**
 * The parts of an .xlsx, which is a zip: read one at a time and bit by bit, so that a hostile file cannot fill the
 * memory. Only what is asked for is unpacked.
 */
import { Inflate } from 'fflate';
import { damaged, isEncrypted, tooBig } from './refusals';

export const mostParts = 5000;
/** Of all parts that are read, together. */
export const mostUnpackedBytes = 60_000_000;
/** Sheets of plans pack about 20 to 1. Not asked of the first million bytes. */
export const mostRatio = 200;
const freeOfRatio = 1_000_000;

/** So little packed can become a thousand times as much before it is looked at. */
const packedStep = 4096;
const unpackedStep = 65_536;

export interface Package {
  has(name: string): boolean;
  /** Hands out the part piece by piece; nothing where there is no such part. @throws HostError */
  read(name: string, take: (piece: Uint8Array) => void): void;
}

interface Entry {
  readonly method: number;
  readonly packed: number;
  readonly unpacked: number;
  readonly offset: number;
}

const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;
const partSignature = 0x04034b50;
const stored = 0;
const deflated = 8;

/** @throws HostError */
export function readPackage(bytes: Uint8Array): Package {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries = readEntries(bytes, view);
  let unpackedSoFar = 0;

  function read(name: string, take: (piece: Uint8Array) => void): void {
    const entry = entries.get(name.toLowerCase());
    if (entry === undefined) return;
    const packed = packedBytes(bytes, view, entry);
    let length = 0;
    const hand = (piece: Uint8Array): void => {
      length += piece.length;
      unpackedSoFar += piece.length;
      if (unpackedSoFar > mostUnpackedBytes) throw tooBig(`stopped at ${unpackedSoFar} bytes unpacked`);
      if (length > freeOfRatio && length > mostRatio * packed.length) {
        throw tooBig(`stopped at ${length} bytes unpacked from ${packed.length}`);
      }
      for (let at = 0; at < piece.length; at += unpackedStep) take(piece.subarray(at, at + unpackedStep));
    };
    if (entry.method === stored) hand(packed);
    else inflate(packed, hand);
    if (length !== entry.unpacked) throw damaged(`${name} has ${length} bytes instead of ${entry.unpacked}`);
  }
  return { has: (name) => entries.has(name.toLowerCase()), read };
}

/** By lower-case name, from the directory at the end. */
function readEntries(bytes: Uint8Array, view: DataView): Map<string, Entry> {
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  if (count > mostParts) throw tooBig(`${count} parts`);
  let at = view.getUint32(end + 16, true);
  const entries = new Map<string, Entry>();
  for (let index = 0; index < count; index++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== entrySignature) throw damaged('directory');
    if ((view.getUint16(at + 8, true) & 1) !== 0) throw isEncrypted();
    const nameLength = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
    entries.set(name.toLowerCase(), {
      method: view.getUint16(at + 10, true),
      packed: view.getUint32(at + 20, true),
      unpacked: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

/** The last record, behind which a comment of at most 65,535 bytes can stand. */
function findEnd(view: DataView): number {
  const last = view.byteLength - 22;
  for (let at = last; at >= 0 && at >= last - 65_535; at--) {
    if (view.getUint32(at, true) === endSignature) return at;
  }
  throw damaged('no end of a zip');
}

function packedBytes(bytes: Uint8Array, view: DataView, { method, offset, packed }: Entry): Uint8Array {
  if (method !== stored && method !== deflated) throw damaged(`method ${method}`);
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== partSignature) throw damaged('part');
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + packed > bytes.length) throw damaged('part cut short');
  return bytes.subarray(start, start + packed);
}

function inflate(packed: Uint8Array, hand: (piece: Uint8Array) => void): void {
  let pieces: Uint8Array[] = [];
  const inflater = new Inflate((piece) => pieces.push(piece));
  for (let at = 0; at < packed.length; at += packedStep) {
    try {
      inflater.push(packed.subarray(at, at + packedStep), at + packedStep >= packed.length);
    } catch (cause) {
      throw damaged('not unpackable', cause);
    }
    // Handed out here, so that what `hand` throws is not taken for a fault of the packing.
    for (const piece of pieces) hand(piece);
    pieces = [];
  }
}
