import { describe, expect, test } from 'vitest';
import { allLessons, loadLessons } from '../../../src/lib/course';
import {
  CHECKED_SEEDS,
  itemOf,
  OBJECTIVES,
  questionsAbout,
  SOURCES
} from '../../../src/lib/course/items';
import { parseSetup } from '../../../src/lib/model';
import { keptGuess, parseAssignment } from '../../../src/lib/practice';
import { MOST } from '../../../src/lib/wire';
import {
  draftedAssignment,
  chosenIn,
  askedCountOf,
  draftFrom,
  firstDraft,
  titleFor
} from '../../../src/lib/app/homework/draft';
import { draftMinutes } from '../../../src/lib/app/homework/draft-minutes';
import { doubtsOf, doubtTexts, gearName } from '../../../src/lib/app/homework/doubts';
import { askedAbout, questionsLeft } from '../../../src/lib/app/homework/question-set';
import {
  answerText,
  guessText,
  rightText,
  triesText
} from '../../../src/lib/app/homework/report-text';
import { seededRandom } from '../../../src/lib/model';
import { drag } from '../../practice/drag';
import { tied } from '../../tied';

const named = () => 'The old rod';

function draftOfOneFoot() {
  const draft = firstDraft(loadLessons(), OBJECTIVES, { from: 'Reedmere Guiding' });
  const offer = draft.offers.find(({ id }) => id === 'one-foot');
  if (!offer) throw new Error('no lesson “one-foot”');
  return { draft, offer };
}

describe('a draft of homework', () => {
  test('offers every objective once, under the lesson that teaches it', () => {
    const { offers } = firstDraft(loadLessons(), OBJECTIVES);
    const offered = offers.flatMap(({ objectives }) => objectives.map(({ id }) => id));
    expect([...offered].sort()).toEqual(OBJECTIVES.map(({ id }) => id).sort());
  });

  test('of homework that was set before asks the same again, in the guide’s own gear', () => {
    const { draft, offer } = draftOfOneFoot();
    offer.isSet = true;
    offer.choices[0].isSet = true;
    const setup = parseSetup(offer.choices[1].challenge.setup);
    const own = { ...setup, water: { ...setup.water, depth_m: 6 } };
    Object.assign(offer.choices[1], { isSet: true, setup: own });
    offer.objectives[0].isSet = true;
    Object.assign(draft, { title: 'Before Saturday', note: 'Slowly.', tries: 3, phase: 'seen' });
    const set = draftedAssignment(draft, '0a1b2c3d');
    expect(parseAssignment(set).challenges[1].setup).toMatchObject({ water: { depth_m: 6 } });
    const again = draftFrom(set, loadLessons(), OBJECTIVES, '');
    expect(draftedAssignment(again, '0a1b2c3d')).toEqual(set);
  });

  test('says how long it takes in all', () => {
    const { draft, offer } = draftOfOneFoot();
    expect(draftMinutes(draft)).toBe(0);
    offer.isSet = true;
    offer.choices[0].isSet = true;
    Object.assign(draft, { tries: 10 });
    // Six tenths of a minute a try (design.ts).
    expect(draftMinutes(draft)).toBeCloseTo(offer.minutes + 6, 9);
  });

  test('becomes an assignment that is read as it is', () => {
    const { draft, offer } = draftOfOneFoot();
    offer.isSet = true;
    for (const choice of offer.choices.slice(0, 2)) choice.isSet = true;
    offer.objectives[0].isSet = true;
    Object.assign(draft, { title: ' ', tries: null, questions: 99 });
    expect(askedCountOf(offer)).toBe(4);
    const assignment = draftedAssignment(draft, 'abcd');
    expect(parseAssignment(assignment)).toEqual(assignment);
    expect(assignment).toMatchObject({
      ...{ title: 'One foot and 3 more', from: 'Reedmere Guiding', lessons: ['one-foot'] },
      ...{ objectives: ['one-foot'], tries: 1, questions: MOST.questions, due: null }
    });
    expect(assignment.challenges).toEqual(chosenIn(draft).map(({ challenge }) => challenge));
  });

  test('is called by what it asks as long as nobody names it', () => {
    const { draft, offer } = draftOfOneFoot();
    expect(titleFor(draft)).toBe('Homework');
    offer.choices[0].isSet = true;
    expect(titleFor(draft)).toBe('Drag it one foot');
    offer.objectives[0].isSet = true;
    expect(titleFor(draft)).toBe('Drag it one foot and 1 more');
    expect(draftedAssignment({ ...draft, title: ' My own ' }, 'abcd').title).toBe('My own');
  });

  test('begins with a day and with the challenge that a link names, or with none', () => {
    const begin = (challenge: string) => {
      const draft = firstDraft(loadLessons(), OBJECTIVES, { due: '2031-05-09', challenge });
      return { due: draft.due, ids: chosenIn(draft).map((one) => one.challenge.id) };
    };
    expect(begin('one-hop')).toEqual({ due: '2031-05-09', ids: ['one-hop'] });
    expect(begin('no-such')).toEqual({ due: '2031-05-09', ids: [] });
  });

  test('gives a challenge in other gear an id of its own, and leaves the others as they are', () => {
    const { draft, offer } = draftOfOneFoot();
    const [own, other] = offer.choices;
    own.isSet = other.isSet = true;
    const setup = parseSetup(own.challenge.setup);
    own.setup = { ...setup, water: { ...setup.water, depth_m: 7 } };
    const { challenges } = draftedAssignment(draft, 'abcd');
    expect(challenges[0].id).toBe(`${own.challenge.id}-abcd`);
    expect(challenges[0].setup.water.depth_m).toBe(7);
    expect(challenges[1]).toEqual(other.challenge);
  });

  test('names what cannot be done in the gear that was chosen', async () => {
    const { draft, offer } = draftOfOneFoot();
    const [own] = offer.choices;
    own.isSet = true;
    expect(await doubtsOf(draft, named)).toEqual([]);
    const setup = parseSetup(own.challenge.setup);
    for (const slack_m of [3, 9]) {
      own.setup = { ...setup, start: { ...setup.start, slack_m } };
      expect(await doubtsOf(draft, named), `${slack_m} m of slack`).toEqual([
        { title: own.challenge.title, gear: 'The old rod', kind: 'impossible' }
      ]);
    }
  });
});

describe('a challenge of several moves in another gear', () => {
  function reelIn(depth_m: number, slack_m: number) {
    const draft = firstDraft(loadLessons(), OBJECTIVES);
    const choices = draft.offers.flatMap((offer) => offer.choices);
    const own = choices.find(({ challenge }) => challenge.id === 'reel-takes-slack');
    if (!own) throw new Error('no challenge “reel-takes-slack”');
    const setup = parseSetup(own.challenge.setup);
    own.isSet = true;
    own.setup = {
      ...setup,
      water: { ...setup.water, depth_m },
      start: { ...setup.start, slack_m }
    };
    return doubtsOf(draft, named);
  }

  test('is doubted by nobody where the lesson’s own moves do it', async () => {
    expect(await reelIn(6, 0.03)).toEqual([]);
  });

  test('is never called impossible, only not known', async () => {
    const doubts = await reelIn(3.35, 2);
    expect(doubts).toEqual([
      { title: 'The reel takes the slack', gear: 'The old rod', kind: 'unknown' }
    ]);
    const [text, ...others] = doubtTexts(doubts);
    expect(text).toMatch(
      /^The old rod: the lesson’s own moves don’t do “The reel takes the slack” there/
    );
    expect(others).toEqual([]);
  });
});

describe('doubts about gear', () => {
  test('name each gear once, with all that it cannot do', () => {
    const of = (title: string, gear: string) => ({ title, gear, kind: 'impossible' as const });
    const said = doubtTexts([
      of('One foot', 'Pike rod'),
      of('Slack', 'Fly rod'),
      of('Hops', 'Pike rod')
    ]);
    expect(said.map((text) => text.split('.')[0])).toEqual([
      'Pike rod: no single rod move does “One foot”, “Hops”',
      'Fly rod: no single rod move does “Slack”'
    ]);
  });

  test('call gear that has no name by its weight and water', () => {
    const { offer } = draftOfOneFoot();
    const setup = parseSetup(offer.choices[0].challenge.setup);
    expect(gearName(setup, [], 'imperial')).toMatch(/oz in 10\sft of water$/);
  });
});

describe('questions left about an objective', () => {
  const left = (answers: { item: string; seed: number }[], of: number) =>
    questionsLeft('one-foot', answers, of, seededRandom(3));

  test('are as many as were asked less those answered, other objectives’ aside', () => {
    const answers = [
      { item: 'mark-drag', seed: 4 },
      { item: 'mark-fall', seed: 4 }
    ];
    expect(askedAbout('one-foot', answers)).toEqual([answers[0]]);
    expect(left(answers, 3).set.items).toHaveLength(2);
    expect(left(answers, 1).set.items).toEqual([]);
  });

  test('go once through all there is to ask before a generated one comes again', () => {
    const own = SOURCES.filter(({ objective }) => objective === 'one-foot');
    const things = new Set(own.map(({ thing }) => thing));
    const drawn = left([], MOST.questions).set.items;
    expect(new Set(drawn.slice(0, things.size).map(({ thing }) => thing))).toEqual(things);
    expect(drawn.slice(things.size).every(({ isGenerated }) => isGenerated)).toBe(true);
    const rest = left([{ item: own[0].item, seed: 1 }], things.size).set.items;
    expect(rest.map(({ item }) => item)).not.toContain(own[0].item);
  });

  test.each(OBJECTIVES)('hold no question twice and no twins: $id', ({ id }) => {
    const { items } = questionsLeft(id, [], MOST.questions, seededRandom(5)).set;
    expect(items).toHaveLength(questionsAbout(id, MOST.questions));
    const alike = items.filter((one, i) =>
      items.slice(0, i).some(({ item, thing }) => {
        return thing === one.thing && (item !== one.item || !one.isGenerated);
      })
    );
    expect(alike).toEqual([]);
  });

  test('the season map is offered with its challenges and questions', () => {
    const map = firstDraft(allLessons(), OBJECTIVES).offers.find(({ id }) => id === 'season-map');
    expect(map?.choices.length).toBeGreaterThan(0);
    expect(map?.objectives).toHaveLength(1);
  });

  test('never come from the same seed twice, and from none that was not checked', () => {
    const answers = Array.from({ length: 9 }, (_, i) => ({ item: 'mark-drag', seed: 2 * i + 1 }));
    const { nextSeed } = left(answers, MOST.questions);
    const seeds = Array.from({ length: CHECKED_SEEDS.length - answers.length }, nextSeed);
    const all = [...seeds, ...answers.map(({ seed }) => seed)].sort((a, b) => a - b);
    expect(all).toEqual(CHECKED_SEEDS);
  });

  test('are enough for the most that a homework may ask, and go on when all seeds are used', () => {
    expect(CHECKED_SEEDS.length).toBeGreaterThanOrEqual(MOST.questions);
    expect(CHECKED_SEEDS.at(-1)).toBeLessThanOrEqual(MOST.seed);
    const all = CHECKED_SEEDS.map((seed) => ({ item: 'mark-drag', seed }));
    expect(CHECKED_SEEDS).toContain(left(all, all.length + 1).nextSeed());
  });
});

describe('what the guide reads', () => {
  test('of a guess, by what was asked', () => {
    expect(guessText({ guess_m: 0.3048 }, drag, 'imperial')).toBe(tied('1~ft'));
    const whole = keptGuess({ kind: 'travel', travel_m: 0.3048, lifted: false });
    expect(guessText(whole, drag, 'imperial')).toBe(tied('1~ft, stayed down'));
    expect(guessText({ guess_down: false }, drag, 'imperial')).toBe('still falling');
    expect(guessText({}, drag, 'imperial')).toBe('');
  });

  test('of tries, also of more than were asked', () => {
    expect(triesText(2, 8)).toBe('2 of 8 tries');
    expect(triesText(9, 8)).toBe('9 tries, 8 asked for');
  });

  test('of an answer, in the question’s own words', () => {
    const { answer } = itemOf('mood', 1);
    if (answer.form !== 'choose') throw new Error(answer.form);
    expect(answerText(answer, answer.key, 'metric')).toBe(
      answer.options.find(({ id }) => id === answer.key)?.says
    );
    const order = itemOf('order-paces', 1).answer;
    if (order.form !== 'order') throw new Error(order.form);
    expect(answerText(order, order.key, 'metric').split(', then ')).toHaveLength(order.key.length);
    const mark = itemOf('mark-drag', 1).answer;
    expect(answerText(mark, 0.5, 'metric')).toBe(tied('50~cm'));
  });

  test.each([
    [[0, 0, 0], 'None of 4 answered yet.'],
    [[2, 0, 3], '2 of 3 right; 4 were asked.'],
    [[4, 1, 4], '4 of 4 right, 1 by a guess.']
  ] as const)('of answers: %o', ([right, guessed, answered], says) => {
    expect(rightText({ right, guessed, answered }, 4)).toBe(says);
  });
});
