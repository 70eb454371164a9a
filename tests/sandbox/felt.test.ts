import { describe, expect, test } from 'vitest';
import { feltFrom, feltSignal, simulate, type GroundKind } from '../../src/lib/model';
import { FIRST_FELT, loadFelt, saveFelt } from '../../src/lib/sandbox/felt-settings';
import { FeltWave, peakOf, WAVE_RATE_HZ } from '../../src/lib/sandbox/felt-wave';
import { feltWord, WORD_S } from '../../src/lib/sandbox/felt-words';
import { smallWater } from './waters';

function dragOver(kind: GroundKind, slack_m = 0.02) {
  const setup = smallWater({
    bottom: { ground: { kind, seed: 3 } },
    start: { bait_x_m: 14.2, slack_m }
  });
  const move = { kind: 'sweep', from_deg: 0, to_deg: 65, duration_s: 4, elevation_deg: 0 } as const;
  return { setup, trace: simulate({ ...setup, move, hold_s: 1 }).trace };
}

/** Captions of a whole run, one every WORD_S. */
function wordsOf({ setup, trace }: ReturnType<typeof dragOver>): string[] {
  const signal = feltSignal(setup, trace);
  const ticks = Math.round(WORD_S * 100);
  const words: string[] = [];
  for (let last = ticks; last < trace.t_s.length; last += ticks) {
    words.push(
      feltWord(signal.subarray((last - ticks) * 20, last * 20), trace, last, feltFrom(setup))
    );
  }
  return words;
}

describe('the felt channel’s sound', () => {
  const { setup, trace } = dragOver('chunk rock');
  const whole = new FeltWave(setup).render(trace, 0, trace.t_s.length - 1);

  test('lasts as long as the run and never overshoots', () => {
    expect(whole.wave.length / WAVE_RATE_HZ).toBeCloseTo(trace.t_s[trace.t_s.length - 1], 9);
    expect(peakOf(whole.wave)).toBeLessThan(1);
    expect(peakOf(whole.wave)).toBeGreaterThan(0.1);
  });

  test('is made of the model’s own felt signal', () => {
    expect(whole.signal).toEqual(feltSignal(setup, trace));
  });

  test('is the same in pieces, however the frames fall', () => {
    const inPieces = new FeltWave(setup);
    const pieces: number[] = [];
    for (let from = 0, i = 0; from < trace.t_s.length - 1; i++) {
      const to = Math.min(from + 1 + (i % 3), trace.t_s.length - 1);
      pieces.push(...inPieces.render(trace, from, to).wave);
      from = to;
    }
    expect(Float32Array.from(pieces)).toEqual(whole.wave);
  });
});

/** What a phone's loudspeaker passes on starts about here, Hz (from memory: as small as it is, 300 to 600). */
const SPEAKER_FROM_HZ = 400;

/** Second-order Butterworth high-pass (R. Bristow-Johnson, Cookbook formulae for audio EQ). */
function highPassed(wave: Float32Array, from_Hz: number): Float32Array {
  const turn = (2 * Math.PI * from_Hz) / WAVE_RATE_HZ;
  const alpha = Math.sin(turn) * Math.SQRT1_2;
  const [in0, back1, back2] = [(1 + Math.cos(turn)) / 2, -2 * Math.cos(turn), 1 - alpha];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return wave.map((x) => {
    const y = (in0 * (x - 2 * x1 + x2) - back1 * y1 - back2 * y2) / (1 + alpha);
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  });
}

describe('a bottom from a phone’s loudspeaker', () => {
  /** Level of a drag at the first volume, as a small loudspeaker gives it: under this share of it, dB under full scale. */
  const levelOn = (kind: GroundKind, share = 0.9) => {
    const { setup, trace } = dragOver(kind, 0.03);
    const whole = new FeltWave(setup).render(trace, 0, trace.t_s.length - 1).wave;
    // A closed box so small falls by 24 dB an octave.
    const wave = highPassed(highPassed(whole, SPEAKER_FROM_HZ), SPEAKER_FROM_HZ);
    const long = WAVE_RATE_HZ / 20;
    const pieces = Array.from({ length: Math.floor(wave.length / long) }, (_, i) => {
      const piece = wave.subarray(i * long, (i + 1) * long);
      return Math.sqrt(piece.reduce((sum, value) => sum + value * value, 0) / long);
    }).sort((a, b) => a - b);
    const loud = pieces[Math.floor(share * pieces.length)] * FIRST_FELT.volume ** 2;
    return 20 * Math.log10(loud);
  };

  // Speech is recorded at about 20 dB under full scale; 15 dB less is still heard in a quiet room (from memory).
  test.each(['sand', 'clay', 'gravel', 'chunk rock', 'grass'] as const)(
    'is heard on %s',
    (kind) => {
      expect(levelOn(kind)).toBeGreaterThan(-35);
    }
  );

  // Three decibels are well told apart; rock and gravel differ by their beat, see the captions.
  test('is louder on gravel and rock than on sand', () => {
    const sand = levelOn('sand');
    expect(levelOn('gravel')).toBeGreaterThan(sand + 3);
    expect(levelOn('chunk rock')).toBeGreaterThan(sand + 3);
  });

  // Knocks with quiet between them, against a steady rattle: the same three decibels.
  test('knocks on rock where it rattles on gravel', () => {
    const swing = (kind: GroundKind) => levelOn(kind, 0.9) - levelOn(kind, 0.5);
    expect(swing('chunk rock')).toBeGreaterThan(swing('gravel') + 3);
  });
});

describe('slack', () => {
  const { setup, trace } = dragOver('mud', 1);
  const moves = trace.bait_x_m.findIndex((x) => Math.abs(x - trace.bait_x_m[0]) > 0.001);
  const { wave } = new FeltWave(setup).render(trace, 0, trace.t_s.length - 1);
  const between = (from: number, to: number) =>
    wave.subarray((from * WAVE_RATE_HZ) / 100, (to * WAVE_RATE_HZ) / 100);

  test('is silence, though the water pulls at the swept line', () => {
    const slack = trace.bait_tension_N.findIndex((pull) => pull >= feltFrom(setup));
    expect(slack).toBeGreaterThan(100);
    expect(Math.max(...trace.tip_tension_N.slice(0, slack))).toBeGreaterThan(feltFrom(setup));
    // The tick before row `slack` is already on its way to that row's pull.
    expect(peakOf(between(0, slack - 1))).toBe(0);
  });

  test('ends in sound when the line comes tight on the bait', () => {
    // A tenth of full scale is well heard; a tenth of a second is one glance.
    expect(peakOf(between(moves - 10, moves + 10))).toBeGreaterThan(0.1);
  });

  test('that is never taken up is silence to the end', () => {
    const never = dragOver('gravel', 3);
    const heard = new FeltWave(never.setup).render(never.trace, 0, never.trace.t_s.length - 1);
    const { tip_tension_N, bait_tension_N } = never.trace;
    // The water pulls at the swept line, and never by what a hand can tell at the bait.
    expect(Math.max(...tip_tension_N)).toBeGreaterThan(1.5 * tip_tension_N[0]);
    expect(Math.max(...bait_tension_N)).toBeLessThan(feltFrom(never.setup));
    expect(peakOf(heard.wave)).toBe(0);
  });
});

describe('captions', () => {
  test('tell rocks by knocks and slack by nothing', () => {
    expect(wordsOf(dragOver('chunk rock')).join()).toMatch(/knock|rattle/);
    expect(wordsOf(dragOver('sand', 3))[0]).toBe('slack, nothing');
  });

  test('tell of no knocks on sand and mud', () => {
    for (const kind of ['sand', 'clay', 'mud'] as const) {
      expect(wordsOf(dragOver(kind)).join(), kind).not.toMatch(/rattle|knocks/);
    }
  });
});

describe('how the felt channel is wanted', () => {
  test('is there again, and is as at first when it cannot be read', () => {
    let kept: string | null = null;
    const shelf = { getItem: () => kept, setItem: (_key: string, text: string) => (kept = text) };
    expect(loadFelt(shelf)).toEqual(FIRST_FELT);
    const wanted = { volume: 0.2, isOn: true, isMuted: true, captions: true, vibration: false };
    saveFelt(shelf, wanted);
    expect(loadFelt(shelf)).toEqual(wanted);
    kept = '{"volume": 0.3, "captions": true, "vibration": false}';
    expect(loadFelt(shelf)).toEqual({
      ...wanted,
      volume: 0.3,
      isOn: false,
      isMuted: false
    });
    kept = '{"volume": 7}';
    expect(loadFelt(shelf)).toEqual(FIRST_FELT);
  });
});
