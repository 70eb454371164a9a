import type { VideoSample } from 'mediabunny';

const BYTES_A_PIXEL = 4;

/**
 * Puts frames on a canvas by way of memory of its own. Drawn as they are, Chromium keeps an image of each of
 * the last 64 when it has no graphics card: half a gigabyte at 1080p (npm run bench -- film).
 */
export class FramePainter {
  private image: ImageData | null = null;
  private still: OffscreenCanvas | null = null;

  /** Fills the canvas, the frame turned as it is to be seen. */
  async paint(canvas: HTMLCanvasElement, sample: VideoSample): Promise<void> {
    const context = canvas.getContext('2d');
    if (!context) return;
    const image = sample.flip ? null : await this.copied(sample);
    if (image) this.put(context, image, sample.rotation);
    else sample.draw(context, 0, 0, canvas.width, canvas.height);
  }

  /** Null where the browser does not turn frames into colours by itself. */
  private async copied(sample: VideoSample): Promise<ImageData | null> {
    const { width, height } = sample.visibleRect;
    try {
      const as = { format: 'RGBA' } as const;
      if (sample.allocationSize(as) !== BYTES_A_PIXEL * width * height) return null;
      if (this.image?.width !== width || this.image.height !== height) {
        this.image = new ImageData(width, height);
      }
      await sample.copyTo(this.image.data, as);
      return this.image;
    } catch {
      return null;
    }
  }

  private put(context: CanvasRenderingContext2D, image: ImageData, rotation: number): void {
    const { width, height } = context.canvas;
    if (rotation === 0 && image.width === width && image.height === height) {
      context.putImageData(image, 0, 0);
      return;
    }
    this.still ??= new OffscreenCanvas(image.width, image.height);
    this.still.getContext('2d', { willReadFrequently: true })?.putImageData(image, 0, 0);
    const isUpright = rotation % 180 === 0;
    const [across, down] = isUpright ? [width, height] : [height, width];
    context.save();
    context.translate(width / 2, height / 2);
    context.rotate((rotation * Math.PI) / 180);
    context.drawImage(this.still, -across / 2, -down / 2, across, down);
    context.restore();
  }
}
