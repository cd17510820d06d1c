// All content as the core sees it: one checked, plain value that a set-up is pinned to.

import { type FaultContent, faultsFor } from './fault.ts';
import type { Machine } from './machine.ts';
import type { Procedure } from './procedure.ts';
import type { Tip } from './tip.ts';
import type { Workshop } from './workshop.ts';

export interface Content {
  /** The hash of everything below. */
  hash: string;
  workshop: Workshop;
  machines: Record<string, Machine>;
  procedures: Record<string, Procedure>;
  faults: FaultContent;
  /** Only those of the newest content are posted; an older one may come without any. */
  tips: Record<string, Tip>;
}

const fitted = new WeakMap<Content, Map<Machine['sensor']['kind'], Content>>();

/** The content as it holds for this machine; made once for each kind of sensor, since the diagnosis keeps what it reckons by it. */
export function contentFor(content: Content, { sensor: { kind } }: Machine): Content {
  const known = fitted.get(content) ?? new Map<Machine['sensor']['kind'], Content>();
  fitted.set(content, known);
  const own = known.get(kind) ?? { ...content, faults: faultsFor(content.faults, kind) };
  known.set(kind, own);
  return own;
}

const byOrder = <T extends { order: number; id: string }>(things: Record<string, T>): T[] =>
  Object.values(things).sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));

/** The procedures of the menu, in their order; withdrawn ones are not offered. */
export function proceduresOffered(content: Content): Procedure[] {
  return byOrder(content.procedures).filter((procedure) => procedure.withdrawn === undefined);
}

/** The machines that a procedure is offered for, in their order. */
export function machinesFor(content: Content, procedure: string): Machine[] {
  return byOrder(content.machines).filter((machine) => machine.procedures.includes(procedure));
}

/** The tips for the channel, in their order. */
export function tipsInOrder(content: Content): Tip[] {
  return byOrder(content.tips);
}
