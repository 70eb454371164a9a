/** A camera's picture, and when it was taken: ms on the clock of the page. */
export interface CameraFrame {
  readonly t_ms: number;
  readonly picture: CanvasImageSource;
}

/** Not in every browser's types yet. */
interface TrackProcessor {
  readonly readable: ReadableStream<VideoFrame>;
}
type WithProcessor = {
  MediaStreamTrackProcessor?: new (options: {
    track: MediaStreamTrack;
    maxBufferSize: number;
  }) => TrackProcessor;
};
/**
 * A page that is busy for a quarter of a second finds the frames of it waiting, at 30 a second, each with
 * its time; without room for them they are dropped, and what the rod did meanwhile is not known.
 */
const FRAMES_KEPT = 8;

/** Frames as they come, each gone when the next is asked for. From the track itself where a page may have it. */
export async function* cameraFrames(
  stream: MediaStream,
  video: HTMLVideoElement,
  signal: AbortSignal
): AsyncGenerator<CameraFrame> {
  const Processor = (globalThis as WithProcessor).MediaStreamTrackProcessor;
  const [track] = stream.getVideoTracks();
  if (Processor && track)
    yield* fromTrack(new Processor({ track, maxBufferSize: FRAMES_KEPT }), signal);
  else yield* fromVideo(video, signal);
}

async function* fromTrack({ readable }: TrackProcessor, signal: AbortSignal) {
  const reader = readable.getReader();
  /** From the frames' own clock to the page's: by the frame that came with the least delay. */
  let shift_ms = Infinity;
  while (!signal.aborted) {
    const { value: frame, done } = await reader.read();
    if (done) return;
    const own_ms = frame.timestamp / 1000;
    shift_ms = Math.min(shift_ms, performance.now() - own_ms);
    try {
      yield { t_ms: own_ms + shift_ms, picture: frame };
    } finally {
      frame.close();
    }
  }
  void reader.cancel();
}

async function* fromVideo(video: HTMLVideoElement, signal: AbortSignal) {
  while (!signal.aborted) {
    const t_ms = await new Promise<number>((resolve) =>
      video.requestVideoFrameCallback((now, { captureTime }) => resolve(captureTime ?? now))
    );
    yield { t_ms, picture: video };
  }
}
