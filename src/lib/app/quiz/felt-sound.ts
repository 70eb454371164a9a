import { FELT_RATE_HZ, feltSignal, parseSetup, simulate } from '$lib/model';
import type { Case } from '$lib/course/items';

/** Browsers play no slower than this; a felt sample is held over the samples between. */
const SOUND_RATE_HZ = 8000;
/** Peak of the sound, of 1: clear, and not alarming. */
const LOUDNESS = 0.7;

/** The felt channel of a run as sound, −1 … 1, at SOUND_RATE_HZ. */
export function feltSound({ run: { setup, move, hold_s } }: Case): Float32Array<ArrayBuffer> {
  const { trace } = simulate({ ...setup, move, hold_s });
  const felt = feltSignal(parseSetup(setup), trace);
  const peak = felt.reduce((most, value) => Math.max(most, Math.abs(value)), 1e-9);
  const times = SOUND_RATE_HZ / FELT_RATE_HZ;
  const sound = new Float32Array(felt.length * times);
  for (let i = 0; i < sound.length; i++) {
    const k = Math.floor(i / times);
    const next = felt[Math.min(k + 1, felt.length - 1)];
    sound[i] = (LOUDNESS * (felt[k] + ((next - felt[k]) * (i % times)) / times)) / peak;
  }
  return sound;
}

/** Plays it once. */
export function play(sound: Float32Array<ArrayBuffer>, context: AudioContext): void {
  const buffer = context.createBuffer(1, sound.length, SOUND_RATE_HZ);
  buffer.copyToChannel(sound, 0);
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.connect(context.destination);
  source.start();
}
