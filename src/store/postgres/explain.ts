// Tells a passing trouble of Postgres from a lasting one, and says the lasting ones in a sentence.
import { StoreTrouble } from '../store.ts';

// Error codes, from https://www.postgresql.org/docs/current/errcodes-appendix.html (appendix A)
const sentences: Record<string, string> = {
  '28P01': 'Postgres refuses the password. Look at DATABASE_URL.',
  '28000': 'Postgres refuses this user. Look at DATABASE_URL.',
  '3D000': 'Postgres has no database of that name. Create it, or look at DATABASE_URL.',
  '25006':
    'The Postgres database is read-only. Nothing of this step was kept; name the primary server in DATABASE_URL.',
  '53100': 'The disk of the Postgres server is full. Nothing of this step was kept; make room there.',
  '42501':
    'The Postgres user may not do what is needed. Give it the right to create and change tables in this database.',
  '42P07':
    'The Postgres database holds tables of some other program. Nothing was changed; name another database.',
  ENOTFOUND: 'The Postgres server has no address. Look at DATABASE_URL.',
  ECONNREFUSED: 'No Postgres server answers at DATABASE_URL. Start it, or correct the address.',
};

const passing = new Set([
  'ECONNRESET',
  'ECONNREFUSED',
  'EPIPE',
  'ETIMEDOUT',
  // serialisation failure, deadlock, too many connections, shutting down, starting up
  '40001',
  '40P01',
  '53300',
  '57P01',
  '57P02',
  '57P03',
]);

export function isPassing(error: unknown): boolean {
  const code = codeOf(error);
  if (code !== null) return passing.has(code) || code.startsWith('08');
  return (
    error instanceof Error &&
    /connection (terminated|ended)|client has encountered a connection error/i.test(error.message)
  );
}

/** A row with this unique key is there already. */
export function isTaken(error: unknown, constraint: string): boolean {
  return codeOf(error) === '23505' && (error as { constraint?: string }).constraint === constraint;
}

/** The address itself is never repeated: it may hold a password. */
export function explain(error: unknown): unknown {
  if (error instanceof StoreTrouble) return error;
  const sentence = sentences[codeOf(error) ?? ''];
  if (sentence !== undefined) return new StoreTrouble(sentence, { cause: error });
  if (isPassing(error)) return new StoreTrouble('Postgres has stopped answering.', { cause: error });
  return error;
}

function codeOf(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  if ('code' in error && typeof error.code === 'string') return error.code;
  // Node tries every address of a host, and reports them together.
  const [first] = error instanceof AggregateError ? error.errors : [];
  return first === undefined ? null : codeOf(first);
}
