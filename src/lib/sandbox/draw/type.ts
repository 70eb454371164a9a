import type { Ink } from '../palette';

/** Numbers and labels on a picture: sets face, size and place for the texts that follow. */
export function setFigures(
  context: CanvasRenderingContext2D,
  ink: Ink,
  style: { px: number; weight: 500 | 600; align: CanvasTextAlign }
): void {
  context.font = `${style.weight} ${style.px}px ${ink.figures}`;
  context.textAlign = style.align;
  context.textBaseline = 'middle';
  context.fillStyle = style.weight === 600 ? ink.ink : ink.inkSoft;
}
