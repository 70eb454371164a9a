import type { Ink } from '../palette';
import type { Backdrop } from '../stage';
import type { View } from '../view';
import { paintTexture, type Grain } from './ground';
import { bedPath } from './texture';

/** The bottom with its stones, as the model has it. */
export function paintBed(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  grain: Grain,
  ink: Ink
): void {
  bedPath(context, view, stage.heightAt);
  context.fillStyle = ink.bed;
  context.fill();
  paintTexture(context, view, stage, grain, ink);
  bedPath(context, view, stage.heightAt);
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.5;
  context.stroke();
}
