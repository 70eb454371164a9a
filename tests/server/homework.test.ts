import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { SOURCES } from '../../src/lib/course/items';
import { CALL_MARKS, gradeTry } from '../../src/lib/scoring';
import {
  assignmentOf,
  createAssignment,
  extend,
  replaceTask,
  setClosed,
  type Homework
} from '../../src/lib/server/assignments';
import { enter, forgetClient } from '../../src/lib/server/clients';
import { takeSent } from '../../src/lib/server/homework';
import { partsOf } from '../../src/lib/app/homework/parts';
import { clientProgressOf } from '../../src/lib/server/progress';
import { standingsOf } from '../../src/lib/server/standing';
import { createSpace, guideOf, startSession, type Guide } from '../../src/lib/server/spaces';
import { openStore, type Store } from '../../src/lib/server/store';
import { newToken } from '../../src/lib/server/token';
import { answered, evenHand, sampleChallenge, sampleTask, SENT_AT as NOW, tried } from './samples';
import { sqlite } from './stores';

let server: Awaited<ReturnType<typeof sqlite.start>>;
let store: Store;
let guide: Guide;
let homework: Homework;
const phone = newToken();

beforeEach(async () => {
  server = await sqlite.start();
  store = await openStore(await server.fresh());
  const cookie = await startSession(store.db, await createSpace(store.db, 'Reed', NOW), NOW);
  guide = (await guideOf(store.db, cookie, NOW)) as Guide;
  const id = await createAssignment(store.db, guide, sampleTask, NOW);
  homework = (await assignmentOf(store.db, guide, id)) as Homework;
});
afterEach(async () => {
  await store.close();
  await server.stop();
});

const send = (sent: Parameters<typeof takeSent>[3]) =>
  takeSent(store.db, homework.share, phone, sent, NOW, 'a home');
const enterAs = (name: string) => enter(store.db, homework.share, phone, name, NOW);
const again = async () => (await assignmentOf(store.db, guide, homework.id)) as Homework;

describe('homework', () => {
  test('is graded again here, and other marks than these are flagged', async () => {
    await enterAs('Ina');
    await send(tried('honest', 9));
    await send(tried('flattered', 30, 100));
    const [ina] = await clientProgressOf(store.db, homework);
    const graded = ina.challenges[0].tries.map((one) => one.graded);
    expect(graded.map(({ agrees }) => agrees).sort()).toEqual([false, true]);
    // What a guide reads of it was said by the run that graded it, in both units.
    for (const { says } of graded) {
      expect(says?.imperial).toMatch(/\d\u00a0(in|ft)/);
      expect(says?.metric).toMatch(/\d\u00a0c?m/);
    }
    expect(ina.disagreements).toBe(1);
    expect(graded.find(({ agrees }) => !agrees)?.marks).toBe(
      gradeTry(sampleChallenge, evenHand(sampleChallenge, 30, 3)).grade.marks
    );
  });

  test('is marked with what was called of it, as on the phone', async () => {
    await enterAs('Ina');
    const move = tried('blind', 9);
    const marks = move.marks - CALL_MARKS;
    await send({ ...move, guess_m: 9, marks });
    const [{ challenges }] = await clientProgressOf(store.db, homework);
    expect(challenges[0].tries[0].graded).toMatchObject({ marks, passed: false, agrees: true });
  });

  test('a phone that enters twice is one client, under its first name', async () => {
    const first = await enterAs('Ina');
    const second = await enterAs('Somebody else');
    expect(second.client).toEqual(first.client);
    expect(await clientProgressOf(store.db, homework)).toHaveLength(1);
  });

  test('is done when challenges have their tries, objectives their answers, lessons their end', async () => {
    await enterAs('Ina');
    const counted = async () => (await standingsOf(store.db, homework))[0];
    expect(await counted()).toMatchObject({ done: 0, parts: 3, hasBegun: false });
    for (const id of ['a', 'b', 'c']) await send(tried(id, 9));
    expect((await clientProgressOf(store.db, homework))[0]).toMatchObject({ isDone: false });
    expect(await counted()).toMatchObject({ done: 1, hasBegun: true });
    await send({ kind: 'finished', id: 'd'.repeat(16), lesson: 'one-foot', at: NOW });
    await send(answered('e', 'mood', true));
    expect((await clientProgressOf(store.db, homework))[0]).toMatchObject({ isDone: false });
    expect(await counted()).toMatchObject({ done: 2 });
    await send(answered('f', 'mood', false));
    expect((await clientProgressOf(store.db, homework))[0]).toMatchObject({ isDone: true });
    expect(await counted()).toMatchObject({ nickname: 'Ina', done: 3, parts: 3 });
  });

  test('takes a word to the guide and drags on the lawn where they are asked', async () => {
    await enterAs('Ina');
    const moved_m = [0.3, 0.41, 0.35, 0.38, 0.29, 0.33, 0.4, 0.36, 0.31, 0.37];
    const drags = { kind: 'lawn', id: 'l'.repeat(16), moved_m, at: NOW } as const;
    await expect(send(drags)).rejects.toThrow('lawn');
    await send({ kind: 'word', id: 'w'.repeat(16), text: 'My rod is 6 ft.', at: NOW });
    const task = { ...sampleTask, lawn: { meant_m: 0.3048 } };
    const id = await createAssignment(store.db, guide, task, NOW);
    const other = (await assignmentOf(store.db, guide, id)) as Homework;
    await enter(store.db, other.share, phone, 'Ina', NOW);
    await takeSent(store.db, other.share, phone, drags, NOW, 'a home');
    const [progress] = await clientProgressOf(store.db, other);
    expect(progress.lawn).toMatchObject({ meant_m: 0.3048, sets: [{ moved_m }] });
    const { counts } = (await standingsOf(store.db, other))[0];
    // The same order as on the phone, whose page and the guide's grid name the parts by it.
    expect(counts.map(({ of }) => of)).toEqual(partsOf(task, []).map(({ of }) => of));
    expect(counts.at(-1)).toEqual({
      made: 1,
      good: null,
      of: 1
    });
    expect((await standingsOf(store.db, homework))[0]).toMatchObject({
      word: 'My rod is 6 ft.',
      done: 0
    });
    expect((await clientProgressOf(store.db, homework))[0].words).toMatchObject([
      { text: 'My rod is 6 ft.' }
    ]);
  });

  test('counts what was passed and right, part by part, and takes no words for that', async () => {
    await enterAs('Ina');
    const both = [await send(tried('a', 9)), await send(tried('b', 30))];
    const passed = both.map((one) => 'reply' in one && JSON.parse(one.reply).passed);
    expect(passed).toEqual([true, false]);
    await send(answered('e', 'mood', true));
    await send(answered('f', 'mood', false));
    await send({ kind: 'word', id: 'w'.repeat(16), text: '"passed":true "right":true', at: NOW });
    const { counts } = (await standingsOf(store.db, homework))[0];
    expect(counts).toEqual([
      { made: 0, good: null, of: 1 },
      { made: 2, good: 1, endsWell: false, of: 3 },
      { made: 2, good: 1, of: 2 }
    ]);
    const later = NOW.replace('01T', '02T');
    await takeSent(store.db, homework.share, phone, tried('c', 9), later, 'a home');
    expect((await standingsOf(store.db, homework))[0].counts[1].endsWell).toBe(true);
  });

  test('of one client is read without the others', async () => {
    const { client } = await enterAs('Ina');
    await enter(store.db, homework.share, newToken(), 'Bo', NOW);
    const read = async (...only: string[]) =>
      (await clientProgressOf(store.db, homework, only)).map((one) => one.client.nickname);
    expect(await read(client.id)).toEqual(['Ina']);
    expect(await read('nobody')).toEqual([]);
  });

  test('has parts that no name confuses', () => {
    const lessons = loadLessons();
    const challenges = lessons.flatMap((lesson) => lesson.challenges);
    const names = [
      ...['word', 'lawn', 'log'],
      ...SOURCES.map(({ item }) => item),
      ...[...lessons, ...challenges].map(({ id }) => id)
    ];
    expect(new Set(names).size).toBe(names.length);
  });

  test('that is closed takes nothing new, yet answers again to what it has taken', async () => {
    await enterAs('Ina');
    const receipt = await send(tried('a', 9));
    await setClosed(store.db, guide, homework.id, NOW);
    await expect(send(tried('b', 9))).rejects.toMatchObject({ status: 410 });
    expect(await send(tried('a', 9))).toEqual({ ...receipt, kind: 'repeated' });
    await extend(store.db, guide, homework.id, '2031-06-01', NOW);
    expect(await send(tried('b', 9))).toMatchObject({ kind: 'accepted' });
    expect((await again()).task.due).toBe('2031-06-01');
  });

  test('is kept for long after its last day, unless that is centuries away', async () => {
    const keptUntil = async (due: string | null) => {
      await extend(store.db, guide, homework.id, due, NOW);
      return (await again()).keep_until.slice(0, 10);
    };
    for (const due of [null, '2031-05-01', '9999-12-31']) {
      expect(await keptUntil(due)).toBe('2031-07-30');
    }
    expect(await keptUntil('2031-05-09')).toBe('2031-08-07');
  });

  test.each([
    [
      'a challenge of another homework',
      () => ({ ...tried('a', 9), challenge: 'other' }),
      'challenge'
    ],
    [
      'a lesson that was not set',
      () => ({ kind: 'finished' as const, id: 'f'.repeat(16), lesson: 'other', at: NOW }),
      'lesson'
    ]
  ])('refuses %s', async (_what, sent, field) => {
    await enterAs('Ina');
    await expect(send(sent())).rejects.toThrow(new RegExp(`^${field}: is not part`));
  });

  test('takes nothing from a phone that has not entered, nor by a wrong link', async () => {
    await expect(send(tried('a', 9))).rejects.toMatchObject({ status: 403 });
    await expect(enter(store.db, newToken(), phone, 'Ina', NOW)).rejects.toMatchObject({
      status: 404
    });
  });

  test('forgets a client at once and wholly', async () => {
    const { client } = await enterAs('Ina');
    await send(tried('a', 9));
    await forgetClient(store.db, homework.id, client.id);
    expect(await clientProgressOf(store.db, homework)).toEqual([]);
    expect(await store.db.selectFrom('submissions').selectAll().execute()).toEqual([]);
  });
});

test('a last day that has passed everywhere is refused, when it is set and when it is changed', async () => {
  const past = { ...sampleTask, due: '2031-04-29' };
  await expect(createAssignment(store.db, guide, past, NOW)).rejects.toMatchObject({ status: 422 });
  await expect(extend(store.db, guide, homework.id, '2031-04-29', NOW)).rejects.toThrow(
    'Last day: 2031-04-29 has passed.'
  );
  // In Hawaii it is still the day before.
  await extend(store.db, guide, homework.id, '2031-04-30', NOW);
});

test('homework is changed under its link until somebody comes in', async () => {
  const change = (title: string) =>
    replaceTask(store.db, guide, homework.id, { ...sampleTask, title }, NOW);
  await change('Before Sunday');
  const now = await assignmentOf(store.db, guide, homework.id);
  expect([now?.task.title, now?.share]).toEqual(['Before Sunday', homework.share]);
  await enterAs('Ina');
  await expect(change('Before Monday')).rejects.toMatchObject({ status: 409 });
  expect((await assignmentOf(store.db, guide, homework.id))?.task.title).toBe('Before Sunday');
});

describe('answers to questions', () => {
  test('are judged again here, and what the phone said otherwise is flagged', async () => {
    await enterAs('Ina');
    await send(answered('honest', 'mood', true));
    await send({ ...answered('flattered', 'mood', false), right: true });
    const [{ objectives, disagreements }] = await clientProgressOf(store.db, homework);
    expect(objectives).toMatchObject([{ objective: 'season', right: 1, isDone: true }]);
    expect(objectives[0].answers.map(({ graded }) => graded.right).sort()).toEqual([false, true]);
    expect(disagreements).toBe(1);
  });

  test('of another model than this are flagged', async () => {
    await enterAs('Ina');
    await send({ ...answered('a', 'mood', true), model: '0.9.0' });
    expect(await clientProgressOf(store.db, homework)).toMatchObject([{ disagreements: 1 }]);
  });

  test('lead back to the lesson where too little was known, a right guess being no knowing', async () => {
    await enterAs('Ina');
    await send(answered('a', 'mood', true));
    const [known] = await clientProgressOf(store.db, homework);
    expect(known.objectives[0].backTo).toBeNull();
    await send({ ...answered('b', 'mood', true), report: 'guessed' });
    const [weak] = await clientProgressOf(store.db, homework);
    expect(weak.objectives[0]).toMatchObject({ right: 2, backTo: 'season-and-mood' });
  });

  test.each([
    ['about another objective', { item: 'mark-fall' }, 'item'],
    ['that is none of ours', { item: 'riddle' }, 'item'],
    ['from a seed beyond those of homework', { seed: 101 }, 'seed'],
    ['that is no option', { given: 'everything' }, 'given'],
    ['of the wrong form', { given: 3 }, 'given']
  ])('to a question %s are refused', async (_what, change, field) => {
    await enterAs('Ina');
    const sent = { ...answered('a', 'mood', true), ...change };
    await expect(send(sent)).rejects.toThrow(new RegExp(`^${field}: `));
    expect(await store.db.selectFrom('submissions').selectAll().execute()).toEqual([]);
  });

  test('count once, however they come', async () => {
    await enterAs('Ina');
    let round = 0;
    const sending = fc.array(fc.record({ n: fc.nat(3), isRight: fc.boolean() }), { maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(sending, async (steps) => {
        const prefix = `round-${round++}-`;
        const first = new Map<number, boolean>();
        for (const { n, isRight } of steps) {
          const known = first.get(n);
          const { kind } = await send(answered(`${prefix}${n}-`, 'mood', isRight));
          if (known === undefined) expect(kind).toBe('accepted');
          else expect(kind).toBe(known === isRight ? 'repeated' : 'conflict');
          first.set(n, known ?? isRight);
        }
        const [{ objectives }] = await clientProgressOf(store.db, homework);
        const own = objectives[0].answers.filter(({ id }) => id.startsWith(prefix));
        expect(own.map(({ graded }) => graded.right).sort()).toEqual([...first.values()].sort());
      }),
      { numRuns: 15, seed: 6 }
    );
  });
});

test('homework that was stored before there were questions and a phase is read', async () => {
  const { title, note, lessons, challenges, tries, due } = sampleTask;
  const before = { title, note, lessons, challenges, tries, due };
  await store.db
    .updateTable('assignments')
    .set({ task: JSON.stringify(before) })
    .execute();
  const { visibility: phase } = sampleChallenge;
  expect((await again()).task).toEqual({
    ...before,
    from: '',
    objectives: [],
    questions: 1,
    phase
  });
  await enterAs('Ina');
  for (const id of ['a', 'b', 'c']) await send(tried(id, 9));
  await send({ kind: 'finished', id: 'd'.repeat(16), lesson: 'one-foot', at: NOW });
  expect(await clientProgressOf(store.db, await again())).toMatchObject([{ isDone: true }]);
});
