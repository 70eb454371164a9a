import { contactWhileMoving, formatShare, formatTime, type Units } from '$lib/scoring';
import { trySummaryOf } from '../events';
import { dayInk, type Ink } from '../palette';
import { plotsOf, timeTicks, type PlotRow, type PlotSet } from '../plot';
import { flightsOf } from '../series';
import type { Showing } from '../showing.svelte';
import { gearLine, SIGNED } from './run-words';

/** The sheet, in units of which each is SHARP pixels: 1920 pixels wide. */
const WIDTH = 960;
const SHARP = 2;
const MARGIN = 32;
const HEAD = 104;
const FOOT = 40;
/** Right of the plots: the figures that belong to them. */
const FIGURES = 150;

/** The run's plots on a white sheet, to be printed or sent: gear and result stand above them. */
export async function plotPng(showing: Showing, units: Units): Promise<Blob> {
  await document.fonts.ready;
  const plots = plotsOf(
    showing.series,
    showing.felt,
    showing.film.ends_s,
    WIDTH - 2 * MARGIN - FIGURES,
    units
  );
  const sheet = document.createElement('canvas');
  sheet.width = WIDTH * SHARP;
  sheet.height = (HEAD + plots.height + FOOT) * SHARP;
  const context = sheet.getContext('2d');
  if (!context) throw new Error('no canvas to draw the plot on');
  context.scale(SHARP, SHARP);
  paintSheet(context, showing, plots, units, dayInk());
  return new Promise((done, fail) =>
    sheet.toBlob((blob) => (blob ? done(blob) : fail(new Error('no PNG was made'))), 'image/png')
  );
}

function paintSheet(
  context: CanvasRenderingContext2D,
  showing: Showing,
  plots: PlotSet,
  units: Units,
  ink: Ink
): void {
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, WIDTH, HEAD + plots.height + FOOT);
  const { setup, result } = showing.film;
  const write = writer(context, ink);
  write(gearLine(setup, units), MARGIN, 48, `600 26px ${ink.figures}`);
  write(trySummaryOf(showing.film, units), MARGIN, 78, `italic 18px ${ink.words}`);
  write(SIGNED, MARGIN, HEAD + plots.height + FOOT - 18, `500 13px ${ink.figures}`, ink.inkSoft);
  context.translate(MARGIN, HEAD);
  paintAxis(context, plots, ink);
  const last = showing.series.t_s.findLastIndex((t_s) => t_s <= showing.film.ends_s + 1e-9);
  const share = contactWhileMoving(result);
  for (const row of plots.rows) {
    context.save();
    context.translate(0, row.top);
    if (row.path) paintCurve(context, row, plots, ink);
    else paintContact(context, row, plots, showing, ink);
    paintWords(context, row, last, formatShare(share), ink);
    context.restore();
  }
}

function paintAxis(context: CanvasRenderingContext2D, { x, height }: PlotSet, ink: Ink): void {
  const write = writer(context, ink);
  context.strokeStyle = ink.rule;
  context.lineWidth = 1;
  for (const t_s of timeTicks(x)) {
    context.setLineDash([1, 4]);
    stroke(context, [x(t_s), 0], [x(t_s), height - 20]);
    context.textAlign = 'center';
    write(formatTime(t_s), x(t_s), height - 5, `500 13px ${ink.figures}`, ink.inkSoft);
  }
  context.setLineDash([]);
  context.textAlign = 'left';
}

function paintCurve(
  context: CanvasRenderingContext2D,
  row: PlotRow,
  { x }: PlotSet,
  ink: Ink
): void {
  const [left, right] = x.range();
  context.strokeStyle = ink.rule;
  stroke(context, [left, row.zero], [right, row.zero]);
  const colour = row.isBait ? ink.bait : ink.ink;
  context.fillStyle = colour;
  context.globalAlpha = 0.1;
  context.fill(new Path2D(row.area));
  context.globalAlpha = 1;
  context.strokeStyle = colour;
  context.lineWidth = 1.75;
  context.lineJoin = 'round';
  context.stroke(new Path2D(row.path));
}

/** Solid on the bottom, open where it was lifted. */
function paintContact(
  context: CanvasRenderingContext2D,
  row: PlotRow,
  { x }: PlotSet,
  showing: Showing,
  ink: Ink
): void {
  const [left, right] = x.range();
  context.fillStyle = ink.bait;
  context.fillRect(left, row.zero - 10, right - left, 10);
  context.strokeStyle = ink.bait;
  context.lineWidth = 1.5;
  context.fillStyle = '#ffffff';
  for (const [from, to] of flightsOf(showing.series)) {
    const start = x(from);
    const width = Math.max(x(Math.min(to, showing.film.ends_s)) - start, 2);
    context.fillRect(start, row.zero - 9.25, width, 8.5);
    context.strokeRect(start, row.zero - 9.25, width, 8.5);
  }
}

/** The row's name to the left; to the right where it ended and the most that it was. */
function paintWords(
  context: CanvasRenderingContext2D,
  row: PlotRow,
  last: number,
  contact: string,
  ink: Ink
): void {
  const write = writer(context, ink);
  const beside = WIDTH - 2 * MARGIN - FIGURES + 8;
  write(row.name, 0, row.foot - 2, `600 17px ${ink.figures}`);
  if (row.peak === null) {
    write(`${contact} of its way`, beside, row.foot - 2, `600 17px ${ink.figures}`);
    return;
  }
  write(`${row.valueAt(row.peak)} at most`, beside, row.foot - 20, `600 17px ${ink.figures}`);
  // Of what is felt only the swing counts; it has no rest to end at.
  if (!row.area) return;
  const end = `${row.valueAt(last)} at the end`;
  write(end, beside, row.foot - 2, `500 14px ${ink.figures}`, ink.inkSoft);
}

function writer(context: CanvasRenderingContext2D, ink: Ink) {
  return (text: string, x: number, y: number, font: string, colour = ink.ink) => {
    context.font = font;
    context.fillStyle = colour;
    context.fillText(text, x, y, WIDTH - 2 * MARGIN);
  };
}

function stroke(
  context: CanvasRenderingContext2D,
  from: readonly [number, number],
  to: readonly [number, number]
): void {
  context.beginPath();
  context.moveTo(...from);
  context.lineTo(...to);
  context.stroke();
}
