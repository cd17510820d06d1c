// The fault content that ships with the project, for the tests of the diagnosis.
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { type FaultContent, faultFileSchema, joinFaultFiles } from '../../src/procedure/fault.ts';

const folder = new URL('../../content/faults/', import.meta.url);

export const shippedFaults: FaultContent = joinFaultFiles(
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => faultFileSchema.parse(parse(readFileSync(new URL(name, folder), 'utf8')))),
);
