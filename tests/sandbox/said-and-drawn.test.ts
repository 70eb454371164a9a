import { expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { lazyRun } from '../../src/lib/course/lazy';
import { isOffBottom, type Move } from '../../src/lib/model';
import { runToGrade } from '../../src/lib/scoring/run-to-grade';
import { heightWords, readoutAt, readoutUntil_s, wayWords } from '../../src/lib/sandbox/readout';
import { seriesOf } from '../../src/lib/sandbox/series';
import { shownLifts } from '../../src/lib/sandbox/shown-lifts';
import {
  describeTry,
  drawnOf,
  formatLength,
  gradeTry,
  type Challenge
} from '../../src/lib/scoring';
import { TAKES_ALL } from '../samples';

/** Hands that are wrong in their own ways, and the one that is right. */
const TRIES = ['beginner', 'at once', 'fastest', 'back and forth', 'far', 'reference'] as const;

/** Each second of them by turns: of two challenges one after the other all are made. */
const triesOf = (nth: number) => TRIES.filter((_, i) => TAKES_ALL || i % 2 === nth % 2);

const untied = (words: string) => words.replaceAll('\u00a0', ' ');
const length = (m: number) => untied(formatLength(m, 'imperial'));

/** 1 ft 1½ in is 13.5. */
function inches(words: string): number {
  const read = /^(?:just \w+ )?(?:(\d+) ft)? ?(?:(\d*)(½|1\/2)? ?in)?$/.exec(words);
  if (!read) throw new Error(`no length: ${words}`);
  const [, ft = '0', inch = '0', half = ''] = read;
  return 12 * Number(ft) + Number(inch) + (half ? 0.5 : 0);
}

function moveOf(challenge: Challenge, name: (typeof TRIES)[number]): Move {
  if (name === 'far') return farTurn(challenge);
  return name === 'beginner' || name === 'reference' ? challenge[name] : lazyRun(name, challenge);
}

/** Much too far in a moment: what flies swings in, farther than the tip came. */
function farTurn({ plane, start }: Challenge): Move {
  const from_deg = plane === 'lift' ? start.elevation_deg : start.azimuth_deg;
  const turn = { from_deg, to_deg: from_deg + 50, duration_s: 0.6 };
  return plane === 'lift'
    ? { kind: 'lift', ...turn }
    : { kind: 'sweep', ...turn, elevation_deg: start.elevation_deg };
}

/** What is said of a try, and what stands beside its picture at its end. */
function bothOf(challenge: Challenge, name: (typeof TRIES)[number]) {
  const move = moveOf(challenge, name);
  const graded = gradeTry(challenge, move);
  const { result } = graded;
  const { bottomAt: heightAt } = runToGrade(challenge.setup, move, result);
  const series = seriesOf(result, heightAt);
  const target = drawnOf(challenge.goals);
  const bite_s = readoutUntil_s(result.events, target);
  const shown = readoutAt(series, series.t_s.length - 1, 0, bite_s);
  const { did, why } = describeTry(challenge, graded, 'imperial');
  const { depth_m } = challenge.setup.water;
  return {
    result,
    said: untied(`${did} ${why}`),
    lifts: shownLifts(result.trace, heightAt).lifts.filter(({ from }) => from > 0),
    way_m: series.baitTravel_m,
    height: untied(heightWords(shown, depth_m, 'imperial')),
    way: untied(wayWords(shown, { target, units: 'imperial' }))
  };
}

const contradictions = (challenge: Challenge, name: (typeof TRIES)[number]): string[] => {
  const { result, said, lifts, way_m, height, way } = bothOf(challenge, name);
  const faults: string[] = [];
  const left = /left the bottom (at once|where it lay|after (.*?)) and rose (.*?)\./.exec(said);
  const first = lifts.find(({ rise_m }) => isOffBottom(rise_m));
  if (/stayed on bottom/.test(said) && lifts.length > 0) faults.push('the trail has dots');
  if (/stayed on bottom/.test(said) && height !== 'on the bottom') faults.push(height);
  if (/skipped along/.test(said) && (first || lifts.length === 0)) faults.push('no skips');
  if (/skipped along/.test(said) && height !== 'on the bottom, skipped') faults.push(height);
  if (left) {
    const from = first && length(Math.abs(way_m[first.from]));
    if (left[2] && left[2] !== from) faults.push(`dots from ${from}`);
    if (height.startsWith('on') && height !== `on the bottom, was ${left[3]} up`)
      faults.push(height);
  }
  // The first lesson says that on the bottom it cannot outrun the tip; a drifting boat pulls, too.
  const both =
    /moved the tip ((?:\d+ ft ?)?(?:\d\S* in)?)(?:, counting both ways, and)?.* the jig ((?:\d+ ft ?)?(?:\d\S* in)?)[:;]/.exec(
      said
    );
  if (
    both &&
    !challenge.setup.drift_m_s &&
    result.hops.length > 0 &&
    inches(both[2].trim()) > inches(both[1].trim())
  )
    faults.push('outran the tip');
  const went =
    /(?:the jig(?: swung in)?|The jig went|moved the jig) ((?:\d+ ft )?(?:\d\S* in|\d+ ft))/.exec(
      said
    );
  const reeled = /reel dragged it (.*?)\./.exec(said)?.[1] ?? '0 in';
  if (went && !/away from/.test(said) && inches(way) !== inches(went[1]) + inches(reeled))
    faults.push(`${way} moved`);
  return faults.map((fault) => `${challenge.id}, ${name}: "${said}" beside "${fault}"`);
};

for (const { id, challenges } of loadLessons()) {
  test(`what is said of a try in ${id} is what its picture shows`, () => {
    const found = challenges.flatMap((one, i) =>
      triesOf(i).flatMap((name) => contradictions(one, name))
    );
    expect(found).toEqual([]);
  });
}
