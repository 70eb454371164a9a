import { holds, lumaAt, type LumaFrame, type Pixel } from './frame';

/**
 * A round patch of a picture, freed of its brightness and contrast: mean 0, length 1. Murk and a
 * change of light leave it as it is.
 */
export class Patch {
  private constructor(
    readonly radius_px: number,
    readonly values: Float64Array
  ) {}

  /** Null where the circle leaves the picture or nothing in it stands out. */
  static from(frame: LumaFrame, at: Pixel, radius_px: number): Patch | null {
    // One pixel more: a place between pixels needs its neighbours.
    if (!holds(frame, at, radius_px + 1)) return null;
    const values = Float64Array.from(discOf(radius_px), ({ x, y }) =>
      lumaAt(frame, at.x_px + x, at.y_px + y)
    );
    return isPlain(values) ? null : new Patch(radius_px, normalised(values));
  }

  /** This patch with a share of another, which follows what turns or fades. */
  blended(other: Patch, share: number): Patch {
    const values = this.values.map((value, i) => (1 - share) * value + share * other.values[i]);
    return new Patch(this.radius_px, normalised(values));
  }

  /**
   * Normalised cross-correlation with the picture at a whole pixel: 1 alike, 0 not at all, −1 its
   * negative (Lewis 1995, "Fast normalized cross-correlation", eq. 2). −1 outside the picture.
   */
  score(frame: LumaFrame, x_px: number, y_px: number): number {
    const { luma, width_px, height_px } = frame;
    const { radius_px, values } = this;
    const room = Math.min(x_px, y_px, width_px - 1 - x_px, height_px - 1 - y_px);
    if (room < radius_px) return -1;
    const steps = stepsOf(radius_px, width_px);
    const centre = y_px * width_px + x_px;
    let sum = 0;
    let squares = 0;
    let cross = 0;
    for (let i = 0; i < steps.length; i++) {
      const value = luma[centre + steps[i]];
      sum += value;
      squares += value * value;
      cross += value * values[i];
    }
    // The patch has mean 0, so the picture's own mean drops out of the cross term.
    const spread = squares - (sum * sum) / steps.length;
    return spread > PLAIN_SD * PLAIN_SD * steps.length ? cross / Math.sqrt(spread) : -1;
  }
}

/**
 * Less than this stands out of nothing, in steps of brightness (standard deviation). A camera's own
 * noise is 1 to 2; a lower bound would follow noise, a higher one refuses a jig in murk.
 */
const PLAIN_SD = 1.5;

interface Offset {
  readonly x: number;
  readonly y: number;
}

function discOf(radius_px: number): readonly Offset[] {
  const disc: Offset[] = [];
  for (let y = -radius_px; y <= radius_px; y++) {
    for (let x = -radius_px; x <= radius_px; x++) {
      if (x * x + y * y <= radius_px * radius_px) disc.push({ x, y });
    }
  }
  return disc;
}

const known = new Map<string, Int32Array>();

/** The disc's pixels as steps from its middle in a picture of this width: asked a thousand times a frame. */
function stepsOf(radius_px: number, width_px: number): Int32Array {
  const key = `${radius_px} in ${width_px}`;
  const steps =
    known.get(key) ?? Int32Array.from(discOf(radius_px), ({ x, y }) => y * width_px + x);
  known.set(key, steps);
  return steps;
}

function isPlain(values: Float64Array): boolean {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const spread = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return spread <= PLAIN_SD * PLAIN_SD * values.length;
}

function normalised(values: Float64Array): Float64Array {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const length = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0));
  return values.map((value) => (value - mean) / length);
}
