import {
  findTapes,
  learnTape,
  type ColorFrame,
  type Pixel,
  type Tape,
  type TapeFault
} from '$lib/film';

/** Pictures are read this wide: finer costs time by its square and tells no more, pixels. */
const WIDTH_PX = 640;

/** Finds one or two pieces of tape in a camera's pictures. */
export class TapeReader {
  private tape: Tape | null = null;
  private last: readonly Pixel[] = [];
  private frame: ColorFrame | null = null;
  private canvas: HTMLCanvasElement | null = null;

  constructor(private readonly count: 1 | 2) {}

  get isTaught(): boolean {
    return this.tape !== null;
  }

  /** Takes in a picture of this shape, height over width. */
  take(picture: CanvasImageSource, shape: number): void {
    const width = WIDTH_PX;
    const height = Math.round(WIDTH_PX * shape);
    this.canvas ??= document.createElement('canvas');
    if (this.canvas.height !== height) Object.assign(this.canvas, { width, height });
    const context = this.canvas.getContext('2d', { willReadFrequently: true });
    if (!context) return;
    context.drawImage(picture, 0, 0, width, height);
    const { data } = context.getImageData(0, 0, width, height);
    this.frame = { width_px: width, height_px: height, rgba: data };
  }

  /** Learns the tape's colour at a tap, in shares of the picture; the tapped piece is the outer one. */
  teach(across: number, down: number): TapeFault | null {
    if (!this.frame) return 'dark';
    const { width_px, height_px } = this.frame;
    const at = { x_px: across * width_px, y_px: down * height_px };
    const learnt = learnTape(this.frame, at);
    if (typeof learnt === 'string') return learnt;
    this.tape = learnt;
    this.last = [at];
    return null;
  }

  /** The pieces, the outer first; null where not all are seen. */
  read(): readonly Pixel[] | null {
    if (!this.frame || !this.tape) return null;
    const found = findTapes(this.frame, this.tape, this.count);
    if (found.length < this.count) return null;
    const [outer] = this.last;
    this.last = [...found].sort((a, b) => apart(a, outer) - apart(b, outer));
    return this.last;
  }

  /** In shares of the picture, for whoever looks at it. */
  get shown(): readonly { readonly across: number; readonly down: number }[] {
    const { frame } = this;
    if (!frame || !this.tape) return [];
    return this.last.map(({ x_px, y_px }) => ({
      across: x_px / frame.width_px,
      down: y_px / frame.height_px
    }));
  }
}

const apart = (a: Pixel, b: Pixel) => Math.hypot(a.x_px - b.x_px, a.y_px - b.y_px);
