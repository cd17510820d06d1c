// Plays one set-up with a case in it through the console's pipe, and keeps what was said: the script for the other platforms.

import { createOwner } from '../garage/owner.ts';
import { openPipe } from '../garage/pipe.ts';
import type { Engine, InputLine, OutputLine } from '../garage/pipe-line.ts';
import { drawScene } from '../garage/scene.ts';

export const owner = 'o1';
export const member = 's1';

type StaffLine = { from: string; role: 'staff'; case: string } & ({ text: string } | { choose: string });
export type ScriptLine = InputLine | StaffLine;

export interface ScriptStep {
  line: ScriptLine;
  /** All that it caused, to the owner and to the desk. */
  outputs: OutputLine[];
}

const careful = { wrongSense: 0, falseDone: 0, swappedDigits: 0, mistyped: 0 };
const most = 150;

/** The person is called for after so many lines, takes the case, says a word, and gives it back. */
export async function tellScript(content: string, callAfter: number): Promise<ScriptStep[]> {
  const command = ['npm', 'run', '--silent', 'chat', '--', '--pipe', '--content', content];
  const engine = openPipe(command);
  try {
    return await tell(engine, callAfter);
  } finally {
    await engine.close();
  }
}

async function tell(engine: Engine, callAfter: number): Promise<ScriptStep[]> {
  const scene = drawScene('storm', { kind: 'mis-set' }, careful);
  const person = createOwner(scene, owner);
  const steps: ScriptStep[] = [];
  const say = async (line: ScriptLine) => {
    const outputs = await engine.send(line as InputLine);
    steps.push({ line, outputs });
    return outputs;
  };
  let line: InputLine | null = person.first();
  while (line && steps.length < most) {
    let outputs = await say(line);
    if (steps.length === callAfter) {
      const called = await say({ from: owner, text: 'human' });
      const caseId = called.find((output) => output.facts.case)?.facts.case?.id;
      if (!caseId) throw new Error('no case was opened');
      const staff = { from: member, role: 'staff' as const, case: caseId };
      await say({ ...staff, choose: 'take' });
      await say({ ...staff, text: 'Take your time. Which lead is red?' });
      await say({ from: owner, text: 'the one on pin two @everyone **now**' });
      outputs = await say({ ...staff, choose: 'give-back' });
    }
    if (outputs.some((output) => output.to === owner && output.facts.record)) return steps;
    line = person.reply(outputs).line;
  }
  throw new Error(`the script came to no record within ${steps.length} lines`);
}
