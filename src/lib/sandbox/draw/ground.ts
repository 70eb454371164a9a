import type { GroundKind } from '$lib/model';
import type { Ink } from '../palette';
import type { Backdrop } from '../stage';
import type { View } from '../view';
import { hatchStones, stippleBed, strew, type TextureMark } from './texture';

/**
 * Each kind of bottom has its own engraver's texture, so that it is told in black and white: mud in
 * short level strokes, clay in long ones, sand in fine dots, gravel in ovals, rock hatched.
 */

/** How coarse the picture is: size of a cell, how deep and how large the dots are, px. */
export interface Grain {
  readonly cell: number;
  readonly thickness: number;
  readonly dot: number;
}

interface Texture {
  /** Strewn under the surface instead of dots. */
  readonly mark?: TextureMark;
  /** Cells as multiples of the picture's: along and down. */
  readonly cells?: readonly [number, number];
  readonly dot?: number;
  readonly cell?: number;
  /** How stones are hatched, px from stroke to stroke; twice is crosswise. Null: outline only. */
  readonly hatch?: 'once' | 'twice' | null;
}

const dash =
  (least: number, most: number): TextureMark =>
  (context, x, y, chance) => {
    const half = least + (most - least) * chance;
    context.moveTo(x - half, y);
    context.lineTo(x + half, y);
  };

const oval: TextureMark = (context, x, y, chance) => {
  const radius = 1.4 + 1.6 * chance;
  context.moveTo(x + 1.5 * radius, y);
  context.ellipse(x, y, 1.5 * radius, radius, 0, 0, 2 * Math.PI);
};

/** A root or shoot. */
const tuft: TextureMark = (context, x, y, chance) => {
  context.moveTo(x, y);
  context.lineTo(x - 2 + 4 * chance, y - 4 - 2 * chance);
};

const TEXTURES: Record<GroundKind | 'plain', Texture> = {
  plain: {},
  mud: { mark: dash(1, 4), cells: [2, 0.8] },
  clay: { mark: dash(9, 26), cells: [7, 0.75] },
  sand: { cell: 0.62, dot: 0.62 },
  gravel: { mark: oval, cells: [1.9, 1.3], hatch: null },
  'chunk rock': { hatch: 'once' },
  boulders: { hatch: 'twice' },
  brush: { mark: tuft, cells: [3, 1.4] },
  stump: { cell: 1.3, hatch: 'once' },
  grass: { mark: tuft, cells: [1.4, 1.2] },
  'shell bed': { mark: oval, cells: [2.6, 1.1], hatch: null }
};

/** The inside of the ground and of its stones; its outline is the model's. */
export function paintTexture(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  grain: Grain,
  ink: Ink
): void {
  const texture = TEXTURES[stage.setup.bottom.ground?.kind ?? 'plain'];
  const { mark, cells: [along, down] = [1, 1], cell = 1, dot = 1, hatch = 'once' } = texture;
  if (mark) {
    context.strokeStyle = ink.silt;
    context.lineWidth = 1;
    const size = { along: along * grain.cell, down: down * grain.cell, depth: grain.thickness };
    strew(context, view, stage.heightAt, size, mark);
  } else {
    stippleBed(context, view, stage.heightAt, {
      colour: ink.silt,
      cell: grain.cell * cell,
      thickness: grain.thickness,
      dot: grain.dot * dot
    });
  }
  if (hatch === null) return;
  hatchStones(context, view, stage.stones, stage.heightAt, { colour: ink.silt, lean: 1 });
  if (hatch === 'once') return;
  hatchStones(context, view, stage.stones, stage.heightAt, { colour: ink.silt, lean: -1 });
}
