// Puts a procedure and a machine into a start link and reads them back, for every platform that has such links.

export interface Start {
  procedure: string | null;
  machine: string | null;
}

/** At most 64 characters of A-Z a-z 0-9 _ -, as the platforms allow; ids in content have at most 30 each. */
export function encodeStart(start: Start): string {
  return [start.procedure, start.machine].filter((id) => id !== null).join('_');
}

const payload = /^([a-z0-9-]+)(?:_([a-z0-9-]+))?$/;

/** A payload that is none of ours opens the door without naming a room. */
export function decodeStart(text: string): Start {
  const match = payload.exec(text.trim());
  return { procedure: match?.[1] ?? null, machine: match?.[2] ?? null };
}

/** The id of a start button's choice, `procedure/machine` or `procedure`. */
export function readStartChoice(choice: string): Start {
  const [procedure, machine] = choice.split('/');
  return { procedure: procedure || null, machine: machine || null };
}
