import { FELT_RATE_HZ, FeltStream, TICK_S, type Setup, type Trace } from '$lib/model';

/**
 * The felt signal made audible. Most of it is too low for a loudspeaker, so it swells a tone: what
 * trembles at 20 a second in the hand is heard as a tone trembling at 20 a second.
 */
export const WAVE_RATE_HZ = 8000;
/**
 * Hz. Low enough for a knock to sound dull, high enough for a phone's loudspeaker, which gives little
 * under 400: of a drag's level this loses one decibel there, a tone at 210 would lose twenty-three.
 */
const TONE_HZ = 640;
/** A pull that changes by this much is as loud as it gets, N: a fish's tug, or rock on a short line. */
const LOUDEST_N = 2;
/**
 * How steeply faint changes are raised, as telephony does (ITU-T G.711, μ-law): sand's hiss is a hundredth
 * of a knock on rock, and a phone's loudspeaker must pass on both. Less, and sand is silence.
 */
const MU = 255;

const SAMPLES_EACH = WAVE_RATE_HZ / FELT_RATE_HZ;

/** What one stretch of time felt like. */
export interface FeltPiece {
  /** At WAVE_RATE_HZ, within ±1. */
  readonly wave: Float32Array;
  /** The felt signal itself, N, at FELT_RATE_HZ. */
  readonly signal: Float32Array;
}

/** Turns a run's ticks into sound, in order. */
export class FeltWave {
  private readonly stream: FeltStream;
  private before_N = 0;
  private sample = 0;

  constructor(setup: Setup) {
    this.stream = new FeltStream(setup, TICK_S);
  }

  /** The ticks after row `from` up to row `to` of the trace. */
  render(trace: Trace, from: number, to: number): FeltPiece {
    const { samplesATick } = this.stream;
    const signal = new Float32Array((to - from) * samplesATick);
    for (let i = from + 1; i <= to; i++) {
      this.stream.tick(trace, i, signal, (i - from - 1) * samplesATick);
    }
    const wave = new Float32Array(signal.length * SAMPLES_EACH);
    for (let i = 0; i < wave.length; i++) {
      const now_N = signal[Math.floor(i / SAMPLES_EACH)];
      const share = ((i % SAMPLES_EACH) + 1) / SAMPLES_EACH;
      const felt_N = this.before_N + share * (now_N - this.before_N);
      if (share === 1) this.before_N = now_N;
      const tone = Math.sin((2 * Math.PI * TONE_HZ * this.sample++) / WAVE_RATE_HZ);
      wave[i] = loudness(felt_N) * tone;
    }
    return { wave, signal };
  }
}

/** From nothing at no change to ±1. */
function loudness(felt_N: number): number {
  const share = Math.min(1, Math.abs(felt_N) / LOUDEST_N);
  return (Math.sign(felt_N) * Math.log1p(MU * share)) / Math.log1p(MU);
}

/** Largest change of pull in a piece, N. */
export function peakOf(signal: Float32Array): number {
  let peak = 0;
  for (const value of signal) peak = Math.max(peak, Math.abs(value));
  return peak;
}
