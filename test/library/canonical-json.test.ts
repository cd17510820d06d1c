import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson, hashOf } from '../../src/library/canonical-json.ts';

// RFC 8785, 3.2.2 and 3.2.3: the standard's own sample, and its order of names by UTF-16 code units (from memory).
test('the sample of RFC 8785 comes out as printed there', () => {
  const sample = {
    numbers: [Number('333333333.33333329'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
    string: '\u20ac$\u000F\u000aA\'\u0042\u0022\u005c\\"/',
    literals: [null, true, false],
  };
  expect(canonicalJson(sample)).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});

test('names are sorted by their code units', () => {
  const names = ['\u20ac', '\r', '\ufb33', '1', '\u{1f600}', '\u0080', '\u00f6'];
  const sorted = Object.keys(JSON.parse(canonicalJson(Object.fromEntries(names.map((name) => [name, 0])))));
  expect(sorted).toEqual(['1', '\r', '\u0080', '\u00f6', '\u20ac', '\u{1f600}', '\ufb33']);
});

test('what was put together in another order comes out the same, and reads back as it was', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue(), { noNullPrototype: true }), (value) => {
      const turned = Object.fromEntries(Object.entries(value).reverse());
      expect(canonicalJson(turned)).toBe(canonicalJson(value));
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

test('an entry that is not there leaves no trace', () => {
  expect(canonicalJson({ a: undefined, b: [undefined, 1] })).toBe('{"b":[null,1]}');
});

// FIPS 180-4 as in NIST's example "abc".
test('the hash is SHA-256', () => {
  expect(hashOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});
