import type { TryRun } from './try-runs';
import { wayOf } from './drawn-thumb';
import { THUMB } from './thumb';

/** The picture's size, px: what messengers show whole. */
const SIZE = { width: 1200, height: 900 } as const;
/** The drawing takes the upper part, the words the rest. */
const DRAWN = 10;
const MARGIN = 60;

/** The bait's way and a sentence, drawn here and sent from here: nothing is uploaded. */
export async function tryPicture(graded: TryRun, words: string): Promise<File> {
  const canvas = document.createElement('canvas');
  canvas.width = SIZE.width;
  canvas.height = SIZE.height;
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  const style = getComputedStyle(document.documentElement);
  const colour = (name: string) => style.getPropertyValue(`--${name}`);
  drawWater(context, colour);
  drawWay(context, graded, colour);
  drawWords(context, words, colour);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) throw new Error('The browser couldn’t make the picture.');
  return new File([blob], 'feltfoot-try.png', { type: 'image/png' });
}

type Colour = (name: string) => string;

function drawWater(context: CanvasRenderingContext2D, colour: Colour): void {
  const height = THUMB.height * DRAWN;
  const tint = context.createLinearGradient(0, 0, 0, height);
  tint.addColorStop(0, colour('water'));
  tint.addColorStop(1, colour('deep'));
  context.fillStyle = colour('paper');
  context.fillRect(0, 0, SIZE.width, SIZE.height);
  context.fillStyle = tint;
  context.fillRect(0, 0, SIZE.width, height);
}

function drawWay(context: CanvasRenderingContext2D, graded: TryRun, colour: Colour): void {
  const way = wayOf(graded.challenge, graded.result);
  context.save();
  context.beginPath();
  context.rect(0, 0, SIZE.width, THUMB.height * DRAWN);
  context.clip();
  context.scale(DRAWN, DRAWN);
  context.lineCap = 'round';
  context.lineWidth = 0.6;
  context.fillStyle = colour('bed');
  context.strokeStyle = colour('silt');
  const ground = new Path2D(way.ground);
  context.fill(ground);
  context.stroke(ground);
  context.lineWidth = 1.4;
  context.strokeStyle = colour('ink');
  context.stroke(new Path2D(way.dragged));
  context.setLineDash([0.1, 3]);
  context.stroke(new Path2D(way.flown));
  context.setLineDash([]);
  context.beginPath();
  context.arc(way.bait.x, way.bait.y - 3, 3, 0, 2 * Math.PI);
  context.strokeStyle = colour('bait');
  context.fillStyle = colour('bait');
  if (way.bait.isTouching) context.fill();
  context.stroke();
  context.restore();
}

function drawWords(context: CanvasRenderingContext2D, words: string, colour: Colour): void {
  context.fillStyle = colour('ink');
  context.textBaseline = 'alphabetic';
  context.font = '600 54px Literata, Georgia, serif';
  let [line, y] = ['', THUMB.height * DRAWN + 70];
  for (const word of words.split(' ')) {
    const longer = line ? `${line} ${word}` : word;
    if (context.measureText(longer).width > SIZE.width - 2 * MARGIN) {
      context.fillText(line, MARGIN, y);
      [line, y] = [word, y + 66];
    } else line = longer;
  }
  context.fillText(line, MARGIN, y);
  context.font = 'italic 600 36px Literata, Georgia, serif';
  context.textAlign = 'right';
  context.fillText('Feltfoot', SIZE.width - MARGIN, SIZE.height - 30);
}
