import { describe, expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../../src/lib/course';
import { parseScenario, simulateScenario } from '../../../src/lib/model';
import { mergeRecords } from '../../../src/lib/practice';
import { emptyRecord, type HomeView, type RoomState } from '../../../src/lib/wire';
import { figureScale, gradeRun, type Challenge } from '../../../src/lib/scoring';
import { besideReference } from '../../../src/lib/app/clinic/beside';
import { BIAS_LAYOUTS, biasRows } from '../../../src/lib/app/clinic/bias-plot';
import { foretold } from '../../../src/lib/app/clinic/foretold';
import { shared } from '../../../src/lib/app/clinic/follow';
import { homeLink, readHomeLink } from '../../../src/lib/app/clinic/home/home-link';
import { countsOf, homeRecord, newIn } from '../../../src/lib/app/clinic/home/take-home';
import { clock, nextWords, splitWords, turnoutWords } from '../../../src/lib/app/clinic/words';
import { revealedIn } from '../../../src/lib/app/clinic/revealed-answer';
import { Steps } from '../../../src/lib/app/clinic/step-top';
import { typedCode } from '../../../src/lib/app/clinic/typed-code';
import { stepOfKey, stepsOf } from '../../../src/lib/app/clinic/lead/lead';
import { asSentence, partText, votesText } from '../../../src/lib/app/clinic/votes';
import { evenHand } from '../../server/samples';
import { tied } from '../../tied';

const asked = {
  kind: 'predict' as const,
  about: '',
  ask: '',
  options: [],
  asks: null,
  watch: null,
  item: null
};
const held = {
  at: 1,
  of: 5,
  phase: 'held' as const,
  isOver: false,
  shown: asked,
  aid: null,
  isHelped: false,
  advice: null,
  hasHint: true,
  replay: null
};
const mainOf = (view: Parameters<typeof stepsOf>[0]) =>
  stepsOf(view).flatMap(({ says, isMain }) => (isMain ? [says] : []));

test('what an option has is a count in a small room, and a share in a full one', () => {
  expect([partText(2, 3), partText(0, 9), partText(8, 10)]).toEqual(['2 of 3', '0 of 9', '80%']);
});

describe('what the instructor is led to', () => {
  test.each([
    ['teach', 'Give the hint'],
    ['discuss', 'Two minutes to talk'],
    ['explain', 'Reveal the answer'],
    ['explain slowly', 'Reveal the answer'],
    [null, 'Reveal the answer']
  ] as const)('after a vote that calls for %s is “%s”, and the others stay', (advice, main) => {
    const view = { ...held, advice };
    expect(mainOf(view)).toEqual([main]);
    const all = stepsOf(view).map(({ says }) => says);
    expect(all).toEqual([
      'Previous round',
      'Give the hint',
      'Two minutes to talk',
      'Reveal the answer',
      'Vote again',
      'Skip this round'
    ]);
  });

  test('after hint or talk is another vote, and after the reveal the next round', () => {
    expect(mainOf({ ...held, advice: 'teach', isHelped: true })).toEqual(['Vote again']);
    expect(mainOf({ ...held, advice: 'discuss', isHelped: true })).toEqual(['Vote again']);
    expect(mainOf({ ...held, phase: 'revealed' })).toEqual(['Next round']);
    expect(mainOf({ ...held, at: 4, phase: 'revealed' })).toEqual(['End the clinic']);
  });
});

test.each(['m2g99y', 'M2G 99Y', ' M2G-99Y ', 'm2g\u00a099y-'])(
  'the code “%s” is M2G99Y',
  (typed) => {
    expect(typedCode(typed)).toBe('M2G99Y');
  }
);

describe('a presenter’s clicker', () => {
  const free = { repeat: false, ctrlKey: false, altKey: false, metaKey: false, shiftKey: false };
  const doneBy = (key: string, view: Parameters<typeof stepsOf>[0], more = {}) =>
    stepOfKey({ key, ...free, ...more }, stepsOf(view))?.says;

  test('does the advised step forward, and goes to the round before backward', () => {
    expect(doneBy('PageDown', { ...held, advice: 'teach' })).toBe('Give the hint');
    expect(doneBy('ArrowRight', { ...held, phase: 'revealed' })).toBe('Next round');
    expect(doneBy('PageUp', held)).toBe('Previous round');
    expect(doneBy('PageUp', { ...held, at: 0 })).toBeUndefined();
  });

  test('never ends a clinic, and nothing else is a clicker', () => {
    expect(doneBy('PageDown', { ...held, at: 4, phase: 'revealed' })).toBeUndefined();
    expect(doneBy('PageDown', { ...held, isOver: true })).toBeUndefined();
    expect(doneBy('PageDown', held, { repeat: true })).toBeUndefined();
    expect(doneBy('ArrowRight', held, { altKey: true })).toBeUndefined();
    expect(doneBy('a', held)).toBeUndefined();
  });
});

test('the summary tells one vote, and how it went on to the next', () => {
  const first = { ballot: 1, share: 1 / 3, of: 3, hands: 0 };
  expect(votesText([first])).toBe(tied('1 of 3 had it.'));
  const text = '1 of 3 had it at first, 1 of 3 in the second vote.';
  expect(votesText([first, { ...first, ballot: 2 }])).toBe(tied(text));
  expect(
    votesText([
      { ...first, hands: 2 },
      { ...first, ballot: 2 }
    ])
  ).toBe(tied(`${text} Hands were counted in the first vote only.`));
  expect(votesText([{ ...first, share: 0.25, of: 12 }])).toBe(tied('3 of 12 had it (25%).'));
  expect(asSentence('tip 2 ft to the side')).toBe('Tip 2 ft to the side.');
});

test('a later vote is told with how many were in it, and whether hands were', () => {
  const first = { counts: { a: 2, b: 7 }, hasHandsAlone: true };
  expect(turnoutWords(first, { a: 2 })).toBe(
    '9 voted first, 2 in this vote. Hands from the first vote aren’t in it.'
  );
  expect(turnoutWords({ ...first, hasHandsAlone: false }, { a: 2 })).not.toMatch(/hands/i);
});

test('a step begins at its top when it follows another, not when it is the first seen', () => {
  const steps = new Steps();
  const seen = [null, '0.1', '0.1', '1.1', null, '1.1', '1.2'].map((step) => steps.isNext(step));
  expect(seen).toEqual([false, false, false, true, false, false, true]);
});

test('what is advised on the projected screen is something to do, and no result of the vote', () => {
  for (const advice of ['teach', 'discuss', 'explain', 'explain slowly'] as const) {
    const says = nextWords({ ...held, advice });
    expect(says).toMatch(/^Next: /);
    expect(says).not.toMatch(/most|few|divided|half|right|wrong|have it/i);
  }
});

test('who leads alone is told what comes next, without any vote and after help, too', () => {
  expect(nextWords(held)).toBe('No votes yet. Next: count hands, or reveal it.');
  expect(nextWords({ ...held, isHelped: true, advice: 'teach' })).toBe('Next: vote again.');
  expect(nextWords({ ...held, phase: 'open' })).toBe('');
  expect(nextWords({ ...held, isOver: true })).toBe('');
});

describe('the plot of the room’s hand', () => {
  const scale = (kind: string) => {
    const id = kind === 'far' ? 'exactly-one-foot' : 'one-hop';
    return figureScale(findChallenge(id, loadLessons()) as Challenge);
  };
  const hand = {
    title: 'One foot',
    ballot: 1,
    again: false,
    scale: scale('far'),
    tries: 9,
    few: [],
    right: 2
  };
  const rows = biasRows(
    [
      { ...hand, mean: 0.5, spread: 0.1 },
      { ...hand, again: true, mean: 0.28, spread: 0.04 },
      { ...hand, title: 'One hop', scale: scale('high'), mean: 0.3, spread: 0.05 }
    ],
    'metric'
  );

  test('has the rounds of one task to one scale, and each in its own figure', () => {
    const perMetre = (rows[0].marks[0] - rows[1].marks[0]) / (0.5 - 0.28);
    const { from, to } = rows[0].spread ?? { from: 0, to: 0 };
    expect((to - from) / 0.2).toBeCloseTo(perMetre, 9);
    expect(rows[0].ticks).toEqual(rows[1].ticks);
    expect(rows.map(({ title, of, said }) => [title, of, said])).toEqual(
      [
        ['One foot', 'How far the jig went, asked 25~cm to 35~cm', '50~cm, too far'],
        ['One foot, once more', 'How far the jig went, asked 25~cm to 35~cm', '28~cm, as asked'],
        ['One hop', 'How high it hopped, asked 8~cm to 20~cm', '30~cm, too high']
      ].map((row) => row.map(tied))
    );
  });

  test('keeps every whisker on the drawing', () => {
    for (const { spread } of rows) {
      expect(spread?.from).toBeGreaterThan(0);
      expect(spread?.to).toBeLessThan(BIAS_LAYOUTS.wide.width);
    }
  });
});

test('a try beside the reference is run in the same water, and the reference passes', () => {
  const challenge = findChallenge('exactly-one-foot', loadLessons()) as Challenge;
  const [made, reference] = besideReference(challenge, evenHand(challenge, 20, 3));
  expect(made.setup).toEqual(reference.setup);
  const { setup, move, hold_s } = reference;
  const result = simulateScenario(parseScenario({ ...setup, move, hold_s }));
  expect(gradeRun(challenge, { move, result }).passed).toBe(true);
});

describe('what a phone foretold', () => {
  const asks = { lesson: 'one-foot', station: 'predict' };
  const view = {
    name: '',
    part: '1.1',
    at: 1,
    of: 5,
    phase: 'open' as RoomState['phase'],
    ballot: 1,
    isOver: false,
    shown: { ...asked, asks },
    aid: null,
    hint: null,
    revealed: null
  };
  const next = { ...view, at: 2, part: '2.1', shown: { ...asked, kind: 'ask' as const } };
  const votes = { '1.1': 'half', '1.2': 'same' };
  const made = [{ ...asks, option: 'half' }];

  test('is kept when it can be changed no more: held, left, or voted on again', () => {
    expect(foretold(view, { ...view, phase: 'held' }, votes)).toEqual(made);
    expect(foretold(view, next, votes)).toEqual(made);
    expect(foretold(null, { ...view, ballot: 2 }, votes)).toEqual(made);
    expect(foretold(view, { ...view, isOver: true }, votes)).toEqual(made);
  });

  test('is nothing yet while the vote is open, nor of a question that no lesson asks', () => {
    expect(foretold(view, view, votes)).toEqual([]);
    expect(foretold(view, next, {})).toEqual([]);
    expect(foretold(next, { ...next, phase: 'held' }, { '2.1': 'a' })).toEqual([]);
  });
});

test('of an answer is told what was voted before any help, once it is revealed', () => {
  const item = { source: 'ruler-bias', seed: 3 };
  const revealed = { key: 'b', replies: {}, explain: null, measured: null, run: null };
  const view = {
    ...held,
    name: '',
    part: '1.2',
    ballot: 2,
    hint: null,
    shown: {
      ...asked,
      kind: 'ask' as const,
      about: 'Two lie there.',
      ask: 'Which?',
      options: [{ id: 'a', says: 'the near one' }],
      item
    }
  };
  const votes = { '1.1': 'a', '1.2': 'b' };
  expect(revealedIn({ ...view, revealed: null }, votes, 'now')).toBeNull();
  expect(revealedIn({ ...view, revealed }, { '1.2': 'b' }, 'now')).toBeNull();
  expect(revealedIn({ ...view, revealed }, votes, 'now')).toMatchObject({
    ask: 'Two lie there. Which?',
    said: 'the near one',
    made: { round: 1, item: 'ruler-bias', seed: 3, given: 'a', right: false, at: 'now' }
  });
});

const link = `AYXW6C-${'t'.repeat(32)}`;

test('the link home brings how answers were come by, and the server is not told', () => {
  const place = { code: 'AYXW6C', token: 't'.repeat(32) };
  const reports = { 2: 'knew', 7: 'worked out', 12: 'guessed' } as const;
  expect(homeLink(place)).toBe(link);
  expect(readHomeLink(homeLink({ ...place, reports }))).toEqual({ link, reports });
  expect(readHomeLink(`${link}.3x`)).toEqual({ link, reports: {} });
});

test('what comes home twice changes nothing', () => {
  const at = '2031-05-01T08:00:00.000Z';
  const input = evenHand(findChallenge('exactly-one-foot', loadLessons()) as Challenge, 20, 1);
  const answer = { item: 'ruler-bias', seed: 3, given: 'a', right: true, model: '1', at };
  const made: HomeView = {
    held: '2031-05-01',
    tries: [{ id: 't'.repeat(16), challenge: 'exactly-one-foot', input, model: '1', at }],
    predictions: [{ lesson: 'one-foot', station: 'predict', option: 'same', at }],
    answers: [
      { ...answer, round: 2 },
      { ...answer, round: 7 }
    ],
    asked: []
  };
  const home = homeRecord(made, `${link}.7g`, at);
  expect(home.setAside).toEqual([]);
  expect(home.answers).toEqual([{ ...answer, id: 'clinic-AYXW6C-7', report: 'guessed' }]);
  expect(countsOf(home)).toBe('1 answer said beforehand, 1 question answered and 1 try');
  expect(countsOf(homeRecord({ ...made, predictions: [] }, link, at))).toBe('1 try');
  expect(newIn(emptyRecord(), home)).toBe(3);
  const mine = mergeRecords(emptyRecord(), home);
  expect(newIn(mine, home)).toBe(0);
  expect(mergeRecords(mine, home)).toEqual(mine);
});

test('a view that says the same in part keeps that part', () => {
  const before = { shown: { kind: 'try' }, answered: 1 };
  const next = shared(before, { shown: { kind: 'try' }, answered: 2 });
  expect(next).toEqual({ shown: { kind: 'try' }, answered: 2 });
  expect(next.shown).toBe(before.shown);
});

test('a clock is read in minutes and seconds', () => {
  expect([clock(120), clock(5)]).toEqual(['2:00', '0:05']);
});

test('who leads is told how a closed vote was split, by letters', () => {
  const options = ['half', 'same', 'twice'].map((id) => ({ id, says: id }));
  const view = { ...held, shown: { ...asked, options }, split: { half: 2, twice: 3 } };
  expect(splitWords(view)).toBe('A 2, B 0, C 3');
  expect(splitWords({ ...view, phase: 'revealed' })).toBe('');
  expect(splitWords({ ...view, split: null })).toBe('');
});
