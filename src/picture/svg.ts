// SVG as strings: elements, numbers short and the same on every run, text made safe for XML; for all drawings.

export type Attributes = Record<string, string | number | undefined>;

/** Two decimals are a fortieth of what a phone can show, and keep equal pictures equal byte by byte. */
export function round(value: number): number {
  const rounded = Math.round(value * 100) / 100;
  return rounded === 0 ? 0 : rounded;
}

export function escapeXml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

/** An element; its children are SVG already. */
export function element(name: string, attributes: Attributes, ...children: string[]): string {
  let head = `<${name}`;
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined) continue;
    head += ` ${key}="${typeof value === 'number' ? round(value) : escapeXml(value)}"`;
  }
  return children.length === 0 ? `${head}/>` : `${head}>${children.join('')}</${name}>`;
}

export const line = (x1: number, y1: number, x2: number, y2: number, style: Attributes): string =>
  element('line', { x1, y1, x2, y2, ...style });

export const box = (x: number, y: number, width: number, height: number, style: Attributes): string =>
  element('rect', { x, y, width: Math.max(0, width), height: Math.max(0, height), ...style });

export const disc = (cx: number, cy: number, r: number, style: Attributes): string =>
  element('circle', { cx, cy, r, ...style });

export const shape = (points: readonly (readonly [number, number])[], style: Attributes): string =>
  element('polygon', { points: points.map(([x, y]) => `${round(x)},${round(y)}`).join(' '), ...style });

export const path = (d: string, style: Attributes): string => element('path', { d, ...style });

/** A point on a circle; degrees go clockwise from twelve o'clock, as a hand would turn. */
export function onCircle(cx: number, cy: number, r: number, degrees: number): readonly [number, number] {
  const angle = ((degrees - 90) * Math.PI) / 180;
  return [round(cx + r * Math.cos(angle)), round(cy + r * Math.sin(angle))];
}
