import type { Units } from '$lib/scoring';
import type { Ink } from '../palette';
import type { Scene } from '../scene';
import type { Showing } from '../showing.svelte';
import { clipLayout, type ClipLayout, type Frame } from './clip-layout';
import { gearLine, momentLine, SIGNED } from './run-words';

const TYPE = 'video/webm';
/** As many pictures a second as the eye needs, and a sharp thin line in each of them. */
const FRAMES_HZ = 30;
const BITS_A_SECOND = 4e6;
/** The last picture stays for a moment, ms, so that it gets into the clip. */
const LINGERS_MS = 300;
/** How often what was recorded is handed over, ms: only then is it known that there is any. */
const PIECE_MS = 100;
/** A recorder that has no picture by then gets none, ms. */
const BEGINS_MS = 10_000;
const MARGIN = 16;

/** Why a browser cannot make a clip, for the learner; null if it can. */
export function clipFault(): string | null {
  const canRecord =
    typeof MediaRecorder !== 'undefined' &&
    MediaRecorder.isTypeSupported(TYPE) &&
    'captureStream' in HTMLCanvasElement.prototype;
  return canRecord ? null : 'This browser can’t record a WebM clip.';
}

/** Why there is no clip, for the learner. */
export const NO_CLIP = {
  stopped: 'No clip: you stopped it before the end.',
  'no picture': 'No clip: this device was too busy to record one. Close other pages and try again.'
};

/**
 * Plays the replay once, at its own speed, and records it. `progress` gets the share that is done.
 * It is stopped before its end by `signal`, by the hand at the player, or because the page went out of
 * sight, where browsers draw nothing.
 */
export async function recordClip(
  showing: Showing,
  scene: Scene,
  units: Units,
  progress: (share: number) => void,
  signal: AbortSignal
): Promise<Blob | keyof typeof NO_CLIP> {
  const layout = clipLayout(scene.whole, scene.bottom, scene.rod);
  const sheet = document.createElement('canvas');
  sheet.width = layout.width;
  sheet.height = layout.height;
  const context = sheet.getContext('2d');
  if (!context || !scene.colours) throw new Error('nothing to record');
  const { player } = showing;
  const film = new Film(sheet);
  const paint = () => paintClip(context, layout, scene, showing, units);
  const isStopped = () => signal.aborted || document.hidden;
  player.isLooped = false;
  player.rate = 1;
  player.seek(0);
  try {
    // A recorder takes a while to begin: what is played before that is in no film.
    for (const from = performance.now(); !film.hasPicture && !isStopped();) {
      if (performance.now() - from > BEGINS_MS) return 'no picture';
      paint();
      await nextFrame();
    }
    player.play();
    while (player.isPlaying && !isStopped()) {
      paint();
      progress(player.time_s / player.ends_s);
      await nextFrame();
    }
    player.pause();
    if (player.time_s < player.ends_s) return 'stopped';
    showing.draw(scene);
    paint();
    await new Promise((done) => setTimeout(done, LINGERS_MS));
    return await film.end();
  } finally {
    film.drop();
  }
}

/** What is drawn on a sheet, from now on. */
class Film {
  private readonly stream: MediaStream;
  private readonly recorder: MediaRecorder;
  private readonly pieces: Blob[] = [];

  constructor(sheet: HTMLCanvasElement) {
    this.stream = sheet.captureStream(FRAMES_HZ);
    const options = { mimeType: TYPE, videoBitsPerSecond: BITS_A_SECOND };
    this.recorder = new MediaRecorder(this.stream, options);
    this.recorder.addEventListener('dataavailable', ({ data }) => this.pieces.push(data));
    this.recorder.start(PIECE_MS);
  }

  /** Stopped before, it would be a head without a picture, which nothing plays. */
  get hasPicture(): boolean {
    return this.pieces.some(({ size }) => size > 0);
  }

  /** All of it, once the recorder has let go of the last. */
  async end(): Promise<Blob> {
    const ended = new Promise((done) => this.recorder.addEventListener('stop', done));
    this.recorder.stop();
    await ended;
    return new Blob(this.pieces, { type: TYPE });
  }

  /** The sheet is recorded no longer. */
  drop(): void {
    for (const track of this.stream.getTracks()) track.stop();
  }
}

/** A page that goes out of sight gets no more frames: then this must come back all the same. */
function nextFrame(): Promise<unknown> {
  return Promise.race([
    new Promise((done) => requestAnimationFrame(done)),
    new Promise((done) => document.addEventListener('visibilitychange', done, { once: true }))
  ]);
}

/** One picture of the clip. */
function paintClip(
  context: CanvasRenderingContext2D,
  layout: ClipLayout,
  scene: Scene,
  showing: Showing,
  units: Units
): void {
  const ink = scene.colours;
  if (!ink) return;
  context.fillStyle = ink.rule;
  context.fillRect(0, 0, layout.width, layout.height);
  const put = ({ left, top, width, height }: Frame, picture: Scene['whole']) => {
    context.fillStyle = ink.raised;
    context.fillRect(left, top, width, height);
    picture.copyTo(context, left, top, width, height);
  };
  put(layout.whole, scene.whole);
  put(layout.bottom, scene.bottom);
  put(layout.rod, scene.rod);
  writeWords(context, layout, showing, units, ink);
}

function writeWords(
  context: CanvasRenderingContext2D,
  { words, width, height }: ClipLayout,
  showing: Showing,
  units: Units,
  ink: Ink
): void {
  context.fillStyle = ink.paper;
  context.fillRect(0, words, width, height - words);
  const most = width - 2 * MARGIN;
  context.fillStyle = ink.ink;
  context.font = `600 22px ${ink.figures}`;
  const { setup } = showing.film;
  const moment = momentLine(showing.readout, setup.water.depth_m, units);
  context.fillText(moment, MARGIN, words + 29, most);
  context.fillStyle = ink.inkSoft;
  context.font = `500 16px ${ink.figures}`;
  const below = `${gearLine(setup, units)}. ${SIGNED}`;
  context.fillText(below, MARGIN, words + 54, most);
}
