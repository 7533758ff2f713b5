import { randomUUID } from 'node:crypto';
import { constants } from 'node:fs';
import { access, link, open, readdir, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { HostError } from '../../workbook/port';

/** Called before each step of a save; a test makes it throw. */
export type BeforeSaveStep = (step: 'open' | 'write' | 'sync' | 'rename') => void;

/**
 * The file is there whole or not at all: written beside the target, flushed to the disk, then renamed. Without
 * `replace` an existing target stays, even one that appears in the meantime.
 * @throws HostError fileExists, fileNotWritable
 */
export async function saveWhole(
  path: string,
  bytes: Uint8Array,
  replace: boolean,
  beforeStep: BeforeSaveStep = () => undefined,
): Promise<void> {
  const asked = resolve(path);
  // A link stays a link: what it points at is replaced.
  const target = replace ? await realpath(asked).catch(() => asked) : asked;
  const partial = join(dirname(target), `${partialPrefix(target)}${process.pid}.${randomUUID()}`);
  try {
    await refuseBadTarget(target, path, replace);
    await clearLeftovers(target);
    beforeStep('open');
    await writeFlushed(partial, bytes, beforeStep);
    beforeStep('rename');
    await (replace ? rename(partial, target) : claimName(partial, target, path));
  } catch (cause) {
    await unlink(partial).catch(() => undefined);
    if (cause instanceof HostError) throw cause;
    throw new HostError({ code: 'fileNotWritable', file: path }, { cause });
  }
  await flushFolder(dirname(target));
}

async function refuseBadTarget(target: string, path: string, replace: boolean): Promise<void> {
  const there = await stat(target).catch(() => null);
  if (there === null) return;
  if (!replace) throw new HostError({ code: 'fileExists', file: path });
  if (!there.isFile()) throw new HostError({ code: 'fileNotWritable', file: path });
  // Renaming over a write-protected file would work; the protection means that it should not.
  await access(target, constants.W_OK);
}

async function writeFlushed(partial: string, bytes: Uint8Array, beforeStep: BeforeSaveStep): Promise<void> {
  const file = await open(partial, 'wx');
  try {
    beforeStep('write');
    await file.writeFile(bytes);
    beforeStep('sync');
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Gives the written file its name unless somebody has it: a link fails on a taken name, a rename would not. */
async function claimName(partial: string, target: string, path: string): Promise<void> {
  try {
    await link(partial, target);
  } catch (cause) {
    if (codeOf(cause) === 'EEXIST') throw new HostError({ code: 'fileExists', file: path }, { cause });
    // Some file systems have no links: there the name is looked at once more, then taken.
    await refuseBadTarget(target, path, false);
    await rename(partial, target);
    return;
  }
  await unlink(partial);
}

function partialPrefix(target: string): string {
  return `.${basename(target)}.partial.`;
}

/** What a process that was killed while saving the same file has left behind. */
async function clearLeftovers(target: string): Promise<void> {
  const prefix = partialPrefix(target);
  for (const name of await readdir(dirname(target)).catch(() => [])) {
    if (!name.startsWith(prefix)) continue;
    const owner = Number(name.slice(prefix.length).split('.')[0]);
    if (Number.isInteger(owner) && owner > 0 && !isRunning(owner)) {
      await unlink(join(dirname(target), name)).catch(() => undefined);
    }
  }
}

function isRunning(processId: number): boolean {
  try {
    return process.kill(processId, 0);
  } catch (cause) {
    return codeOf(cause) !== 'ESRCH';
  }
}

/** Makes the new name last through a power cut. Where a folder cannot be opened (Windows) there is nothing to do. */
async function flushFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

function codeOf(cause: unknown): string | undefined {
  return cause instanceof Error && 'code' in cause ? String(cause.code) : undefined;
}
