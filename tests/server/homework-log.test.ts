import { expect, test } from 'vitest';
import * as v from 'valibot';
import { assignmentOf, createAssignment, type Homework } from '../../src/lib/server/assignments';
import { enter } from '../../src/lib/server/clients';
import { takeSent } from '../../src/lib/server/homework';
import { clientProgressOf } from '../../src/lib/server/progress';
import { createSpace, guideOf, startSession, type Guide } from '../../src/lib/server/spaces';
import { openStore } from '../../src/lib/server/store';
import { newToken } from '../../src/lib/server/token';
import { homeworkSubmission } from '../../src/lib/wire';
import { anEntry } from '../practice/samples';
import { sampleTask, SENT_AT as NOW } from './samples';
import { sqlite } from './stores';

test('a day of the own log comes to any homework at the client’s wish, and none that says where it was', async () => {
  const server = await sqlite.start();
  const { db, close } = await openStore(await server.fresh());
  const cookie = await startSession(db, await createSpace(db, 'Reed', NOW), NOW);
  const guide = (await guideOf(db, cookie, NOW)) as Guide;
  const id = await createAssignment(db, guide, sampleTask, NOW);
  const homework = (await assignmentOf(db, guide, id)) as Homework;
  const phone = newToken();
  await enter(db, homework.share, phone, 'Ina', NOW);

  const spell = anEntry('entry-of-one-morning');
  const day = { kind: 'log', id: 'd'.repeat(16), on: '2030-05-01', at: NOW } as const;
  const sent = v.parse(homeworkSubmission, { ...day, spells: [{ ...spell, place: '' }] });
  await takeSent(db, homework.share, phone, sent, NOW, 'a home');
  const [progress] = await clientProgressOf(db, homework);
  expect(progress.log).toMatchObject([{ on: '2030-05-01', spells: [{ depth_m: 6.1, bites: 2 }] }]);
  expect(progress.isDone).toBe(false);

  const placed = v.safeParse(homeworkSubmission, { ...day, spells: [spell] });
  expect(placed.issues?.[0].message).toBe('place must be left out');
  await close();
  await server.stop();
});
