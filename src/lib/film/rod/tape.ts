import type { FrameSize, Pixel } from '../frame';

/** A picture in colour: red, green, blue and one unused byte a pixel. */
export interface ColorFrame extends FrameSize {
  readonly rgba: Uint8ClampedArray;
}

/** A tape's colour, freed of how bright it is: blue and red against grey, ITU-R BT.601. */
export interface Tape {
  readonly cb: number;
  readonly cr: number;
}

export type TapeFault = 'dark' | 'dull';

/** About a tap so many pixels are the tape, each way. */
const TAP_PX = 2;
/** Darker than this a camera's colours are noise, steps of 255. */
const DARKEST = 35;
/** A colour less far from grey than this is a wall's, too. */
const DULLEST = 22;

/** Learns a tape's colour where it was tapped. */
export function learnTape(frame: ColorFrame, { x_px, y_px }: Pixel): Tape | TapeFault {
  let [luma, cb, cr, count] = [0, 0, 0, 0];
  for (let y = Math.round(y_px) - TAP_PX; y <= Math.round(y_px) + TAP_PX; y++) {
    for (let x = Math.round(x_px) - TAP_PX; x <= Math.round(x_px) + TAP_PX; x++) {
      if (x < 0 || y < 0 || x >= frame.width_px || y >= frame.height_px) continue;
      const at = 4 * (y * frame.width_px + x);
      luma += lumaOf(frame.rgba, at);
      cb += cbOf(frame.rgba, at);
      cr += crOf(frame.rgba, at);
      count++;
    }
  }
  if (count === 0 || luma / count < DARKEST) return 'dark';
  const tape = { cb: cb / count, cr: cr / count };
  return Math.hypot(tape.cb, tape.cr) < DULLEST ? 'dull' : tape;
}

const lumaOf = (c: Uint8ClampedArray, i: number) =>
  0.299 * c[i] + 0.587 * c[i + 1] + 0.114 * c[i + 2];
const cbOf = (c: Uint8ClampedArray, i: number) => -0.169 * c[i] - 0.331 * c[i + 1] + 0.5 * c[i + 2];
const crOf = (c: Uint8ClampedArray, i: number) => 0.5 * c[i] - 0.419 * c[i + 1] - 0.081 * c[i + 2];

/** A tape fills less than this of a cell, pixels each way, wherever it is seen from. */
const CELL_PX = 16;
/** So much of the tape's own colour must be seen in all: a stray pixel or two is no tape. */
const LEAST_WEIGHT = 4;
/** Rounds of bringing the window to the middle of its colour. */
const ROUNDS = 4;

/**
 * The middles of the `count` largest spots of this colour, by its weighted centre; fewer where fewer
 * are seen. A pixel weighs as much as it is of the colour.
 */
export function findTapes(frame: ColorFrame, tape: Tape, count: number): Pixel[] {
  const columns = Math.ceil(frame.width_px / CELL_PX);
  const cells = cellWeights(frame, tape, columns);
  const found: Pixel[] = [];
  while (found.length < count) {
    const best = cells.reduce((most, weight, i) => (weight > cells[most] ? i : most), 0);
    if (cells[best] < LEAST_WEIGHT) break;
    const cell = { column: best % columns, row: Math.floor(best / columns) };
    found.push(
      centreNear(frame, tape, {
        x_px: (cell.column + 0.5) * CELL_PX,
        y_px: (cell.row + 0.5) * CELL_PX
      })
    );
    // The next one is looked for elsewhere.
    for (let row = cell.row - 1; row <= cell.row + 1; row++) {
      for (let column = cell.column - 1; column <= cell.column + 1; column++) {
        if (row >= 0 && column >= 0 && column < columns) cells[row * columns + column] = 0;
      }
    }
  }
  return found;
}

function cellWeights(frame: ColorFrame, tape: Tape, columns: number): Float64Array {
  const { width_px, height_px, rgba } = frame;
  const cells = new Float64Array(columns * Math.ceil(height_px / CELL_PX));
  const length = Math.hypot(tape.cb, tape.cr);
  for (let y = 0; y < height_px; y++) {
    const row = Math.floor(y / CELL_PX) * columns;
    for (let x = 0; x < width_px; x++) {
      cells[row + Math.floor(x / CELL_PX)] += weightAt(rgba, 4 * (y * width_px + x), tape, length);
    }
  }
  return cells;
}

/** 1 for the tape's own colour, less where it is mixed with another, 0 for another. */
function weightAt(rgba: Uint8ClampedArray, at: number, tape: Tape, length: number): number {
  const cb = cbOf(rgba, at);
  const cr = crOf(rgba, at);
  const along = (cb * tape.cb + cr * tape.cr) / length;
  const across = Math.abs(cb * tape.cr - cr * tape.cb) / length;
  // More than 27° of hue aside is another colour; less than half as strong is a reflection.
  if (along < 0.5 * length || across > 0.5 * along) return 0;
  return Math.min((along / length - 0.5) * 2, 1);
}

function centreNear(frame: ColorFrame, tape: Tape, start: Pixel): Pixel {
  let centre = start;
  for (let round = 0; round < ROUNDS; round++) centre = centreOnce(frame, tape, centre);
  return centre;
}

function centreOnce(frame: ColorFrame, tape: Tape, { x_px, y_px }: Pixel): Pixel {
  const { width_px, height_px, rgba } = frame;
  const length = Math.hypot(tape.cb, tape.cr);
  let [sum, right, down] = [0, 0, 0];
  const clamp = (value: number, most: number) => Math.min(Math.max(Math.round(value), 0), most);
  const [x0, x1] = [x_px - CELL_PX, x_px + CELL_PX].map((x) => clamp(x, width_px - 1));
  const [y0, y1] = [y_px - CELL_PX, y_px + CELL_PX].map((y) => clamp(y, height_px - 1));
  for (let y = y0; y <= y1; y++) {
    for (let x = x0; x <= x1; x++) {
      const weight = weightAt(rgba, 4 * (y * width_px + x), tape, length);
      sum += weight;
      right += weight * x;
      down += weight * y;
    }
  }
  return sum > 0 ? { x_px: right / sum, y_px: down / sum } : { x_px, y_px };
}
