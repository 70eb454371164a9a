import type { Ink } from '../palette';
import type { Stage } from '../stage';
import type { View } from '../view';
import { bedPath, hatchStones, stippleBed } from './texture';

/** How ground is stippled: size of a cell, how deep and how large the dots are, px. */
export interface Grain {
  readonly cell: number;
  readonly thickness: number;
  readonly dot: number;
}

/** The bottom with its stones, as the model has it. */
export function paintBed(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Stage,
  grain: Grain,
  ink: Ink
): void {
  bedPath(context, view, stage.heightAt);
  context.fillStyle = ink.bed;
  context.fill();
  stippleBed(context, view, stage.heightAt, { ...grain, colour: ink.silt });
  hatchStones(context, view, stage.stones, stage.heightAt, ink.silt);
  bedPath(context, view, stage.heightAt);
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.5;
  context.stroke();
}
