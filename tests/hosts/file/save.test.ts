import { spawn, type ChildProcess, type SpawnOptions } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { createFileWorkbook } from '../../../src/hosts/file/createFileWorkbook';
import { saveWhole } from '../../../src/hosts/file/saveWhole';
import { functions, planChange } from './planSheets';

let folder: string;
let target: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'file-host-'));
  target = join(folder, 'plan.xlsx');
});

const nothing = (): void => undefined;
const save = (bytes: string, replace = false): Promise<void> =>
  saveWhole(target, new TextEncoder().encode(bytes), replace, nothing);

function saveInChild(file: string, args: readonly string[], options: SpawnOptions = {}): ChildProcess {
  const script = join(import.meta.dirname, 'saveInChild.ts');
  const cwd = join(import.meta.dirname, '../../..');
  return spawn(process.execPath, ['--import', 'tsx', script, file, ...args], { ...options, cwd });
}

describe('saving', () => {
  it('writes the file and leaves nothing beside it', async () => {
    await save('new');
    expect(readFileSync(target, 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['plan.xlsx']);
  });

  it('refuses an existing file and leaves it whole, unless asked to replace it', async () => {
    writeFileSync(target, 'old');
    await expect(save('new')).rejects.toMatchObject({ problem: { code: 'fileExists', file: target } });
    expect(readFileSync(target, 'utf8')).toBe('old');
    await save('new', true);
    expect(readFileSync(target, 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['plan.xlsx']);
  });

  it('refuses a file that appears while it writes', async () => {
    const appear = (step: string): void => {
      if (step === 'rename') writeFileSync(target, 'somebody else');
    };
    await expect(saveWhole(target, new Uint8Array([1]), false, appear)).rejects.toMatchObject({
      problem: { code: 'fileExists', file: target },
    });
    expect(readFileSync(target, 'utf8')).toBe('somebody else');
    expect(readdirSync(folder)).toEqual(['plan.xlsx']);
  });

  it('replaces what a link points at and keeps the link', async () => {
    const real = join(folder, 'real.xlsx');
    writeFileSync(real, 'old');
    symlinkSync(real, target);
    await save('new', true);
    expect(readFileSync(real, 'utf8')).toBe('new');
    expect(readdirSync(folder).sort()).toEqual(['plan.xlsx', 'real.xlsx']);
  });

  it('says which file it cannot write: a folder, a missing folder, a file for a folder', async () => {
    mkdirSync(target);
    const problem = (file: string): object => ({ problem: { code: 'fileNotWritable', file } });
    await expect(save('new', true)).rejects.toMatchObject(problem(target));
    const inFile = join(folder, 'file', 'plan.xlsx');
    writeFileSync(join(folder, 'file'), '');
    const missing = join(folder, 'missing', 'plan.xlsx');
    for (const path of [inFile, missing]) {
      await expect(saveWhole(path, new Uint8Array(), false, nothing)).rejects.toMatchObject(problem(path));
    }
    expect(readdirSync(folder).sort()).toEqual(['file', 'plan.xlsx']);
  });

  it.each(['open', 'write', 'sync', 'rename'] as const)(
    'leaves the old file whole and nothing beside it when it fails at: %s',
    async (broken) => {
      writeFileSync(target, 'old');
      const fault = new Error('disk full');
      const failing = saveWhole(target, new Uint8Array(100000), true, (step) => {
        if (step === broken) throw fault;
      });
      await expect(failing).rejects.toMatchObject({
        problem: { code: 'fileNotWritable', file: target },
        cause: fault,
      });
      expect(readFileSync(target, 'utf8')).toBe('old');
      expect(readdirSync(folder)).toEqual(['plan.xlsx']);
    },
  );

  it('removes what a killed save left behind, not what a running one is writing', async () => {
    const killed = spawn(process.execPath, ['-e', '']);
    await once(killed, 'exit');
    const leftover = `.${basename(target)}.partial.${killed.pid}.a`;
    const running = `.${basename(target)}.partial.${process.pid}.b`;
    writeFileSync(join(folder, leftover), 'half');
    writeFileSync(join(folder, running), 'half');
    await save('new');
    expect(readdirSync(folder).sort()).toEqual([running, 'plan.xlsx']);
  });

  it('a killed save leaves the old file whole', async () => {
    writeFileSync(target, 'old');
    const saving = saveInChild(target, ['die']);
    const [, signal] = (await once(saving, 'exit')) as [number | null, string | null];
    expect(signal).toBe('SIGKILL');
    expect(readFileSync(target, 'utf8')).toBe('old');
    await save('new', true);
    expect(readdirSync(folder)).toEqual(['plan.xlsx']);
  });
});

describe('a protected place', () => {
  it('is refused and stays as it is', async () => {
    const locked = join(folder, 'locked');
    mkdirSync(locked);
    writeFileSync(join(locked, 'plan.xlsx'), 'old');
    chmodSync(join(locked, 'plan.xlsx'), 0o444);
    chmodSync(locked, 0o555);
    chmodSync(folder, 0o755);
    for (const name of ['plan.xlsx', 'other.xlsx']) {
      // The superuser may write everywhere, so another user tries.
      const saving = saveInChild(
        join(locked, name),
        [],
        process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {},
      );
      let said = '';
      saving.stdout?.on('data', (text) => (said += String(text)));
      await once(saving, 'close');
      expect(said).toBe('fileNotWritable');
    }
    expect(readFileSync(join(locked, 'plan.xlsx'), 'utf8')).toBe('old');
    expect(readdirSync(locked)).toEqual(['plan.xlsx']);
  });
});

describe('the workbook', () => {
  it('saves what has been applied, after the changes before it', async () => {
    const workbook = createFileWorkbook({ functions });
    const applied = workbook.apply(planChange);
    await workbook.save(target, { replace: false });
    await applied;
    expect(readFileSync(target).subarray(0, 2).toString()).toBe('PK');
    await expect(workbook.save(target, { replace: false })).rejects.toMatchObject({
      problem: { code: 'fileExists', file: target },
    });
  });
});
