import type { FrameSize, LumaFrame } from '$lib/film';

/** One frame as it comes by; it is gone when the next is asked for. */
export interface PassingFrame {
  readonly index: number;
  readonly frame: LumaFrame;
  readonly draw: (canvas: HTMLCanvasElement) => Promise<void>;
}

/** A clip that is open: its frames are decoded as they are asked for, and never held. */
export interface Clip {
  readonly name: string;
  readonly size: FrameSize;
  /** When each frame was taken, s; increasing. */
  readonly stamps_s: readonly number[];
  /** Whether the file ends before its clip does. */
  readonly isCut: boolean;
  /** Whether every frame costs a seek: a player does the decoding. */
  readonly isSlow: boolean;
  /** Draws a frame, filling the canvas. False where it cannot be decoded. */
  draw(index: number, canvas: HTMLCanvasElement): Promise<boolean>;
  /** Brightness of the frames in their order, until told to stop or one cannot be decoded. */
  frames(from: number, signal: AbortSignal): AsyncGenerator<PassingFrame>;
  close(): void;
}

/** Why a clip is not opened, in words for whoever chose it. */
export class ClipFault extends Error {}
