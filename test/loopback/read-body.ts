// Reads what a client posts, JSON or form with files, for the loopback platforms.
import type { IncomingMessage } from 'node:http';
import busboy from 'busboy';

export interface Posted {
  fields: Record<string, unknown>;
  /** Files by the name of their part. */
  files: Map<string, Buffer>;
}

export async function readBody(request: IncomingMessage): Promise<Posted> {
  const type = request.headers['content-type'] ?? '';
  if (type.startsWith('multipart/form-data')) return readForm(request);
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const text = Buffer.concat(chunks).toString('utf8');
  return { fields: text === '' ? {} : (JSON.parse(text) as Record<string, unknown>), files: new Map() };
}

function readForm(request: IncomingMessage): Promise<Posted> {
  return new Promise((resolve, reject) => {
    const posted: Posted = { fields: {}, files: new Map() };
    const parser = busboy({ headers: request.headers });
    parser.on('field', (name, value) => {
      posted.fields[name] = value;
    });
    parser.on('file', (name, stream) => {
      const chunks: Buffer[] = [];
      stream.on('data', (chunk: Buffer) => chunks.push(chunk));
      stream.on('end', () => posted.files.set(name, Buffer.concat(chunks)));
    });
    parser.on('close', () => resolve(posted));
    parser.on('error', reject);
    request.pipe(parser);
  });
}
