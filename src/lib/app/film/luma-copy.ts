import type { LumaFrame } from '$lib/film';
import type { VideoSample } from 'mediabunny';

/** Formats whose first plane is the brightness, one byte a pixel. */
const BRIGHTNESS_FIRST = ['I420', 'I420A', 'I422', 'I444', 'NV12', 'NV12A'];

/** Takes the brightness out of frames, into the same memory every time. */
export class LumaCopy {
  private planes = new Uint8Array(0);
  private luma = new Uint8Array(0);
  private canvas: OffscreenCanvas | null = null;

  async of(sample: VideoSample): Promise<LumaFrame> {
    const { format, flip, pixelAspectRatio: ratio } = sample;
    const isPlain = format !== null && BRIGHTNESS_FIRST.includes(format);
    return isPlain && !flip && ratio.num === ratio.den ? this.plane(sample) : this.drawn(sample);
  }

  /** Without drawing: ten times as fast as reading a canvas back. */
  private async plane(sample: VideoSample): Promise<LumaFrame> {
    const bytes = sample.allocationSize();
    if (this.planes.length !== bytes) this.planes = new Uint8Array(bytes);
    const [{ offset, stride }] = await sample.copyTo(this.planes);
    const { width, height } = sample.visibleRect;
    this.room(width * height);
    const turn = turnOf(sample.rotation, width, height);
    for (let y = 0; y < height; y++) {
      const from = offset + y * stride;
      if (turn.right === 1) this.luma.set(this.planes.subarray(from, from + width), y * width);
      else this.turnRow(from, width, turn.origin + y * turn.down, turn.right);
    }
    return { width_px: turn.width, height_px: turn.height, luma: this.luma };
  }

  private turnRow(from: number, width: number, to: number, step: number): void {
    for (let x = 0; x < width; x++) this.luma[to + x * step] = this.planes[from + x];
  }

  private drawn(sample: VideoSample): LumaFrame {
    const { displayWidth: width, displayHeight: height } = sample;
    this.canvas ??= new OffscreenCanvas(width, height);
    const context = this.canvas.getContext('2d', { willReadFrequently: true });
    if (!context) throw new Error('no canvas to draw a frame on');
    sample.draw(context, 0, 0, width, height);
    return lumaOf(context, width, height, this.room(width * height));
  }

  private room(pixels: number): Uint8Array {
    if (this.luma.length !== pixels) this.luma = new Uint8Array(pixels);
    return this.luma;
  }
}

interface Turn {
  readonly width: number;
  readonly height: number;
  /** Where the first pixel comes to lie, and how far on the next to the right and below. */
  readonly origin: number;
  readonly right: number;
  readonly down: number;
}

/** How pixels lie once the frame is turned clockwise by so many degrees. */
function turnOf(rotation: number, width: number, height: number): Turn {
  switch (rotation) {
    case 90:
      return { width: height, height: width, origin: height - 1, right: height, down: -1 };
    case 180:
      return { width, height, origin: width * height - 1, right: -1, down: -width };
    case 270:
      return {
        width: height,
        height: width,
        origin: (width - 1) * height,
        right: -height,
        down: 1
      };
    default:
      return { width, height, origin: 0, right: 1, down: width };
  }
}

/** Brightness of a canvas, ITU-R BT.601: 0.299 red, 0.587 green, 0.114 blue. */
export function lumaOf(
  context: CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D,
  width: number,
  height: number,
  luma: Uint8Array
): LumaFrame {
  const { data } = context.getImageData(0, 0, width, height);
  for (let i = 0; i < luma.length; i++) {
    luma[i] = (77 * data[4 * i] + 150 * data[4 * i + 1] + 29 * data[4 * i + 2]) >> 8;
  }
  return { width_px: width, height_px: height, luma };
}
