/** Saves to a file in a process of its own: `saveInChild.ts <file> die` is killed before it renames. Says what happened. */
import { saveWhole } from '../../../src/hosts/file/saveWhole';
import type { HostError } from '../../../src/workbook/port';

const [, , file = '', end] = process.argv;

saveWhole(file, new Uint8Array(1e6), true, (step) => {
  if (end === 'die' && step === 'rename') process.kill(process.pid, 'SIGKILL');
}).then(
  () => process.stdout.write('written'),
  (error: HostError) => process.stdout.write(error.problem.code),
);
