// Holds the colours to published measures: contrast by WCAG 2.2, and colour vision by Machado, Oliveira and Fernandes.
import { describe, expect, test } from 'vitest';
import { wireColours } from '../../src/picture/draw-connector.ts';
import { colours, results } from '../../src/picture/look.ts';

type Rgb = readonly [number, number, number];

const channels = (colour: string): Rgb => {
  const value = Number.parseInt(colour.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
};

/** Relative luminance as WCAG 2.2 defines it. */
const linearOf = (colour: string): Rgb => {
  const [r, g, b] = channels(colour).map((channel) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return [r!, g!, b!];
};

const luminance = (colour: string) => {
  const [r, g, b] = linearOf(colour);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

describe('contrast by WCAG 2.2', () => {
  test('the formula itself: black on white is 21, #767676 on white just above 4.5', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    // The lightest grey that passes on white, as is commonly given (from memory).
    expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  });

  // Success criterion 1.4.3: text at least 4.5 : 1.
  const onPaper = [colours.ink, colours.soft, colours.bandEdge, ...results.map((result) => colours[result])];
  test.each(onPaper)('text in %s on paper', (colour) => {
    expect(contrast(colour, colours.paper)).toBeGreaterThanOrEqual(4.5);
  });

  test.each([
    [colours.ink, colours.track],
    [colours.soft, colours.track],
    [colours.implausible, colours.track],
    [colours.ink, colours.band],
    [colours.ink, colours.bandMiddle],
    [colours.paper, colours.bandEdge],
  ])('text in %s on %s', (text, ground) => {
    expect(contrast(text, ground)).toBeGreaterThanOrEqual(4.5);
  });

  // 1.4.11: what a picture needs to be understood, at least 3 : 1 against what lies beside it.
  test.each([
    ['the band’s edge on the track', colours.bandEdge, colours.track],
    ['the band’s edge on the band', colours.bandEdge, colours.band],
    ['a fault’s upright on the track', colours.adjust, colours.track],
    ['a missing figure on the track', colours.implausible, colours.track],
    ['the edge on a white chat', colours.edge, '#ffffff'],
    ['the edge on a black chat', colours.edge, '#000000'],
    ['the edge on a slate chat', colours.edge, '#15202b'],
    ['paper on a slate chat', colours.paper, '#15202b'],
  ])('%s', (_, a, b) => {
    expect(contrast(a, b)).toBeGreaterThanOrEqual(3);
  });
});

// Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", 2009,
// table of severity 1.0, applied to linear RGB.
const deficiencies: Record<string, readonly Rgb[]> = {
  'normal vision': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** CIE 1976 L*a*b* under D65 from linear sRGB (IEC 61966-2-1). */
function lab([r, g, b]: Rgb): Rgb {
  const f = (t: number) => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

function seen(colour: string, deficiency: readonly Rgb[]): Rgb {
  const linear = linearOf(colour);
  const mixed = deficiency.map((row) =>
    Math.min(
      1,
      Math.max(
        0,
        row.reduce((sum, share, index) => sum + share * linear[index]!, 0),
      ),
    ),
  );
  return lab([mixed[0]!, mixed[1]!, mixed[2]!]);
}

const difference = (a: string, b: string, deficiency: readonly Rgb[]) =>
  Math.hypot(...seen(a, deficiency).map((value, index) => value - seen(b, deficiency)[index]!));

describe.each(Object.entries(deficiencies))('with %s', (name, matrix) => {
  test('the formula itself: white and black lie 100 apart', () => {
    expect(difference('#ffffff', '#000000', matrix)).toBeCloseTo(100, 0);
  });

  // Twenty and more is another colour at a glance (common practice, no source).
  test.each([
    ['pass and adjust', colours.pass, colours.adjust],
    ['pass and implausible', colours.pass, colours.implausible],
    ['unclear and adjust', colours.unclear, colours.adjust],
    ['opening and closing', colours.ink, colours.bandEdge],
  ])('%s are told apart', (what, a, b) => {
    const least = what === 'pass and adjust' ? 40 : 15;
    expect(difference(a, b, matrix)).toBeGreaterThan(least);
  });

  test('most wires differ from each other; those that do not are few, and named in words beside the plug', () => {
    const names = Object.keys(wireColours) as (keyof typeof wireColours)[];
    const alike = names.flatMap((a, index) =>
      names
        .slice(index + 1)
        .filter((b) => difference(wireColours[a], wireColours[b], matrix) < 10)
        .map((b) => `${a}/${b}`),
    );
    expect(alike.length, `${name}: ${alike.join(' ')}`).toBeLessThanOrEqual(4);
  });
});
