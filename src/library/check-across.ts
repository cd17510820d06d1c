// Holds the files of content against each other, for the loader: ids that are taken twice or lead nowhere, and what each is checked for by itself.
import { basename, join } from 'node:path';
import type { FaultContent } from '../procedure/fault.ts';
import type { Machine } from '../procedure/machine.ts';
import type { Procedure } from '../procedure/procedure.ts';
import type { Tip } from '../procedure/tip.ts';
import type { Workshop } from '../procedure/workshop.ts';
import { byId } from './by-id.ts';
import { checkFaultFiles } from './check-fault-files.ts';
import { checkMachine } from './check-machine.ts';
import { checkProcedure } from './check-procedure.ts';
import { checkTip } from './check-tip.ts';
import { checkWorkshop } from './check-workshop.ts';
import type { Finding } from './finding.ts';
import type { Place, Problem } from './problem.ts';
import type { ContentFile } from './read-content-file.ts';

/** The place of whoever names none. */
const unordered = 100;

export interface ContentFiles {
  folder: string;
  workshop: ContentFile<Workshop> | null;
  machines: ContentFile<Machine>[];
  procedures: ContentFile<Procedure>[];
  faults: ContentFile<FaultContent>[];
  tips: ContentFile<Tip>[];
}

export function checkAcross(files: ContentFiles): Problem[] {
  const { folder, workshop, machines, procedures, faults, tips } = files;
  const known = byId(procedures.map(({ value }) => value));
  const machinesKnown = byId(machines.map(({ value }) => value));
  return [
    ...checkPresent(folder, 'machines', machines),
    ...checkPresent(folder, 'procedures', procedures),
    ...checkTaken(machines, 'machine'),
    ...checkTaken(procedures, 'procedure'),
    ...checkTaken(tips, 'tip'),
    ...checkNames([...machines, ...procedures, ...tips]),
    ...checkPlaces(machines),
    ...checkPlaces(procedures),
    ...(workshop ? locate(workshop, checkWorkshop(workshop.value)) : []),
    ...procedures.flatMap((file) => locate(file, checkProcedure(file.value, Object.keys(known)))),
    ...machines.flatMap((file) => locate(file, checkMachine(file.value, known))),
    ...checkFaultFiles(join(folder, 'faults'), faults),
    ...tips.flatMap((file) => locate(file, checkTip(file.value, machinesKnown, known))),
  ];
}

/** Puts findings where they stand in their file. */
export function locate(
  file: Pick<ContentFile<unknown>, 'file' | 'placeOf' | 'placeOfKey'>,
  findings: readonly Finding[],
): Problem[] {
  return findings.map(({ level = 'error' as const, path, atKey, message, mend }): Problem => {
    const place: Place = atKey ? file.placeOfKey(path) : file.placeOf(path);
    return { level, file: file.file, ...place, message, mend };
  });
}

function checkPresent(folder: string, name: string, files: readonly unknown[]): Problem[] {
  if (files.length > 0) return [];
  const file = join(folder, name);
  const mend = 'Put at least one file there, whose name ends with ".yaml".';
  return [{ level: 'error', file, line: 1, column: 1, message: `There are no ${name}.`, mend }];
}

function checkTaken(files: readonly ContentFile<{ id: string }>[], what: string): Problem[] {
  const taken = new Map<string, string>();
  return files.flatMap((file) => {
    const { id } = file.value;
    const by = taken.get(id);
    if (by === undefined) taken.set(id, file.file);
    const message = `The ${what} "${id}" is in ${by} already.`;
    return by === undefined
      ? []
      : locate(file, [{ path: ['id'], message, mend: 'Give this one an id of its own.' }]);
  });
}

/** A start link has the id in it, and whoever looks for its file goes by the name. */
function checkNames(files: readonly ContentFile<{ id: string }>[]): Problem[] {
  const wrong = files.filter((file) => basename(file.file, '.yaml') !== file.value.id);
  return wrong.flatMap((file) => {
    const name = basename(file.file, '.yaml');
    const { id } = file.value;
    // An id that is taken twice is said already.
    if (files.some((other) => other !== file && other.value.id === id)) return [];
    const message = `This file is named "${name}", but its id is "${id}".`;
    const mend = `Name the file "${id}.yaml".`;
    return locate(file, [{ level: 'warning', path: ['id'], message, mend }]);
  });
}

/** Where nothing is said of the order, nobody minds it. */
function checkPlaces(files: readonly ContentFile<{ id: string; order: number }>[]): Problem[] {
  const taken = new Map<number, string>();
  return files.flatMap((file) => {
    const { id, order } = file.value;
    const by = taken.get(order);
    if (by === undefined) taken.set(order, id);
    if (by === undefined || order === unordered) return [];
    const message = `Both "${by}" and "${id}" have the place ${order} in the menu.`;
    const mend = 'Give each a place of its own; until then they stand by their ids.';
    return locate(file, [{ level: 'warning', path: ['order'], message, mend }]);
  });
}
