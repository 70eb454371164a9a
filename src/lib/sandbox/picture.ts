/**
 * A drawing on two sheets: the back is painted when size, colours or water change, the front every
 * frame. Both are crisp on any screen; what draws on them counts in CSS pixels, or in pixels that are
 * `--enlarged` times as large where the page sets that property.
 */
export class Picture {
  width = 0;
  height = 0;
  /** CSS pixels of the page for each of the drawing's: more where it is read from afar. */
  enlarged = 1;
  private back: HTMLCanvasElement | null = null;
  private front: HTMLCanvasElement | null = null;

  /** Takes the canvases over and calls `resized` whenever their place has a new size. */
  attach(back: HTMLCanvasElement, front: HTMLCanvasElement, resized: () => void): () => void {
    this.back = back;
    this.front = front;
    const place = front.parentElement as HTMLElement;
    const observer = new ResizeObserver(() => {
      this.measure(place);
      resized();
    });
    observer.observe(place);
    return () => {
      observer.disconnect();
      this.back = null;
      this.front = null;
    };
  }

  paintBack(paint: (context: CanvasRenderingContext2D) => void): void {
    repaint(this.back, this.width, this.height, paint);
  }

  paintFront(paint: (context: CanvasRenderingContext2D) => void): void {
    repaint(this.front, this.width, this.height, paint);
  }

  /** Both sheets as they are now, drawn at a place of another picture. */
  copyTo(
    context: CanvasRenderingContext2D,
    left: number,
    top: number,
    width: number,
    height: number
  ): void {
    for (const sheet of [this.back, this.front]) {
      if (sheet && sheet.width > 0) context.drawImage(sheet, left, top, width, height);
    }
  }

  private measure(place: HTMLElement): void {
    const { clientWidth, clientHeight } = place;
    this.enlarged = Number(getComputedStyle(place).getPropertyValue('--enlarged')) || 1;
    this.width = clientWidth / this.enlarged;
    this.height = clientHeight / this.enlarged;
    for (const canvas of [this.back, this.front]) {
      if (!canvas) continue;
      canvas.width = Math.round(clientWidth * devicePixelRatio);
      canvas.height = Math.round(clientHeight * devicePixelRatio);
    }
  }
}

function repaint(
  canvas: HTMLCanvasElement | null,
  width: number,
  height: number,
  paint: (context: CanvasRenderingContext2D) => void
): void {
  const context = canvas?.getContext('2d');
  if (!canvas || !context || width === 0 || height === 0) return;
  context.setTransform(canvas.width / width, 0, 0, canvas.height / height, 0, 0);
  context.clearRect(0, 0, width, height);
  context.lineCap = 'round';
  context.lineJoin = 'round';
  paint(context);
}
