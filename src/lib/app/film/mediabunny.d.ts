/**
 * The few parts of mediabunny that a clip is read with. Written out so that what a reader of clips
 * has to offer is seen at a glance, and another can take its place.
 */
declare module 'mediabunny' {
  export interface VideoSample {
    readonly format: string | null;
    readonly visibleRect: { readonly width: number; readonly height: number };
    readonly rotation: number;
    readonly flip: boolean;
    readonly pixelAspectRatio: { readonly num: number; readonly den: number };
    /** s */
    readonly timestamp: number;
    readonly displayWidth: number;
    readonly displayHeight: number;
    allocationSize(as?: { format: 'RGBA' }): number;
    copyTo(
      destination: Uint8Array | Uint8ClampedArray,
      as?: { format: 'RGBA' }
    ): Promise<{ offset: number; stride: number }[]>;
    /** Turned as it is to be seen. */
    draw(
      context: CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D,
      x: number,
      y: number,
      width?: number,
      height?: number
    ): void;
    close(): void;
  }
  export interface InputVideoTrack {
    canDecode(): Promise<boolean>;
    getCodec(): Promise<string | null>;
    getDisplayWidth(): Promise<number>;
    getDisplayHeight(): Promise<number>;
  }
  export class BlobSource {
    constructor(blob: Blob);
  }
  export class Input {
    constructor(options: { source: BlobSource; formats: readonly unknown[] });
    canRead(): Promise<boolean>;
    getPrimaryVideoTrack(): Promise<InputVideoTrack | null>;
    getMimeType(): Promise<string>;
    dispose(): void;
  }
  export class EncodedPacketSink {
    constructor(track: InputVideoTrack);
    packets(
      from?: undefined,
      to?: undefined,
      options?: { metadataOnly: boolean }
    ): AsyncGenerator<{ readonly timestamp: number }, void, unknown>;
  }
  export class VideoSampleSink {
    constructor(track: InputVideoTrack);
    samples(from_s?: number): AsyncGenerator<VideoSample, void, unknown>;
  }
  export const ALL_FORMATS: readonly unknown[];
}
