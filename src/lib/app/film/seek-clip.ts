import type { FrameSize } from '$lib/film';
import { ClipFault, type Clip, type PassingFrame } from './clip';
import { lumaOf } from './luma-copy';
import type { Packets } from './read-packets';

/** A player that has not answered by then cannot show the frame, ms. */
const PATIENCE_MS = 5000;

/** A clip shown by the browser's player, frame by frame: where there is no decoder to ask. */
export class SeekClip implements Clip {
  readonly isSlow = true;
  readonly stamps_s: readonly number[];
  readonly isCut: boolean;

  private constructor(
    readonly name: string,
    readonly size: FrameSize,
    packets: Packets,
    private readonly video: HTMLVideoElement
  ) {
    this.stamps_s = packets.stamps_s;
    this.isCut = packets.isCut;
  }

  /** Throws ClipFault where the player will not have it. */
  static async open(file: File, packets: Packets): Promise<SeekClip> {
    const video = document.createElement('video');
    video.muted = true;
    video.playsInline = true;
    video.preload = 'auto';
    video.src = URL.createObjectURL(file);
    const isShown = await happens(video, 'loadeddata');
    const { videoWidth: width_px, videoHeight: height_px } = video;
    if (isShown && width_px > 0)
      return new SeekClip(file.name, { width_px, height_px }, packets, video);
    forget(video);
    throw new ClipFault('unplayable');
  }

  async draw(index: number, canvas: HTMLCanvasElement): Promise<boolean> {
    if (!(await this.seek(index))) return false;
    this.drawOn(canvas);
    return true;
  }

  async *frames(from: number, signal: AbortSignal): AsyncGenerator<PassingFrame> {
    const { width_px, height_px } = this.size;
    const canvas = new OffscreenCanvas(width_px, height_px);
    const context = canvas.getContext('2d', { willReadFrequently: true });
    const luma = new Uint8Array(width_px * height_px);
    if (!context) return;
    for (let index = from; index < this.stamps_s.length; index++) {
      if (signal.aborted || !(await this.seek(index))) return;
      context.drawImage(this.video, 0, 0);
      const frame = lumaOf(context, width_px, height_px, luma);
      yield { index, frame, draw: async (canvas) => this.drawOn(canvas) };
    }
  }

  close(): void {
    forget(this.video);
  }

  private drawOn(canvas: HTMLCanvasElement): void {
    canvas.getContext('2d')?.drawImage(this.video, 0, 0, canvas.width, canvas.height);
  }

  /** To the middle of the frame: at its own time a player shows the one before in a third of cases. */
  private async seek(index: number): Promise<boolean> {
    const { stamps_s, video } = this;
    const next_s = stamps_s[index + 1] ?? 2 * stamps_s[index] - (stamps_s[index - 1] ?? 0);
    const middle_s = (stamps_s[index] + next_s) / 2;
    if (Math.abs(video.currentTime - middle_s) < 1e-4 && video.readyState >= 2) return true;
    const seeked = happens(video, 'seeked');
    video.currentTime = middle_s;
    return seeked;
  }
}

function happens(video: HTMLVideoElement, what: 'loadeddata' | 'seeked'): Promise<boolean> {
  return new Promise((resolve) => {
    const wait = setTimeout(() => resolve(false), PATIENCE_MS);
    const answer = (isDone: boolean) => () => {
      clearTimeout(wait);
      resolve(isDone);
    };
    video.addEventListener(what, answer(true), { once: true });
    video.addEventListener('error', answer(false), { once: true });
  });
}

function forget(video: HTMLVideoElement): void {
  URL.revokeObjectURL(video.src);
  video.removeAttribute('src');
  video.load();
}
