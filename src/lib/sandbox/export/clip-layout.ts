/** Where the scene's pictures and the words below them go in a clip. */

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Frame extends Size {
  readonly left: number;
  readonly top: number;
}

export interface ClipLayout extends Size {
  readonly whole: Frame;
  readonly bottom: Frame;
  readonly rod: Frame;
  /** Top of the strip of words. */
  readonly words: number;
  /** Pixels of the clip a pixel of the page. */
  readonly scale: number;
}

/** Wide enough to be read, small enough to be encoded while it plays, px. */
const MOST_WIDTH = 960;
const LEAST_WIDTH = 640;
export const WORDS_HEIGHT = 68;
const GAP = 2;

/** Pictures side by side stay so, pictures below each other too. Encoders want even sizes. */
export function clipLayout(whole: Size, bottom: Size, rod: Size): ClipLayout {
  const width = even(Math.min(Math.max(whole.width, LEAST_WIDTH), MOST_WIDTH));
  const scale = width / whole.width;
  const at = (left: number, top: number, size: Size): Frame => ({
    left,
    top,
    width: size.width * scale,
    height: size.height * scale
  });
  const below = whole.height * scale + GAP;
  const isBeside = bottom.width + rod.width <= whole.width + GAP;
  const bottomAt = at(0, below, bottom);
  const rodAt = isBeside
    ? at(width - rod.width * scale, below, rod)
    : at(0, below + bottomAt.height + GAP, rod);
  const words = Math.ceil(Math.max(bottomAt.top + bottomAt.height, rodAt.top + rodAt.height));
  return {
    whole: at(0, 0, whole),
    bottom: bottomAt,
    rod: rodAt,
    words,
    scale,
    width,
    height: even(words + WORDS_HEIGHT)
  };
}

function even(px: number): number {
  return 2 * Math.ceil(px / 2);
}
