// Writes one whole conversation down like a story, with what was true behind it, for whoever looks for a problem.
import type { Story } from './drive.ts';
import type { Outcome } from './judge.ts';
import type { OutputLine } from './pipe-line.ts';
import { trueValue } from './truth.ts';

const told = [
  'signal-closed-stop',
  'signal-idle',
  'signal-fast-idle',
  'signal-wide-open',
  'supply-voltage',
] as const;

export function tellStory(story: Story, outcome: Outcome): string {
  const { scene } = story;
  const { meter, habits, machine } = scene;
  const lines = [
    `seed ${scene.seed}: ${scene.faults.map((fault) => fault.id).join(' + ') || 'no fault'}; complaint: ${scene.complaint ? 'yes' : 'no'}`,
    `meter: ${meter.counts} counts, ${meter.autoRange ? 'auto range' : 'manual range'}, ±(${meter.share * 100} % + ${meter.digits}); types ${habits.style}`,
    `clockwise ${machine.sensor.clockwiseRaises ? 'raises' : 'lowers'}, ${(machine.sensor.nudge * 1000).toFixed(0)} mV a nudge; screws shift ${(machine.screws.upper.shift * 1000).toFixed(0)} and ${(machine.screws.lower.shift * 1000).toFixed(0)} mV; stop ${(machine.stop.voltsPerTurn * 1000).toFixed(0)} mV a turn`,
    '',
  ];
  for (const { line, sent, slips, outputs } of story.steps) {
    for (const slip of slips) lines.push(`    (owner ${slip})`);
    const said = 'text' in line ? line.text : 'choose' in line ? `[${line.choose}]` : JSON.stringify(line);
    const truth = sent?.truth === null || sent === null ? '' : `    (true: ${sent.truth.toFixed(4)})`;
    lines.push(`> ${said}${truth}`);
    for (const output of outputs) lines.push(...tellOutput(output));
  }
  lines.push('', 'In the end, in truth:');
  for (const measure of told) {
    lines.push(`  ${measure} ${trueValue(machine, measure, false)?.toFixed(4)}`);
  }
  const { declared, withPerson, reason, stuck, wrong, messages, stages, loops, rank } = outcome;
  lines.push(
    `declared ${declared ?? 'nothing'}${withPerson ? `, with a person (${reason})` : ''}${stuck ? `, stuck: ${stuck}` : ''}`,
    `${messages} messages over ${stages} stages; loops of ${loops.join(', ') || 'none'}; rank of the true cause ${rank ?? '–'}; ${outcome.endedRight ? 'ended right' : 'NOT ENDED RIGHT'}`,
    ...wrong.map((why) => `WRONG: ${why}`),
  );
  if (scene.unknown.size) lines.push(`not in the contract: ${[...scene.unknown].join(', ')}`);
  return lines.join('\n');
}

function tellOutput(output: OutputLine): string[] {
  const { stage, do: actions, ask, move, verdict, causes, case: opened } = output.facts;
  const behind = [
    stage && `stage ${stage}`,
    actions?.length && `do ${actions.join(' ')}`,
    move &&
      `move ${move.part} ${move.direction} ${move.amount} ${move.unit}${move.until ? ` until ${move.until.low}–${move.until.high}` : ''}`,
    verdict &&
      `${verdict.result} ${verdict.measure} ${verdict.value ?? ''} [${verdict.low}, ${verdict.high}]`,
    ask && `ask ${ask.kind} ${'measure' in ask ? ask.measure : 'question' in ask ? ask.question : ''}`,
    causes?.length &&
      `causes ${causes
        .slice(0, 3)
        .map((cause) => `${cause.id} ${cause.probability?.toFixed(2) ?? ''}`)
        .join(', ')}`,
    opened && `case ${opened.state}: ${opened.reason}`,
  ].filter(Boolean);
  const words = output.text.split('\n').map((row) => `    ${output.to === 'desk' ? 'DESK | ' : ''}${row}`);
  const choices = output.choices.map((choice) => `[${choice.label}]`).join(' ');
  return [...words, ...(choices ? [`    ${choices}`] : []), `      {${behind.join('; ')}}`];
}
