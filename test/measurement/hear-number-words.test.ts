// Engine speeds in words, spelled out by the rules of each language's grammar, are understood as the figures that they name.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLexicon } from '../../src/commands/interpret.ts';
import { hear } from '../../src/measurement/hear.ts';
import type { Lexicon } from '../../src/measurement/lexicon.ts';
import { languages } from './corpus/read-corpus.ts';

const prepared = new Map<string, Lexicon>();
for (const language of languages) prepared.set(language, await readLexicon('content', language));
const lexiconsOf = (language: string): Lexicon[] =>
  [...new Set([language, 'en'])].flatMap((one) => prepared.get(one) ?? []);

const list = (words: string) => words.split(' ');

const english = {
  small: list(
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen',
  ),
  tens: list('- - twenty thirty forty fifty sixty seventy eighty ninety'),
};
function inEnglish(n: number): string {
  if (n < 20) return english.small[n]!;
  if (n < 100) return english.tens[Math.floor(n / 10)]! + (n % 10 ? `-${english.small[n % 10]}` : '');
  const [size, name] = n < 1000 ? [100, 'hundred'] : [1000, 'thousand'];
  const rest = n % size;
  const link = rest > 0 && rest < 100 ? ' and' : '';
  return `${inEnglish(Math.floor(n / size))} ${name}${rest ? `${link} ${inEnglish(rest)}` : ''}`;
}

const german = {
  small: list(
    'null ein zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn',
  ),
  tens: list('- - zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig'),
};
function inGerman(n: number): string {
  if (n === 1) return 'eins';
  const part = (m: number): string => {
    if (m < 20) return german.small[m]!;
    if (m < 100) return (m % 10 ? `${german.small[m % 10]}und` : '') + german.tens[Math.floor(m / 10)]!;
    const [size, name] = m < 1000 ? [100, 'hundert'] : [1000, 'tausend'];
    const rest = m % size;
    return part(Math.floor(m / size)) + name + (rest === 1 ? 'eins' : rest ? part(rest) : '');
  };
  return part(n);
}

const spanish = {
  small: list(
    'cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve',
  ),
  tens: list('- - - treinta cuarenta cincuenta sesenta setenta ochenta noventa'),
  hundreds: list(
    '- ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos',
  ),
};
function inSpanish(n: number): string {
  if (n < 30) return spanish.small[n]!;
  if (n < 100) return spanish.tens[Math.floor(n / 10)]! + (n % 10 ? ` y ${spanish.small[n % 10]}` : '');
  if (n === 100) return 'cien';
  if (n < 1000) return spanish.hundreds[Math.floor(n / 100)]! + (n % 100 ? ` ${inSpanish(n % 100)}` : '');
  const thousands = Math.floor(n / 1000);
  return `${thousands === 1 ? '' : `${inSpanish(thousands)} `}mil${n % 1000 ? ` ${inSpanish(n % 1000)}` : ''}`;
}

const french = list(
  'zéro un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize dix-sept dix-huit dix-neuf',
);
const frenchTens = list('- - vingt trente quarante cinquante soixante soixante quatre-vingt quatre-vingt');
function inFrench(n: number): string {
  if (n < 20) return french[n]!;
  if (n < 100) {
    const ten = Math.floor(n / 10);
    const rest = n - 10 * (ten === 7 || ten === 9 ? ten - 1 : ten);
    if (n === 80) return 'quatre-vingts';
    if (rest === 0) return frenchTens[ten]!;
    return frenchTens[ten]! + ((rest === 1 || rest === 11) && ten < 8 ? ' et ' : '-') + french[rest]!;
  }
  const [size, name] = n < 1000 ? [100, 'cent'] : [1000, 'mille'];
  const [count, rest] = [Math.floor(n / size), n % size];
  const plural = size === 100 && count > 1 && rest === 0 ? 's' : '';
  return (count === 1 ? '' : `${inFrench(count)} `) + name + plural + (rest ? ` ${inFrench(rest)}` : '');
}

const italian = {
  small: list(
    'zero uno due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici quindici sedici diciassette diciotto diciannove',
  ),
  tens: list('- - venti trenta quaranta cinquanta sessanta settanta ottanta novanta'),
};
function inItalian(n: number): string {
  if (n < 20) return italian.small[n]!;
  if (n < 100) {
    const ten = italian.tens[Math.floor(n / 10)]!;
    const unit = n % 10;
    // The ten loses its last vowel before "uno" and "otto"; a last "tre" takes an accent.
    if (unit === 0) return ten;
    return (unit === 1 || unit === 8 ? ten.slice(0, -1) : ten) + (unit === 3 ? 'tré' : italian.small[unit]!);
  }
  const rest = n < 1000 ? n % 100 : n % 1000;
  const count = Math.floor(n / (n < 1000 ? 100 : 1000));
  const name = n < 1000 ? 'cento' : count === 1 ? 'mille' : 'mila';
  return (count === 1 ? '' : inItalian(count)) + name + (rest ? inItalian(rest) : '');
}

const portuguese = {
  small: list(
    'zero um dois três quatro cinco seis sete oito nove dez onze doze treze catorze quinze dezesseis dezessete dezoito dezenove',
  ),
  tens: list('- - vinte trinta quarenta cinquenta sessenta setenta oitenta noventa'),
  hundreds: list(
    '- cento duzentos trezentos quatrocentos quinhentos seiscentos setecentos oitocentos novecentos',
  ),
};
function inPortuguese(n: number): string {
  if (n < 20) return portuguese.small[n]!;
  if (n < 100) return portuguese.tens[Math.floor(n / 10)]! + (n % 10 ? ` e ${portuguese.small[n % 10]}` : '');
  if (n === 100) return 'cem';
  if (n < 1000)
    return portuguese.hundreds[Math.floor(n / 100)]! + (n % 100 ? ` e ${inPortuguese(n % 100)}` : '');
  const [count, rest] = [Math.floor(n / 1000), n % 1000];
  const link = rest > 0 && (rest <= 100 || rest % 100 === 0) ? ' e ' : ' ';
  return `${count === 1 ? '' : `${inPortuguese(count)} `}mil${rest ? link + inPortuguese(rest) : ''}`;
}

const spell: Record<string, (n: number) => string> = {
  en: inEnglish,
  de: inGerman,
  es: inSpanish,
  fr: inFrench,
  it: inItalian,
  pt: inPortuguese,
};

// The rules are those of each language's ordinary grammar, from memory; a row of well-known ones keeps this test honest.
test.each([
  ['en', 1350, 'one thousand three hundred and fifty'],
  ['de', 1521, 'eintausendfünfhunderteinundzwanzig'],
  ['es', 1946, 'mil novecientos cuarenta y seis'],
  ['fr', 1991, 'mille neuf cent quatre-vingt-onze'],
  ['fr', 2300, 'deux mille trois cents'],
  ['it', 1723, 'millesettecentoventitré'],
  ['pt', 1234, 'mil duzentos e trinta e quatro'],
])('spelled by this test in %s: %d is "%s"', (language, n, words) => {
  expect(spell[language]!(n)).toBe(words);
});

describe('an engine speed in words is the figure that it names', () => {
  test.each(languages)('%s', (language) => {
    const wrong: string[] = [];
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 15_999 }), (speed) => {
        const words = spell[language]!(speed);
        const heard = hear(words, '1/min', lexiconsOf(language));
        if (heard.kind !== 'reading' || heard.value !== speed)
          wrong.push(`${words}: ${JSON.stringify(heard)}`);
      }),
      { numRuns: 500, seed: 10 },
    );
    expect(wrong).toEqual([]);
  });
});
