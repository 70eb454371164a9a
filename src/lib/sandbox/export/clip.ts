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
const MARGIN = 16;

/** Why a browser cannot make a clip, for the learner; null if it can. */
export function clipFault(): string | null {
  const canRecord =
    typeof MediaRecorder !== 'undefined' &&
    MediaRecorder.isTypeSupported(TYPE) &&
    'captureStream' in HTMLCanvasElement.prototype;
  return canRecord ? null : 'This browser can’t record a WebM clip.';
}

/**
 * Plays the replay once, at its own speed, and records it. `progress` gets the share that is done.
 * Resolves with null when it was stopped before its end: by `signal`, by the hand at the player, or
 * because the page went out of sight, where browsers draw nothing.
 */
export async function recordClip(
  showing: Showing,
  scene: Scene,
  units: Units,
  progress: (share: number) => void,
  signal: AbortSignal
): Promise<Blob | null> {
  const layout = clipLayout(scene.whole, scene.bottom, scene.rod);
  const sheet = document.createElement('canvas');
  sheet.width = layout.width;
  sheet.height = layout.height;
  const context = sheet.getContext('2d');
  if (!context || !scene.colours) throw new Error('nothing to record');
  const { player } = showing;
  const stream = sheet.captureStream(FRAMES_HZ);
  const recorder = new MediaRecorder(stream, {
    mimeType: TYPE,
    videoBitsPerSecond: BITS_A_SECOND
  });
  const film = filmIn(recorder);
  player.isLooped = false;
  player.rate = 1;
  player.seek(0);
  player.play();
  recorder.start();
  try {
    while (player.isPlaying && !signal.aborted && !document.hidden) {
      paintClip(context, layout, scene, showing, units);
      progress(player.time_s / player.ends_s);
      await nextFrame();
    }
    const isWhole = player.time_s >= player.ends_s;
    if (isWhole) {
      showing.draw(scene);
      paintClip(context, layout, scene, showing, units);
      await new Promise((done) => setTimeout(done, LINGERS_MS));
    }
    player.pause();
    recorder.stop();
    const made = await film;
    return isWhole ? made : null;
  } finally {
    for (const track of stream.getTracks()) track.stop();
  }
}

/** What the recorder has, once it has stopped. */
function filmIn(recorder: MediaRecorder): Promise<Blob> {
  const pieces: Blob[] = [];
  recorder.addEventListener('dataavailable', ({ data }) => pieces.push(data));
  return new Promise((done) =>
    recorder.addEventListener('stop', () => done(new Blob(pieces, { type: TYPE })))
  );
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
