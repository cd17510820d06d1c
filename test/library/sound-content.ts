// A small sound content folder, written to a temporary place and spoilt there one thing at a time, for the tests of the library.
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { loadContent } from '../../src/library/load-content.ts';
import type { Problem } from '../../src/library/problem.ts';
import { wordsAlwaysNeeded } from '../../src/library/words-needed.ts';
import { steeringWords } from '../../src/measurement/heard.ts';
import { redFlags } from '../../src/procedure/vocabulary.ts';

const workshop = `name: Quayside Garage
language: en
timeZone: Europe/Lisbon
hours:
  mon: [["08:30", "12:30"], ["13:30", "18:00"]]
holidays: ["2026-12-25"]
`;

const machine = `id: tern-200
name: Tern 200
procedures: [baseline]
throttle: cable
sensor: { kind: potentiometer, adjustable: "yes", nominalSupply: 5.0 }
battery: lead-acid
relearn: { way: none }
wake: { en: Switch it on. }
awakeMinutes: 15
warmUpMinutes: 5
connector:
  where: { en: "on the left" }
  pins:
    - { label: "1", role: supply, wire: [red] }
    - { label: "2", role: signal, wire: [green, white] }
    - { label: "3", role: ground, wire: [black] }
parts:
  sensor-body: { where: { en: "on the shaft" }, perUnit: 0.01, raises: clockwise }
targets:
  supply-voltage: { low: 4.8, high: 5.2, source: manual }
  signal-closed-stop: { centre: 0.4, tolerance: 0.01, source: manual }
  signal-snapped: { like: signal-closed-stop, tolerance: 0.01, source: manual }
`;

const procedure = `id: baseline
name: Baseline
stages:
  - id: complaint
    cautions: [hot]
    ask:
      question: complaint
      answers: [{ id: none }, { id: bad, outcome: { checkOnly: worn } }, { id: odd, outcome: { call: odd } }]
  - id: supply
    do: [probe-supply, wake]
    ask: { reading: supply-voltage }
  - id: closed
    when: [{ checkOnly: false }, { answer: complaint, is: none }]
    ask: { reading: signal-closed-stop, at: closed }
    adjust: { part: sensor-body, free: "loosen:sensor-screws", fix: "tighten:sensor-screws" }
  - id: snap
    when: [{ passed: closed }, { touched: sensor-body }]
    do: [snap]
    ask: { reading: signal-snapped }
    failing: { go: closed }
  - id: clear
    startList: true
    ask: { confirm: true }
  - id: start
    do: [start-engine]
    ask: { confirm: true }
`;

const faults = `faults:
  - id: nothing-wrong
    row: null
    layer: owner
    prior: { complaint: 600, odd-reading: 500 }
  - id: unknown
    row: null
    layer: owner
    prior: { complaint: 400, odd-reading: 500 }
questions: []
checks:
  - id: look
    do: ["check:leads"]
    ask: { kind: retake }
    minutes: 2
    mends: { unknown: 0.5 }
pairs: []
`;

const lexicon = (language: string) => `language: ${language}
decimals: ["."]
words:
${steeringWords.map((word) => `  "${word}": [${word}]`).join('\n')}
numbers: { 1: [one] }
multipliers: {}
fractions: {}
units: { V: [volts] }
phrases: { hedge: [about] }
redFlags:
${redFlags.map((flag) => `  ${flag}: { when: ["${flag}"] }`).join('\n')}
`;

const keys = [
  ...['complaint', 'supply', 'closed', 'snap', 'clear', 'start'].map((stage) => `baseline-${stage}`),
  ...['none', 'bad', 'odd'].map((answer) => `baseline-complaint-${answer}`),
  ...['caution-hot', 'check-only-worn', 'reason-odd', 'reason-odd-owner', 'part-sensor-body', 'check-look'],
  ...['red', 'green', 'white', 'black'].map((colour) => `colour-${colour}`),
  ...[
    'wake',
    'probe-supply',
    'snap',
    'start-engine',
    'loosen-sensor-screws',
    'tighten-sensor-screws',
    'check-leads',
  ].map((action) => `do-${action}`),
  ...['nothing-wrong', 'unknown'].flatMap((fault) =>
    ['', '-why', '-remedy'].map((ending) => `fault-${fault}${ending}`),
  ),
  ...wordsAlwaysNeeded,
  ...['complaint', 'supply', 'closed', 'snap', 'clear', 'start'].map((stage) => `baseline-${stage}-name`),
  ...['caution-hot-name', 'check-look-name'],
];

export const soundContent: Readonly<Record<string, string>> = {
  'workshop.yaml': workshop,
  'machines/tern-200.yaml': machine,
  'procedures/baseline.yaml': procedure,
  'faults/all.yaml': faults,
  'words/en/lexicon.yaml': lexicon('en'),
  'words/de/lexicon.yaml': lexicon('de'),
  'words/en/said.ftl': `${keys.map((key) => `${key} = Some words.`).join('\n')}\nheld = Please wait, { $name }.\n`,
  'words/de/said.ftl': `${keys.map((key) => `${key} = Einige Worte.`).join('\n')}\nheld = Bitte warten, { $name }.\n`,
};

/** A file is given anew, or as the text to be changed and what it becomes; null takes it away. */
export type Change = string | Uint8Array | readonly string[] | null;

/** One way in which content can be wrong, and the lines that are printed for it. */
export interface Spoilt {
  what: string;
  changes: Record<string, Change>;
  said: string[];
}

/** Loads the sound content with these changes; the files of the problems are named from the folder. */
export async function loadChanged(changes: Readonly<Record<string, Change>>) {
  const folder = await mkdtemp(join(tmpdir(), 'content-'));
  try {
    for (const [name, text] of Object.entries({ ...soundContent, ...added(changes) })) {
      if (text === null) continue;
      await mkdir(dirname(join(folder, name)), { recursive: true });
      await writeFile(join(folder, name), text);
    }
    const sources = [{ file: 'src/conversation/menu.ts', text: "\n  say(turn, line('held', { name }));\n" }];
    const loaded = await loadContent(folder, Promise.resolve(sources));
    const problems = loaded.problems.map((problem): Problem => {
      const shorten = (text: string) => text.replaceAll(`${folder}/`, '').replaceAll(folder, '.');
      return {
        ...problem,
        file: shorten(problem.file),
        message: shorten(problem.message),
        mend: shorten(problem.mend),
      };
    });
    return { newest: loaded.newest, problems };
  } finally {
    await rm(folder, { recursive: true });
  }
}

function added(changes: Readonly<Record<string, Change>>): Record<string, string | Uint8Array | null> {
  return Object.fromEntries(
    Object.entries(changes).map(([name, change]) => {
      if (change === null || typeof change === 'string' || change instanceof Uint8Array)
        return [name, change];
      const [from = '', to = ''] = change;
      const text = soundContent[name] ?? '';
      if (!text.includes(from)) throw new Error(`${name} has no "${from}".`);
      return [name, text.replace(from, to)];
    }),
  );
}
