// Takes what the file .env says into the environment, for the commands that go on the network.
import { existsSync } from 'node:fs';
import { join } from 'node:path';

export const settingsFile = join(import.meta.dirname, '..', '..', '.env');

/** What the environment already says goes before the file. */
export function loadSettingsFile(): void {
  if (existsSync(settingsFile)) process.loadEnvFile(settingsFile);
}
