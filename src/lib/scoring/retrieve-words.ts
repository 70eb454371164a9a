import type { RetrieveGoal } from './challenge';
import {
  formatLength,
  formatPull,
  formatShare,
  formatSpeed,
  formatTime,
  type Units
} from './display';

/** A goal of a retrieve in words. */
export interface GoalWords {
  name: string;
  asked: string;
  reached: string;
  /** The one thing to change for whoever missed it. */
  advice: string;
}

type Words<G> = (goal: G, value: number, units: Units) => GoalWords;
type Of<K extends RetrieveGoal['kind']> = Extract<RetrieveGoal, { kind: K }>;

const WORDS: { [K in RetrieveGoal['kind']]: Words<Of<K>> } = {
  pace: ({ m_s }, value, units) => ({
    name: 'Pace',
    asked: `${formatSpeed(m_s[0], units)} to ${formatSpeed(m_s[1], units)}`,
    reached: formatSpeed(value, units),
    advice: value > m_s[1] ? 'Go slower over the same way' : 'Go a little quicker'
  }),
  swim: ({ height_m, least }, value, units) => ({
    name: 'Height of the swim',
    asked: `${formatShare(least)} of its way between ${formatLength(height_m[0], units)} and ${formatLength(height_m[1], units)} up`,
    reached: formatShare(value),
    advice: 'Reel evenly: faster lifts it, slower lets it sink'
  }),
  stayed: ({ most_m }, value, units) => ({
    name: 'Stayed',
    asked: `within ${formatLength(most_m, units)}`,
    reached: formatLength(value, units),
    advice: 'Move the slack of the line, and stop before you feel the weight'
  }),
  twitches: ({ count }, value) => ({
    name: 'Twitches',
    asked: `${count} or more`,
    reached: `${value}`,
    advice:
      value === 0 ? 'Twitch the tip, and give the line back each time' : 'Twitch it more often'
  }),
  rests: ({ count, least_s }, value) => ({
    name: 'Rests',
    asked: `${count} of ${formatTime(least_s)} or longer`,
    reached: `${value}`,
    advice: 'Let it lie longer between your moves'
  }),
  rhythm: ({ even }, value) => ({
    name: 'Rhythm',
    asked: even ? 'even' : 'uneven',
    reached: value === 0 ? 'too few hops to tell' : `longest gap ${value.toFixed(1)} × shortest`,
    advice: even
      ? 'Count the same between all hops'
      : 'Wait longer before one hop than before the next'
  }),
  bottom_first: ({ within_s }, value) => ({
    name: 'Wait for the bottom',
    asked: `moved within ${formatTime(within_s)} of the touch, not before`,
    reached: `${formatTime(Math.abs(value))} ${value < 0 ? 'before' : 'after'}`,
    advice:
      value < 0
        ? 'Wait until the line goes slack: it was still falling'
        : 'Watch for the line to go slack, then begin'
  }),
  tight: ({ least_N }, value, units) => ({
    name: 'Line at the end',
    asked: `pulls ${formatPull(least_N, units)} or more`,
    reached: formatPull(value, units),
    advice: 'Reel in the slack that your rod has made'
  }),
  swing: ({ most_m }, value, units) => ({
    name: 'Swing of the fall',
    asked: `at most ${formatLength(most_m, units)} towards you`,
    reached: formatLength(value, units),
    advice: 'Give it line as it falls: lower the rod with it'
  }),
  freed: (_, value) => ({
    name: 'Snag',
    asked: 'freed, hook not driven home',
    reached: value === 0 ? 'not freed' : value < 1 ? 'freed, but driven home first' : 'freed',
    advice: 'Stop pulling: give slack, then shake it, and try from another angle'
  }),
  strike: ({ within_s }, value) => ({
    name: 'Strike',
    asked: `firm, within ${formatTime(within_s)} of the bite`,
    reached: `${formatTime(Math.abs(value))} ${value < 0 ? 'before' : 'after'} it`,
    advice: value < 0 ? 'Wait for the bite' : 'Sweep firmly as soon as the line tells you'
  })
};

export function wordsOf(goal: RetrieveGoal, value: number, units: Units): GoalWords {
  return (WORDS[goal.kind] as Words<RetrieveGoal>)(goal, value, units);
}
