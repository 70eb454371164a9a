import type { FrameSize } from '$lib/film';
import type * as Bunny from 'mediabunny';
import type { InputVideoTrack, VideoSample, VideoSampleSink } from 'mediabunny';
import type { Clip, PassingFrame } from './clip';
import { FramePainter } from './frame-painter';
import { LumaCopy } from './luma-copy';
import type { Packets } from './read-packets';

/** Frames whose times differ by less are the same one, s: WebM rounds to a thousandth. */
const SAME_S = 0.002;

/** A clip decoded by the browser's own decoder, in sequence. */
export class DecodedClip implements Clip {
  readonly stamps_s: readonly number[];
  readonly isCut: boolean;
  readonly isSlow = false;
  private readonly sink: VideoSampleSink;
  private readonly painter = new FramePainter();
  /** Where stepping on goes on, without decoding from the last key frame again. */
  private open: { next: number; samples: AsyncGenerator<VideoSample, void, unknown> } | null = null;

  constructor(
    readonly name: string,
    readonly size: FrameSize,
    packets: Packets,
    track: InputVideoTrack,
    Sink: typeof Bunny.VideoSampleSink,
    private readonly dispose: () => void
  ) {
    this.stamps_s = packets.stamps_s;
    this.isCut = packets.isCut;
    this.sink = new Sink(track);
  }

  async draw(index: number, canvas: HTMLCanvasElement): Promise<boolean> {
    try {
      const sample = await this.sampleAt(index);
      // Past what can be decoded the sink gives the last frame that could be.
      const isIt = sample && Math.abs(sample.timestamp - this.stamps_s[index]) < SAME_S;
      if (!sample || !isIt) {
        sample?.close();
        this.forget();
        return false;
      }
      await this.painter.paint(canvas, sample);
      sample.close();
      return true;
    } catch {
      this.forget();
      return false;
    }
  }

  async *frames(from: number, signal: AbortSignal): AsyncGenerator<PassingFrame> {
    this.forget();
    const copy = new LumaCopy();
    const samples = this.sink.samples(this.stamps_s[from]);
    let index = from;
    try {
      for await (const sample of samples) {
        try {
          if (signal.aborted) return;
          while (this.stamps_s[index] < sample.timestamp - SAME_S) index++;
          const frame = await copy.of(sample);
          yield { index, frame, draw: (canvas) => this.painter.paint(canvas, sample) };
          index++;
        } finally {
          sample.close();
        }
      }
    } catch (error) {
      // What the decoder refuses is where the clip ends for us; the page tells.
      if (!(error instanceof Error)) throw error;
    } finally {
      void samples.return();
    }
  }

  close(): void {
    this.forget();
    this.dispose();
  }

  private async sampleAt(index: number): Promise<VideoSample | null> {
    if (this.open?.next !== index) {
      this.forget();
      this.open = { next: index, samples: this.sink.samples(this.stamps_s[index]) };
    }
    const { samples } = this.open;
    const { value } = await samples.next();
    if (this.open?.samples === samples) this.open.next = index + 1;
    return value ?? null;
  }

  private forget(): void {
    void this.open?.samples.return().catch(() => {});
    this.open = null;
  }
}
