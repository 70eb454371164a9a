import { parseSetup, ScenarioError, simulate, type Trace } from '$lib/model';
import { drawnOf, moveMarks, type Challenge, type DrawnGoal, type Units } from '$lib/scoring';
import { paintRun, type PicturePlace } from '$lib/sandbox/export/run-picture';
import { readInk, type Ink } from '$lib/sandbox/palette';
import { recordedRun } from './run-try';
import { asksOf, toldByHand } from './sent-words';
import type { TryRun } from './try-runs';

/** The picture in units of which each is SHARP pixels, 1200 × 900 in all: what messengers show whole. */
const SIZE = { width: 480, height: 360 } as const;
const SHARP = 2.5;
const MARGIN = 16;
/** Top left the words, beside them the whole line, below both the bait, at the foot where to go. */
const WORDS_WIDE = 206;
const TOP = 154;
const FOOT = 40;

/** Letters for as many lines as fit over the marks. */
const SIZES = [
  { px: 19, most: 3 },
  { px: 15, most: 4 },
  { px: 12, most: 5 }
] as const;

const WHOLE: PicturePlace = {
  left: WORDS_WIDE,
  top: 0,
  width: SIZE.width - WORDS_WIDE,
  height: TOP
};
const BOTTOM: PicturePlace = {
  left: 0,
  top: TOP,
  width: SIZE.width,
  height: SIZE.height - TOP - FOOT
};

/** What was asked and what the bait did, drawn here and sent from here: nothing is uploaded. */
export async function tryPicture(graded: TryRun, units: Units, address: string): Promise<File> {
  await document.fonts.ready;
  const canvas = document.createElement('canvas');
  canvas.width = SIZE.width * SHARP;
  canvas.height = SIZE.height * SHARP;
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  context.scale(SHARP, SHARP);
  // Letters keep the distances of their size here, and not of the few pixels that they stand for.
  context.textRendering = 'geometricPrecision';
  paint(context, graded, units, address, readInk(document.documentElement));
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) throw new Error('The browser couldn’t make the picture.');
  return new File([blob], 'feltfoot-try.png', { type: 'image/png' });
}

function paint(
  context: CanvasRenderingContext2D,
  graded: TryRun,
  units: Units,
  address: string,
  ink: Ink
): void {
  context.fillStyle = ink.raised;
  context.fillRect(0, 0, SIZE.width, SIZE.height);
  const { challenge, grade } = graded;
  const shown = {
    run: recordedRun(graded),
    target: sentGoal(challenge),
    meant: meantOf(challenge),
    isPassed: grade.passed,
    units
  };
  paintRun(context, shown, { whole: WHOLE, bottom: BOTTOM }, ink);
  context.fillStyle = ink.rule;
  context.fillRect(WORDS_WIDE - 0.5, 0, 1, TOP);
  context.fillRect(0, TOP - 0.5, SIZE.width, 1);
  writeResult(context, graded, units, ink);
  writeFoot(context, asksOf(graded), address, ink);
}

/** Beside a way to go, a pace drawn as a way would be taken for another. */
function sentGoal({ goals }: Challenge): DrawnGoal {
  const { speed_m_s, ...goal } = drawnOf(goals);
  return goal.travel_m ? goal : { ...goal, speed_m_s };
}

/** The way that does it; null where the model cannot run it in this gear. */
function meantOf({ setup, reference: move, hold_s }: Challenge): Trace | null {
  try {
    return simulate({ ...parseSetup(setup), move, hold_s }).trace;
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}

function writeResult(
  context: CanvasRenderingContext2D,
  graded: TryRun,
  units: Units,
  ink: Ink
): void {
  context.textBaseline = 'alphabetic';
  context.textAlign = 'left';
  context.fillStyle = ink.ink;
  const said = toldByHand(graded, units);
  const size = SIZES.find(({ px, most }) => {
    context.font = `600 ${px}px ${ink.words}`;
    return said.flatMap((sentence) => wrapped(context, sentence)).length <= most;
  });
  const apart = 1.2 * (size ?? SIZES[SIZES.length - 1]).px;
  said
    .flatMap((sentence) => wrapped(context, sentence))
    .forEach((line, i) => context.fillText(line, MARGIN, MARGIN + (i + 0.6) * apart));
  const marks = `${moveMarks(graded.grade)}`;
  context.font = `600 64px ${ink.figures}`;
  context.fillText(marks, MARGIN, TOP - 12);
  const wide = context.measureText(marks).width;
  context.font = `600 22px ${ink.figures}`;
  context.fillStyle = ink.inkSoft;
  context.fillText('of 100', MARGIN + wide + 8, TOP - 12);
}

/** The sentence in lines, set in the font of now. */
function wrapped(context: CanvasRenderingContext2D, sentence: string): string[] {
  const lines: string[] = [];
  for (const word of sentence.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    const fits = context.measureText(longer).width <= WORDS_WIDE - MARGIN - 6;
    if (fits && lines.length > 0) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function writeFoot(
  context: CanvasRenderingContext2D,
  asks: string,
  address: string,
  ink: Ink
): void {
  const y = SIZE.height - 13;
  context.fillStyle = ink.ink;
  context.font = `italic 600 21px ${ink.words}`;
  context.fillText(asks, MARGIN, y);
  const asked = MARGIN + context.measureText(asks).width + MARGIN;
  context.font = `600 17px ${ink.figures}`;
  context.textAlign = 'right';
  context.fillText(`Feltfoot  ${address}`, SIZE.width - MARGIN, y, SIZE.width - MARGIN - asked);
}
