import { csvTable } from '$lib/wire';
import type { Curve } from './chart';
import type { FigureName } from './figures';

/** Properties of a drawing that a style sheet gave it, and that a file needs written down. */
const DRAWN = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'font-family',
  'font-size',
  'font-style',
  'font-weight',
  'text-anchor'
] as const;

/** A chart's figure as a table, in SI. */
export function chartCsv(curves: readonly Curve[], axisName: string, figure: FigureName): string {
  const columns = ['curve', axisName, figure, 'low', 'high', 'hand_low', 'hand_high'];
  const rows = curves.flatMap(({ name, isKept, points }) =>
    points.flatMap(({ at, readings }) => {
      const reading = readings[figure];
      if (!reading) return [];
      const { value, ends, hand } = reading;
      const curve = [isKept ? 'before' : 'as set', name].filter(Boolean).join(', ');
      const [low, high] = ends ?? [];
      const [hand_low, hand_high] = hand ?? [];
      return [{ curve, [axisName]: at, [figure]: value, low, high, hand_low, hand_high }];
    })
  );
  return csvTable(columns, rows);
}

/** The chart as it is on the page, in the colours of day, on white: a file that needs no style sheet. */
export function chartSvg(svg: SVGSVGElement, words: readonly string[]): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  byDay(() => writeStyles(svg, copy));
  const { width, height } = svg.viewBox.baseVal;
  const tall = height + LINE_PX * words.length + LINE_PX / 2;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('viewBox', `0 0 ${width} ${tall}`);
  copy.setAttribute('width', `${width}`);
  copy.setAttribute('height', `${tall}`);
  const paper = made('rect', { width: `${width}`, height: `${tall}`, fill: '#ffffff' });
  copy.prepend(paper);
  words.forEach((text, i) => {
    const y = `${height + LINE_PX * (i + 0.75)}`;
    const font = { 'font-family': 'sans-serif', 'font-size': '12', fill: '#333333' };
    const line = made('text', { x: '8', y, ...font });
    line.textContent = text;
    copy.append(line);
  });
  return new XMLSerializer().serializeToString(copy);
}
const LINE_PX = 18;

function made(name: string, attributes: Record<string, string>): SVGElement {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}

/** Colours are read between two frames, so that nobody sees the page change. */
function byDay(read: () => void): void {
  const { dataset } = document.documentElement;
  const before = dataset.scheme;
  dataset.scheme = 'light';
  read();
  if (before === undefined) delete dataset.scheme;
  else dataset.scheme = before;
}

function writeStyles(from: Element, to: Element): void {
  const style = getComputedStyle(from);
  for (const name of DRAWN) to.setAttribute(name, style.getPropertyValue(name));
  to.removeAttribute('class');
  Array.from(from.children).forEach((child, i) => writeStyles(child, to.children[i]));
}

/** Dots of a picture for each of the chart's: sharp on paper. */
const SHARPNESS = 3;

/** The same as a picture in dots. Throws where the browser makes none. */
export async function chartPng(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const sheet = document.createElement('canvas');
    sheet.width = image.naturalWidth * SHARPNESS;
    sheet.height = image.naturalHeight * SHARPNESS;
    sheet.getContext('2d')?.drawImage(image, 0, 0, sheet.width, sheet.height);
    return await new Promise((done, fail) =>
      sheet.toBlob((blob) => (blob ? done(blob) : fail(new Error('no picture was made'))))
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}
