// Turns an error of SQLite into a sentence that tells the operator what to do.
import { StoreTrouble } from '../store.ts';

// Primary result codes, from https://www.sqlite.org/rescode.html
const codes = {
  perm: 3,
  busy: 5,
  readOnly: 8,
  io: 10,
  corrupt: 11,
  full: 13,
  cannotOpen: 14,
  notADatabase: 26,
} as const;

export function explain(error: unknown, file: string): unknown {
  if (error instanceof StoreTrouble || !(error instanceof Error) || !('errcode' in error)) return error;
  const sentence = say(Number(error.errcode) & 0xff, file);
  return sentence === null ? error : new StoreTrouble(sentence, { cause: error });
}

/** Another process holds the lock. */
export function isBusy(error: unknown): boolean {
  return error instanceof Error && 'errcode' in error && (Number(error.errcode) & 0xff) === codes.busy;
}

function say(code: number, file: string): string | null {
  switch (code) {
    case codes.busy:
      return `Another process has the database ${file} open. Stop it first: one process at a time owns it.`;
    case codes.full:
      return `The disk that holds ${file} is full. Nothing of this step was kept; make room, then start again.`;
    case codes.readOnly:
    case codes.perm:
      return `The database ${file} cannot be written to. Nothing of this step was kept; give this user the right to write there.`;
    case codes.cannotOpen:
      return `The database ${file} cannot be opened. See that its folder exists and that this user may write there.`;
    case codes.io:
      return `The disk that holds ${file} does not answer as it should. Nothing of this step was kept; look after the disk, then start again.`;
    case codes.corrupt:
    case codes.notADatabase:
      return `The database ${file} is damaged. Nothing was changed; put it aside and restore a copy, or start with an empty folder.`;
    default:
      return null;
  }
}
