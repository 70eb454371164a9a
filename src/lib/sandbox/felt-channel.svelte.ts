import { FELT_RATE_HZ, feltFrom, type Setup, type Trace } from '$lib/model';
import { Announcer } from './announcer';
import { FIRST_FELT, KEY, loadFelt, saveFelt, type FeltSettings } from './felt-settings';
import { FeltWave, peakOf } from './felt-wave';
import { feltWord, isSteady, WORD_S } from './felt-words';
import { PASS_BUZZ_MS, passWave } from './pass-sound';
import { addTicks, SpoolCue } from './spool-cue';
import type { Showing } from './showing.svelte';
import { Speaker } from './speaker';

/** More ticks than this at once are a jump, not a run that goes on: nothing is played for them. */
const MOST_TICKS = 40;
/** Swings below this are not passed on by vibration, N; a motor cannot do less than a few ms. */
const BUZZ_FROM_N = 0.08;
const BUZZ_MS_A_N = 60;
const MOST_BUZZ_MS = 40;

/** What reaches the hand: heard, felt where the device can, and said in words. */
export class FeltChannel {
  settings = $state.raw<FeltSettings>(FIRST_FELT);
  /** The newest word for it: a caption, or for who hears the page read. */
  word = $state('');
  /** Whether what is done now asks to feel: captions stand then, unless they were put away. */
  isAsked = $state(false);
  private wave: FeltWave | null = null;
  private heard = 0;
  private spool = new SpoolCue(false);
  private speaker: Speaker | null = null;
  private readonly recent = new Float32Array(WORD_S * FELT_RATE_HZ);
  private announcer = this.newAnnouncer();

  get isOn(): boolean {
    return this.settings.isOn;
  }

  get hasCaptions(): boolean {
    return this.settings.captions ?? this.isAsked;
  }

  /** Takes what was chosen before, here or in another tab, and follows that. @returns how to stop. */
  load(): () => void {
    this.settings = loadFelt(localStorage);
    const hear = ({ key }: StorageEvent) => {
      if (key === KEY) this.settings = loadFelt(localStorage);
    };
    addEventListener('storage', hear);
    return () => {
      removeEventListener('storage', hear);
      this.close();
    };
  }

  switch(isOn: boolean): void {
    this.set({ isOn });
    this.wake();
  }

  /** Call this from a tap or a key: before one, browsers give no sound. */
  wake(): void {
    if (!this.isOn || this.speaker) return;
    this.speaker = new Speaker();
    this.sound();
  }

  set(change: Partial<FeltSettings>): void {
    this.settings = { ...this.settings, ...change };
    saveFelt(localStorage, this.settings);
    this.sound();
  }

  /** A new run, which nothing has been heard of. */
  begin(setup: Setup): void {
    this.wave = new FeltWave(setup);
    this.heard = 0;
    this.spool = new SpoolCue(setup.start.spool === 'free');
    this.word = '';
    // What was still to be said of the last run is over.
    this.announcer = this.newAnnouncer();
    this.recent.fill(0);
  }

  /** The run has come to row `last` of its trace, and so much line has run off the spool, m. */
  follow(setup: Setup, trace: Trace, last: number, now_ms: number, given_m = 0): void {
    if (!this.wave || last < this.heard || last - this.heard > MOST_TICKS) {
      this.begin(setup);
      this.heard = last;
    }
    if (!this.wave || last === this.heard) return;
    const { wave, signal } = this.wave.render(trace, this.heard, last);
    this.heard = last;
    const told_m = this.spool.told_m;
    this.spool.follow(trace, last, given_m);
    addTicks(wave, told_m, this.spool.told_m);
    if (this.isOn) this.speaker?.play(wave);
    this.buzz(signal);
    this.remember(signal);
    const told =
      this.spool.word(trace.t_s[last]) ?? feltWord(this.recent, trace, last, feltFrom(setup));
    if (told !== this.word || this.announcer.isWaiting) this.announcer.tell(told, !isSteady(told));
    this.announcer.flush(now_ms);
  }

  /** A replay at its own speed is felt again; slowed down it would be another bottom. */
  followAgain({ film, player, tick }: Showing, now_ms: number): void {
    if (player.isPlaying && player.rate === 1) {
      this.follow(film.setup, film.result.trace, tick, now_ms);
    }
  }

  /** A try has passed: heard and felt by who wants either. */
  passed(): void {
    if (!this.isOn) return;
    this.speaker?.play(passWave());
    if (this.settings.vibration) navigator.vibrate?.(PASS_BUZZ_MS);
  }

  close(): void {
    this.speaker?.close();
    this.speaker = null;
  }

  private newAnnouncer(): Announcer {
    return new Announcer((text) => (this.word = text));
  }

  private sound(): void {
    const { volume, isMuted } = this.settings;
    this.speaker?.setVolume(this.isOn && !isMuted ? volume : 0);
  }

  private remember(signal: Float32Array): void {
    const { recent } = this;
    const kept = Math.max(0, recent.length - signal.length);
    recent.copyWithin(0, recent.length - kept);
    recent.set(signal.subarray(Math.max(0, signal.length - recent.length)), kept);
  }

  private buzz(signal: Float32Array): void {
    const peak_N = peakOf(signal);
    if (!this.isOn || !this.settings.vibration || peak_N < BUZZ_FROM_N) return;
    navigator.vibrate?.(Math.min(peak_N * BUZZ_MS_A_N, MOST_BUZZ_MS));
  }
}
