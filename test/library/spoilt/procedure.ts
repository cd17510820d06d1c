// Procedures that lead nowhere, go round, or miss a guard: each with what `check` says of it, for the test of the loader.
import type { Spoilt } from '../sound-content.ts';

export const procedure: Spoilt[] = [
  {
    what: 'a stage id twice',
    changes: {
      'procedures/baseline.yaml': ['- id: snap', '- id: closed'],
    },
    said: [
      'procedures/baseline.yaml:16:9  There is another stage "closed" above. Mend: Give this one an id of its own.',
    ],
  },
  {
    what: 'a way to a stage that there is not',
    changes: {
      'procedures/baseline.yaml': ['{ go: closed }', '{ go: close }'],
    },
    said: ['procedures/baseline.yaml:20:20  There is no stage "close". Mend: Did you mean "closed"?'],
  },
  {
    what: 'a next that there is not',
    changes: {
      'procedures/baseline.yaml': ['    do: [snap]', '    next: finish\n    do: [snap]'],
    },
    said: [
      'procedures/baseline.yaml:18:11  There is no stage "finish". Mend: Use one of: complaint, supply, closed, snap, clear, start.',
    ],
  },
  {
    what: 'a condition on a stage that there is not',
    changes: {
      'procedures/baseline.yaml': ['passed: closed', 'passed: clsed'],
    },
    said: ['procedures/baseline.yaml:17:22  There is no stage "clsed". Mend: Did you mean "closed"?'],
  },
  {
    what: 'a condition on a question that nobody asks',
    changes: {
      'procedures/baseline.yaml': ['answer: complaint', 'answer: weather'],
    },
    said: ['procedures/baseline.yaml:13:44  There is no question "weather". Mend: Use one of: complaint.'],
  },
  {
    what: 'a condition on an answer that there is not',
    changes: {
      'procedures/baseline.yaml': ['is: none', 'is: fine'],
    },
    said: [
      'procedures/baseline.yaml:13:59  The question "complaint" has no answer "fine". Mend: Use one of: none, bad, odd.',
    ],
  },
  {
    what: 'a condition on a part that nobody turns',
    changes: {
      'procedures/baseline.yaml': ['touched: sensor-body', 'touched: idle-stop'],
    },
    said: [
      'procedures/baseline.yaml:17:43  There is no turned part "idle-stop". Mend: Use one of: sensor-body.',
    ],
  },
  {
    what: 'an answer twice',
    changes: {
      'procedures/baseline.yaml': ['{ id: none }', '{ id: odd }'],
    },
    said: [
      'procedures/baseline.yaml:8:79  There is another answer "odd" above. Mend: Give this one an id of its own.',
      'procedures/baseline.yaml:13:59  The question "complaint" has no answer "none". Mend: Use one of: odd, bad.',
    ],
  },
  {
    what: 'a stage that nothing leads to',
    changes: {
      'procedures/baseline.yaml': [
        '    do: [probe-supply, wake]',
        '    next: clear\n    do: [probe-supply, wake]',
      ],
    },
    said: [
      'procedures/baseline.yaml:13:9  No stage leads to "closed". Mend: Let another stage lead to it by next or go, or take it out.',
      'procedures/baseline.yaml:17:9  No stage leads to "snap". Mend: Let another stage lead to it by next or go, or take it out.',
    ],
  },
  {
    what: 'a ring without a way out',
    changes: {
      'procedures/baseline.yaml': [
        '    ask: { confirm: true }\n  - id: start',
        '    next: supply\n    ask: { confirm: true }\n  - id: start',
      ],
    },
    said: [
      'procedures/baseline.yaml:9:9  From "supply" there is no way out: supply, closed, snap, clear only lead to each other. Mend: Let one of them go on to a stage behind them, or call a person.',
      'procedures/baseline.yaml:25:9  No stage leads to "start". Mend: Let another stage lead to it by next or go, or take it out.',
    ],
  },
  {
    what: 'a ring in which nothing is asked',
    changes: {
      'procedures/baseline.yaml': [
        '  - id: clear',
        '  - { id: over, when: [{ passed: snap }], conclude: left-alone, next: snap }\n  - id: clear',
      ],
    },
    said: [
      'procedures/baseline.yaml:16:9  From "snap" the stages lead back to it without asking anything. Mend: Take out the "next" that leads back, or let a stage between ask something.',
      'procedures/baseline.yaml:21:11  There are no words for stage "over": "baseline-over" is missing. Mend: Add "baseline-over = …" to the words in words/en/.',
    ],
  },
  {
    what: 'a stage that asks nothing',
    changes: {
      'procedures/baseline.yaml': [
        '    do: [start-engine]\n    ask: { confirm: true }',
        '    do: [start-engine]',
      ],
    },
    said: [
      'procedures/baseline.yaml:24:9  Stage "start" neither asks nor concludes anything. Mend: Add an ask, as "ask: { confirm: true }".',
    ],
  },
  {
    what: 'an adjustment without a reading',
    changes: {
      'procedures/baseline.yaml': [
        'ask: { reading: signal-closed-stop, at: closed }',
        'ask: { confirm: true }',
      ],
    },
    said: [
      'procedures/baseline.yaml:15:13  Stage "closed" adjusts, but asks for no reading. Mend: Add "ask: { reading: … }".',
    ],
  },
  {
    what: 'a sensor let go and never fixed',
    changes: {
      'procedures/baseline.yaml': [', fix: "tighten:sensor-screws"', ''],
    },
    said: [
      'procedures/baseline.yaml:15:13  Stage "closed" lets something go and does not fix it again, or the other way round. Mend: Give both free and fix, or neither.',
    ],
  },
  {
    what: 'an engine started without a list',
    changes: {
      'procedures/baseline.yaml': ['    startList: true\n', ''],
    },
    said: [
      'procedures/baseline.yaml:24:9  Stage "start" starts the engine, and nothing is confirmed before. Mend: Put stages with "startList: true" before it, one for each thing that must hold first.',
    ],
  },
  {
    what: 'a picture of a part that is not named',
    changes: {
      'procedures/baseline.yaml': ['    do: [snap]', '    do: [snap]\n    picture: part'],
    },
    said: [
      'procedures/baseline.yaml:19:14  Stage "snap" shows a part, but does not say which. Mend: Add "shows" with the part.',
    ],
  },
  {
    what: 'an adjustment to a target that goes by another',
    changes: {
      'procedures/baseline.yaml': [
        'ask: { reading: signal-closed-stop, at: closed }',
        'ask: { reading: signal-snapped }',
      ],
    },
    said: [
      'machines/tern-200.yaml:20:3  "signal-snapped" goes by another reading, but stage "closed" of "baseline" adjusts to it. Mend: Give it limits of its own.',
    ],
  },
  {
    what: 'withdrawn for one that there is not',
    changes: {
      'procedures/baseline.yaml': [
        'name: Baseline',
        'name: Baseline\nwithdrawn: { why: wrong, instead: basline-2 }',
      ],
    },
    said: [
      'procedures/baseline.yaml:3:35  There is no other procedure "basline-2". Mend: There is no other procedure yet: add one, or take this out.',
    ],
  },
  {
    what: 'a next that passes over the start list',
    changes: { 'procedures/baseline.yaml': ['    do: [snap]', '    next: start\n    do: [snap]'] },
    said: [
      'procedures/baseline.yaml:18:11  From "snap" to "start" the start list is passed over: clear. Mend: Lead to "clear" instead, or take this out.',
    ],
  },
  {
    what: 'an answer that passes over the start list',
    changes: { 'procedures/baseline.yaml': ['{ checkOnly: worn }', '{ go: start }'] },
    said: [
      'procedures/baseline.yaml:8:57  From "complaint" to "start" the start list is passed over: clear. Mend: Lead to "clear" instead, or take this out.',
    ],
  },
  {
    what: 'a reading out of its limits that passes over the start list',
    changes: { 'procedures/baseline.yaml': ['{ go: closed }', '{ go: start }'] },
    said: [
      'procedures/baseline.yaml:20:20  From "snap" to "start" the start list is passed over: clear. Mend: Lead to "clear" instead, or take this out.',
    ],
  },
  {
    what: 'no caution left',
    changes: { 'procedures/baseline.yaml': ['    cautions: [hot]\n', ''] },
    said: [
      'procedures/baseline.yaml:3:1  Warning: No stage of this procedure shows a caution. Mend: Put "cautions: [ … ]" back to each stage where hands, fingers or fuel are at risk.',
      'words/en/said.ftl:10:1  Warning: Nothing says "caution-hot". Mend: Take it out, or mend its name.',
      'words/en/said.ftl:61:1  Warning: Nothing says "caution-hot-name". Mend: Take it out, or mend its name.',
    ],
  },
];
