import { WAVE_RATE_HZ } from './felt-wave';

/** Two notes, a fifth apart: a choice. Short and quiet, for those who want feel at all. */
const NOTES_HZ = [523, 784] as const;
const NOTE_S = 0.11;
const LOUD = 0.3;

/** A double buzz, ms on and off: no bottom feels like it. */
export const PASS_BUZZ_MS = [40, 60, 40];

/** What a pass sounds like, at WAVE_RATE_HZ. */
export function passWave(): Float32Array {
  const each = Math.round(NOTE_S * WAVE_RATE_HZ);
  return Float32Array.from({ length: each * NOTES_HZ.length }, (_, i) => {
    const [note, at] = [Math.floor(i / each), i % each];
    const swell = Math.sin((Math.PI * at) / each);
    return LOUD * swell * Math.sin((2 * Math.PI * NOTES_HZ[note] * at) / WAVE_RATE_HZ);
  });
}
