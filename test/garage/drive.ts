// Plays one simulated owner against an engine from the first word to the record, the case, or a dead end.
import { createOwner, type Sent } from './owner.ts';
import type { Engine, InputLine, OutputLine } from './pipe-line.ts';
import type { Scene } from './scene.ts';

export interface Step {
  line: InputLine;
  sent: Sent | null;
  /** Slips that the owner made before this line. */
  slips: string[];
  outputs: OutputLine[];
}

export interface Story {
  scene: Scene;
  steps: Step[];
  /** Why it went no further, where neither a record nor a case ended it. */
  stuck: string | null;
}

export interface DriveOptions {
  /** Lines after which the owner has had enough. */
  most?: number;
  /** Minutes that the clock moves on after each line; 0 leaves it frozen. */
  minutes?: number;
}

/** The owner's name must be new to the engine: each story begins where nobody has been before. */
export async function drive(
  engine: Engine,
  scene: Scene,
  name: string,
  options: DriveOptions = {},
): Promise<Story> {
  const { most = 250, minutes = 0 } = options;
  const owner = createOwner(scene, name);
  const story: Story = { scene, steps: [], stuck: null };
  let line: InputLine | null = owner.first();
  let sent: Sent | null = null;
  let called = false;
  for (let spoken = 0; line; spoken++) {
    if (spoken >= most) {
      if (!called) story.stuck = `no end after ${most} messages`;
      return story;
    }
    const outputs = await engine.send(line);
    if (minutes > 0) outputs.push(...(await engine.send({ advance: `${minutes}m` })));
    story.steps.push({ line, sent, slips: scene.slips.splice(0), outputs });
    const mine = outputs.filter((output) => output.to === name);
    if (mine.some((output) => output.facts.record)) return story;
    called ||= outputs.some((output) => output.facts.case?.owner === name);
    // A person is on the way: the owner goes on only where the program still asks for something.
    if (called && !mine.some((output) => output.facts.ask)) return story;
    const reply = owner.reply(outputs);
    line = reply.line;
    sent = reply.sent;
    story.stuck = reply.stuck;
  }
  return story;
}
