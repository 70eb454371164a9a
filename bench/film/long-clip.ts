import type { Page } from 'playwright';

/** A minute of a jig that goes to and fro before a wall, made in the browser. */
export interface LongClip {
  readonly width_px: number;
  readonly height_px: number;
  readonly rate_Hz: number;
  readonly seconds: number;
  /** Bits a second, as a phone writes. */
  readonly bitrate: number;
}

/** One to and fro is encoded and then repeated: its first frame is a key frame. */
const ROUND_S = 2;
export const FIRST_PLACE = { x: 0.4, y: 0.5 };

/** Makes it in a page that has mediabunny's bundle, and begins to download it. */
export async function makeLongClip(page: Page, clip: LongClip): Promise<void> {
  // What compiles the bench names functions by a helper that a page has not.
  await page.evaluate('globalThis.__name = (named) => named');
  await page.evaluate(encode, { ...clip, round_s: ROUND_S, first: FIRST_PLACE });
}

/** Runs in the page. */
async function encode(clip: LongClip & { round_s: number; first: { x: number; y: number } }) {
  const { width_px, height_px, rate_Hz, seconds, bitrate, round_s, first } = clip;
  // eslint-disable-next-line @typescript-eslint/no-explicit-any
  const bunny = (globalThis as any).Mediabunny;
  const canvas = new OffscreenCanvas(width_px, height_px);
  const context = canvas.getContext('2d')!;
  let state = 7;
  const random = () => (state = (state * 16807) % 2147483647) / 2147483647;
  const tiles = Array.from({ length: 900 }, () => {
    return [random() * width_px, random() * height_px, 30 + 90 * random(), 80 + 70 * random()];
  });
  const output = new bunny.Output({
    format: new bunny.WebMOutputFormat(),
    target: new bunny.BufferTarget()
  });
  const source = new bunny.EncodedVideoPacketSource('vp8');
  output.addVideoTrack(source);
  await output.start();
  const chunks: EncodedVideoChunk[] = [];
  let config: EncodedVideoChunkMetadata | undefined;
  const encoder = new VideoEncoder({
    output: (chunk, meta) => {
      chunks.push(chunk);
      config ??= meta;
    },
    error: (error) => {
      throw error;
    }
  });
  encoder.configure({
    ...{ codec: 'vp8', width: width_px, height: height_px, bitrate, framerate: rate_Hz }
  });
  for (let i = 0; i < round_s * rate_Hz; i++) {
    for (const [x, y, side, shade] of tiles) {
      context.fillStyle = `rgb(${shade} ${shade + 10} ${shade + 4})`;
      context.fillRect(x - side / 2, y - side / 2, side, side);
    }
    const way = (1 - Math.cos((2 * Math.PI * i) / (round_s * rate_Hz))) / 2;
    const [x, y] = [(first.x + 0.2 * way) * width_px, first.y * height_px];
    for (const [dx, dy, r, colour] of [
      [0, 0, 20, '#201810'],
      [-6, 3, 8, '#f4efe0'],
      [8, -6, 5, '#d05020'],
      [6, 10, 4, '#e0d8c0']
    ] as const) {
      context.fillStyle = colour;
      context.beginPath();
      context.arc(x + dx, y + dy, r, 0, 7);
      context.fill();
    }
    const frame = new VideoFrame(canvas, { timestamp: (1e6 * i) / rate_Hz });
    encoder.encode(frame, { keyFrame: i === 0 });
    frame.close();
  }
  await encoder.flush();
  for (let round = 0; round < seconds / round_s; round++) {
    for (const [i, chunk] of chunks.entries()) {
      const data = new Uint8Array(chunk.byteLength);
      chunk.copyTo(data);
      const t_s = round * round_s + i / rate_Hz;
      const packet = new bunny.EncodedPacket(data, chunk.type, t_s, 1 / rate_Hz);
      await source.add(packet, config);
    }
  }
  source.close();
  await output.finalize();
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([output.target.buffer]));
  link.download = 'minute.webm';
  link.click();
}
