import { WAVE_RATE_HZ } from './felt-wave';

/** Sound is played this long after it is made, s, so that a late frame leaves no gap. */
const LEAD_S = 0.06;
/** A fade in or out of this long is no click, s. */
const FADE_S = 0.03;

/** Plays pieces of sound one after the other. Make it from a tap: browsers want one before sound. */
export class Speaker {
  private readonly context = new AudioContext();
  private readonly gain = this.context.createGain();
  private next_s = 0;

  constructor() {
    this.gain.gain.value = 0;
    this.gain.connect(this.context.destination);
    void this.context.resume();
  }

  /** 0 is silence, 1 as loud as it gets. */
  setVolume(volume: number): void {
    // Loudness is heard by its logarithm; the square comes near enough.
    this.gain.gain.setTargetAtTime(volume * volume, this.context.currentTime, FADE_S);
  }

  play(wave: Float32Array): void {
    if (wave.length === 0) return;
    const buffer = this.context.createBuffer(1, wave.length, WAVE_RATE_HZ);
    buffer.getChannelData(0).set(wave);
    const source = this.context.createBufferSource();
    source.buffer = buffer;
    source.connect(this.gain);
    const now_s = this.context.currentTime;
    const isLate = this.next_s < now_s || this.next_s > now_s + 5 * LEAD_S;
    const at_s = isLate ? now_s + LEAD_S : this.next_s;
    source.start(at_s);
    this.next_s = at_s + buffer.duration;
  }

  close(): void {
    void this.context.close();
  }
}
