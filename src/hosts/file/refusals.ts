/** Why a file is not read. The detail is for whoever is asked for help. */
import { HostError } from '../../workbook/port';

export function damaged(detail: string, cause?: unknown): HostError {
  return new HostError({ code: 'fileDamaged' }, { cause: new Error(detail, { cause }) });
}

export function tooBig(detail: string): HostError {
  return new HostError({ code: 'fileTooBig' }, { cause: new Error(detail) });
}

export function emptyRows(detail: string, cause?: unknown): HostError {
  return new HostError({ code: 'fileEmptyRows' }, { cause: new Error(detail, { cause }) });
}

export function isEncrypted(): HostError {
  return new HostError({ code: 'fileEncrypted' });
}
