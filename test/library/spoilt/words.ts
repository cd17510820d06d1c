// Words that are missing, misspelt, broken or never said: each with what `check` says of it, for the test of the loader.
import { type Spoilt, soundContent } from '../sound-content.ts';

export const words: Spoilt[] = [
  {
    what: 'no English',
    changes: {
      'words/en/said.ftl': null,
    },
    said: ['words:1:1  There are no English words. Mend: Put the words into words/en/, as Fluent files.'],
  },
  {
    what: 'words missing for a stage',
    changes: {
      'words/en/said.ftl': ['baseline-snap = Some words.\n', ''],
      'words/de/said.ftl': ['baseline-snap = Einige Worte.\n', ''],
    },
    said: [
      'procedures/baseline.yaml:16:9  There are no words for stage "snap": "baseline-snap" is missing. Mend: Add "baseline-snap = …" to the words in words/en/.',
    ],
  },
  {
    what: 'words missing for what the program says',
    changes: {
      'words/en/said.ftl': ['held = Please wait, { $name }.\n', ''],
      'words/de/said.ftl': ['held = Bitte warten, { $name }.\n', ''],
    },
    said: [
      'src/conversation/menu.ts:2:18  There are no words for what the program says here: "held" is missing. Mend: Add "held = …" to the words in words/en/.',
    ],
  },
  {
    what: 'a translation missing',
    changes: {
      'words/de/said.ftl': ['baseline-snap = Einige Worte.\n', ''],
    },
    said: [
      'words/de/said.ftl:3:1  The words for "baseline-snap" are missing. Mend: Add "baseline-snap = …" below this, after words/en/said.ftl:4.',
    ],
  },
  {
    what: 'a file not translated',
    changes: {
      'words/en/more.ftl': 'reason-more = More.\n',
      'words/en/said.ftl': ['caution-hot = Some words.', 'caution-hot = { reason-more }'],
    },
    said: [
      'words/de  Warning: Not translated yet, so shown in English: more.ftl. Mend: Translate from words/en/, each to a file of the same name.',
    ],
  },
  {
    what: 'a file not translated into several languages',
    changes: {
      'words/en/more.ftl': 'reason-more = More.\n',
      'words/en/said.ftl': ['caution-hot = Some words.', 'caution-hot = { reason-more }'],
      'words/fr/said.ftl': soundContent['words/de/said.ftl']!,
      'words/fr/lexicon.yaml': soundContent['words/de/lexicon.yaml']!.replace('language: de', 'language: fr'),
    },
    said: [
      'words  Warning: Not translated yet, so shown in English: more.ftl (de, fr). Mend: Translate from words/en/, each to a file of the same name.',
    ],
  },
  {
    what: 'a draft of a language, with a few texts of a file',
    changes: {
      'words/fr/said.ftl': 'baseline-snap = Quelques mots.\n',
      'words/fr/lexicon.yaml': soundContent['words/de/lexicon.yaml']!.replace(
        'language: de',
        'language: fr\ndraft: true',
      ),
    },
    said: [
      'words/fr/said.ftl  Warning: A draft: 62 texts are shown in English: baseline-complaint, baseline-supply, baseline-closed, baseline-clear, baseline-start, baseline-complaint-none, baseline-complaint-bad, baseline-complaint-odd and 54 more. Mend: Translate what is missing; once nothing is, take "draft: true" out of the lexicon.',
    ],
  },
  {
    what: 'a misspelt key in a translation',
    changes: {
      'words/de/said.ftl': ['baseline-snap =', 'baseline-snpa ='],
    },
    said: [
      'words/de/said.ftl:3:1  The words for "baseline-snap" are missing. Mend: Add "baseline-snap = …" below this, after words/en/said.ftl:4.',
      'words/de/said.ftl:4:1  English has no "baseline-snpa". Mend: Did you mean "baseline-snap"?',
    ],
  },
  {
    what: 'a variable that is not given',
    changes: {
      'words/en/said.ftl': ['baseline-snap = Some words.', 'baseline-snap = The { $machin }.'],
    },
    said: [
      'words/en/said.ftl:4:23  "$machin" is not given to "baseline-snap". Mend: Use one of: $machine, $wake, $connector, $supply, $signal, $ground, $minutes, $seconds.',
    ],
  },
  {
    what: 'a variable that the program does not give',
    changes: {
      'words/en/said.ftl': ['held = Please wait, { $name }.', 'held = Please wait, { $nmae }.'],
    },
    said: [
      'words/de/said.ftl:63:24  "held" uses "$name", which English does not. Mend: Did you mean "$nmae"?',
      'words/en/said.ftl:63:23  "$nmae" is not given to "held". Mend: Use one of: $name.',
    ],
  },
  {
    what: 'a variable that English does not use',
    changes: {
      'words/de/said.ftl': ['held = Bitte warten, { $name }.', 'held = Bitte warten, { $nmae }.'],
    },
    said: [
      'words/de/said.ftl:63:24  "held" uses "$nmae", which English does not. Mend: Did you mean "$name"?',
    ],
  },
  {
    what: 'a key twice',
    changes: {
      'words/en/more.ftl': 'held = Again.\n',
      'words/de/more.ftl': '',
    },
    said: [
      'words/de/said.ftl:63:24  "held" uses "$name", which English does not. Mend: Take it out.',
      'words/en/said.ftl:63:1  "held" is here and at words/en/more.ftl:1. Mend: Keep one of the two.',
    ],
  },
  {
    what: 'words that nothing says',
    changes: {
      'words/en/said.ftl': ['held =', 'old = Old.\nheld ='],
    },
    said: [
      'words/en/said.ftl:63:1  Warning: Nothing says "old". Mend: Take it out, or mend its name.',
      'words/de/said.ftl:62:1  The words for "old" are missing. Mend: Add "old = …" below this, after words/en/said.ftl:63.',
    ],
  },
  {
    what: 'a reference that leads nowhere',
    changes: {
      'words/en/said.ftl': ['caution-hot = Some words.', 'caution-hot = { -shp } { hld }'],
    },
    said: [
      'words/en/said.ftl:10:17  "caution-hot" refers to "-shp", which is missing. Mend: Add "-shp = …", or take this out.',
      'words/en/said.ftl:10:26  "caution-hot" refers to "hld", which is missing. Mend: Did you mean "held"?',
    ],
  },
  {
    what: 'a line without an equals sign',
    changes: {
      'words/en/said.ftl': ['caution-hot = Some words.', 'caution-hot Some words.'],
    },
    said: [
      'words/en/said.ftl:10:13  This is not Fluent: Expected token: "=". Mend: Close each brace, and write "=" between key and text.',
    ],
  },
  {
    what: 'an open brace',
    changes: {
      'words/en/said.ftl': ['held = Please wait, { $name }.', 'held = Please wait, { $name.'],
    },
    said: [
      'words/en/said.ftl:63:28  This is not Fluent: Expected token: "}". Mend: Close each brace, and write "=" between key and text.',
    ],
  },
  {
    what: 'a choice without a star',
    changes: {
      'words/en/said.ftl': ['held = Please wait, { $name }.', 'held = { $name ->\n    [a] x\n    [b] y\n}'],
    },
    said: [
      'words/en/said.ftl:66:1  This is not Fluent: Expected one of the variants to be marked as default (*). Mend: Mark exactly one of the variants with a star, as "*[other]".',
    ],
  },
  {
    what: 'a message that says nothing',
    changes: {
      'words/en/said.ftl': ['caution-hot = Some words.', 'caution-hot ='],
    },
    said: [
      'words/en/said.ftl:10:14  This is not Fluent: Expected message "caution-hot" to have a value or attributes. Mend: Write a text after the "=".',
    ],
  },
  {
    what: 'a number in the words',
    changes: {
      'words/en/said.ftl': ['caution-hot = Some words.', 'caution-hot = Wait 10 minutes.'],
    },
    said: [
      'words/en/said.ftl:10:20  "caution-hot" holds the number 10, which its facts would not know. Mend: Write a variable there and let the program or the content give the number, or say it in words.',
    ],
  },
  {
    what: 'a number that would be grouped',
    changes: {
      'words/en/said.ftl': [
        'held = Please wait, { $name }.',
        'held = { NUMBER($name, useGrouping: "true") }',
      ],
    },
    said: [
      'words/en/said.ftl:63:10  "held" calls NUMBER with options, which is not there. Mend: Write the variable alone: its number comes ready.',
    ],
  },
  {
    what: 'a lexicon without a word for stop',
    changes: { 'words/de/lexicon.yaml': ['  "stop": [stop]\n', ''] },
    said: ['words/de/lexicon.yaml:4:3  "words › stop" is missing. Mend: Add "stop": a list of texts.'],
  },
  {
    what: 'a lexicon with a misspelt red flag',
    changes: { 'words/en/lexicon.yaml': ['  smoke:', '  smoek:'] },
    said: [
      'words/en/lexicon.yaml:19:3  "redFlags › smoke" is missing. Mend: Add "smoke": an entry with when.',
      'words/en/lexicon.yaml:23:3  "redFlags › smoek" is not known here. Mend: Did you mean "smoke"?',
    ],
  },
  {
    what: 'a lexicon that stands with another language',
    changes: { 'words/de/lexicon.yaml': ['language: de', 'language: en'] },
    said: [
      'words/de/lexicon.yaml:1:11  This lexicon says that it is of "en", but it stands with "de". Mend: Write "language: de".',
    ],
  },
  {
    what: 'a language without a lexicon',
    changes: { 'words/de/lexicon.yaml': null },
    said: [
      'words/de/lexicon.yaml:1:1  Warning: There is no lexicon: whoever writes in this language is understood in English alone. Mend: Add it; the content that ships with the program has one.',
    ],
  },
  {
    what: 'a language with its first words and no lexicon yet',
    changes: { 'words/nl/said.ftl': 'baseline-snap = Enkele woorden.\n' },
    said: [
      'words/nl/lexicon.yaml:1:1  Warning: There is no lexicon: whoever writes in this language is understood in English alone. Mend: Add it; the content that ships with the program has one.',
      'words/nl/said.ftl  Warning: A draft: 62 texts are shown in English: baseline-complaint, baseline-supply, baseline-closed, baseline-clear, baseline-start, baseline-complaint-none, baseline-complaint-bad, baseline-complaint-odd and 54 more. Mend: Translate what is missing; once nothing is, take "draft: true" out of the lexicon.',
    ],
  },
  {
    what: 'no English lexicon',
    changes: { 'words/en/lexicon.yaml': null },
    said: [
      'words/en/lexicon.yaml:1:1  This file is missing. Mend: Add it; the content that ships with the program has one.',
    ],
  },
];
