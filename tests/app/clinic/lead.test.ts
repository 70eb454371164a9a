import { describe, expect, test } from 'vitest';
import { handsTyped } from '../../../src/lib/app/clinic/lead/hands';
import { stepOfKey, stepsOf } from '../../../src/lib/app/clinic/lead/lead';
import { adviceAfter, isHelped, newRoom, nextState } from '../../../src/lib/server/clinic-flow';

const asked = {
  ...{ kind: 'predict' as const, about: '', ask: '', options: [] },
  ...{ asks: null, watch: null, item: null }
};

describe('a clicker that only goes forward', () => {
  const plan = [
    { kind: 'talk' as const, title: 'Before we start', says: [], minutes: 2 },
    { kind: 'predict' as const, lesson: 'one-foot', section: 0, minutes: 6 },
    { kind: 'talk' as const, title: 'Before you go', says: [], minutes: 2 }
  ];

  /** Presses until the next round, the room voting so each time; what was done, in order. */
  function pressed(votes: Record<string, number>[], hasHint = true): string[] {
    const now = '2031-05-01T08:00:00.000Z';
    let state = nextState(newRoom({ name: '', plan }), { do: 'go', to: 1 }, now);
    const done: string[] = [];
    while (state.at === 1 && done.length < 20) {
      const counts = votes[Math.min(state.ballot, votes.length) - 1];
      const advice =
        state.phase === 'open' ? null : adviceAfter(counts, 'right', state.given, hasHint);
      const { at, phase, isOver } = state;
      const led = {
        at,
        of: plan.length,
        phase,
        isOver,
        shown: asked,
        advice,
        hasHint,
        replay: null
      };
      const steps = stepsOf({ ...led, isHelped: isHelped(state) });
      const key = { key: 'PageDown', repeat: false, ctrlKey: false };
      const step = stepOfKey({ ...key, altKey: false, metaKey: false, shiftKey: false }, steps);
      if (!step) return [...done, 'stuck'];
      done.push(step.action.do);
      state = nextState(state, step.action, now);
    }
    return done;
  }

  test('after a hint with all right goes on', () => {
    expect(pressed([{ wrong: 9, right: 1 }, { right: 10 }])).toEqual([
      'hold',
      'hint',
      'again',
      'hold',
      'reveal',
      'go'
    ]);
  });

  test('in a room that never gets it has each help once and comes to an end', () => {
    expect(pressed([{ wrong: 10 }])).toEqual([
      'hold',
      'hint',
      'again',
      'hold',
      'talk',
      'again',
      'hold',
      'reveal',
      'go'
    ]);
    expect(pressed([{ wrong: 10 }], false)).toEqual([
      'hold',
      'talk',
      'again',
      'hold',
      'reveal',
      'go'
    ]);
  });
});

test.each([
  ['', { count: 0 }],
  [' 12 ', { count: 12 }],
  ['5.5', { fault: 'Hands: type a whole number from 0 to 1000. “5.5” isn’t counted.' }],
  ['1001', { fault: 'Hands: type a whole number from 0 to 1000. “1001” isn’t counted.' }],
  ['many', { fault: 'Hands: type a whole number from 0 to 1000. “many” isn’t counted.' }]
])('hands typed as “%s” are counted or said to be wrong', (typed, read) => {
  expect(handsTyped(typed)).toEqual(read);
});
