import { describe, expect, test } from 'vitest';
import {
  homeworkText,
  inOrder,
  pageOf,
  partsText,
  sayFirst
} from '../../../src/lib/app/guide/clients';
import { isNamed, sharedNames } from '../../../src/lib/app/guide/find';
import { optionsFor } from '../../../src/lib/app/guide/picker';
import { sampleChallenge } from '../../server/samples';

const client = (nickname: string, done: number) => {
  const joined_at = '2031-05-01T08:00:00.000Z';
  return {
    id: nickname,
    nickname,
    joined_at,
    done,
    parts: 3,
    hasBegun: true,
    counts: [],
    word: null
  };
};
const levelOf = (miss: number) => ({
  ...{ value: 0.4, band: 0.01, sd: 0.02, off: 0.1, miss, tries: 5, less: 0, more: 5 },
  advice: 'lower' as const
});
const { goals } = sampleChallenge;
const challenge = (id: string, level: ReturnType<typeof levelOf> | null) => ({
  ...{ id, title: id, tries: 5, passed: 0, few: [], contact: 1, isDone: false, goals, level }
});
const about = (objective: string, right: number, backTo: string | null) => ({
  ...{ objective, asked: 4, right, guessed: 0, answered: 4, isDone: true, backTo }
});

/** A client who came on the first of May, at that hour here. */
const joined = (id: string, nickname: string, hour: number) => {
  return { id, nickname, joined_at: new Date(2031, 4, 1, hour, 5).toISOString() };
};

test('who is not done comes first, then by name', () => {
  const all = [client('Bo', 3), client('Wim', 2), client('Ada', 3), client('Ina', 0)];
  const names = (typed: string) => inOrder(all, typed).map((one) => one.nickname);
  expect(names('')).toEqual(['Ina', 'Wim', 'Ada', 'Bo']);
  expect(names('i')).toEqual(['Ina', 'Wim']);
});

test.each([
  ['Wim from the jetty', 'jet wi', true],
  ['Inès', 'INES', true],
  ['Ina', '  ', true],
  ['Ina', 'inx', false]
])('%s is named by “%s”: %s', (name, typed, isIt) => expect(isNamed(name, typed)).toBe(isIt));

describe('in short', () => {
  const one = {
    challenges: [challenge('a', levelOf(2)), challenge('b', levelOf(4))],
    objectives: [about('slack', 2, 'slack'), about('hops', 1, 'hops'), about('season', 4, null)]
  };

  test('the hand is spoken to where it misses most, the questions where least was right', () => {
    expect(sayFirst(one)).toMatchObject({ hand: { level: { miss: 4 } }, backTo: 'hops' });
    const nothing = { ...one, challenges: [challenge('c', null)], objectives: [] };
    expect(sayFirst(nothing)).toEqual({ hand: null, backTo: null });
  });

  test('what is done is counted by parts', () => {
    expect(partsText(client('Ina', 2))).toBe('2 of 3 parts done');
    expect(partsText(client('Ina', 0))).toBe('begun, no part done yet');
    expect(partsText(client('Bo', 3))).toBe('done');
    expect(partsText({ ...client('Wim', 0), hasBegun: false })).toBe('not begun');
  });
});

test('homework in the list says how many are done', () => {
  const one = { clients: 3, done: 1, isClosed: false, due: '2031-05-09' };
  expect(homeworkText(one)).toBe('1 of 3 clients done, due May 9, 2031');
  expect(homeworkText({ ...one, clients: 1, isClosed: true, due: null })).toBe(
    '1 of 1 client done, closed'
  );
  expect(homeworkText({ ...one, clients: 0, done: 0, due: null })).toBe('no clients yet');
});

test('a page that is not there is the nearest that is', () => {
  const all = Array.from({ length: 130 }, (_, i) => i);
  expect(pageOf(all, 3)).toEqual({ page: 3, pages: 3, shown: all.slice(120) });
  expect([-1, 0, NaN, 1.5, 9].map((asked) => pageOf(all, asked).page)).toEqual([1, 1, 1, 1, 3]);
  expect(pageOf([], 2)).toEqual({ page: 1, pages: 1, shown: [] });
});

test('a client is found among those of all homework', () => {
  const groups = [
    { id: 'may', title: 'May', clients: [joined('1', 'Ina', 8)] },
    { id: 'june', title: 'June', clients: [joined('2', 'Bo', 8)] }
  ];
  expect(optionsFor(groups, '')).toHaveLength(2);
  expect(optionsFor(groups, 'bo')).toEqual([
    { title: 'June', options: [{ value: 'june.2', name: 'Bo' }] }
  ]);
});

test('two of one name are told apart by when they were first seen', () => {
  const clients = [joined('1', 'Ina', 8), joined('2', 'ina', 17), joined('3', 'Bo', 9)];
  expect([...sharedNames(clients)]).toEqual(['Ina', 'ina']);
  const [{ options }] = optionsFor([{ id: 'may', title: 'May', clients }], '');
  expect(options.map(({ name }) => name)).toEqual([
    'Ina, first seen May 1, 2031, 8:05 am',
    'ina, first seen May 1, 2031, 5:05 pm',
    'Bo'
  ]);
});
