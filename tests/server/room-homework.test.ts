import { describe, expect, test } from 'vitest';
import { ask, load, newClinic, newGuide, newHomework, shareOf, withStore } from './endpoints';
import type { Jar } from './events';

withStore();

const sheets = ['/clinic/[id]', '/clinic/[id]/lead', '/clinic/[id]/summary'];

async function guideWithRoom() {
  const { jar } = await newGuide('Reed');
  const homework = await newHomework(jar);
  const { id } = await newClinic(jar);
  return { jar, homework, id, share: await shareOf(jar, homework) };
}

const choose = (jar: Jar, id: string, homework: string | null) =>
  ask('/api/guide/clinic/[id]', { body: { do: 'homework', id: homework }, jar, params: { id } });

const takenAlong = async (jar: Jar, id: string) =>
  JSON.parse((await load('/clinic/[id]/summary', { jar, params: { id } })).body).homework;

describe('the homework of paying clients', () => {
  test.each(sheets)('has no link on %s unless its guide chose it for that room', async (path) => {
    const { jar, share, id } = await guideWithRoom();
    const { body } = await load(path, { jar, params: { id } });
    expect(body).not.toContain(share);
  });

  test('goes along once it was chosen, for that room alone, and is taken back', async () => {
    const { jar, homework, share, id } = await guideWithRoom();
    const other = await newClinic(jar);
    expect(await choose(jar, id, homework)).toMatchObject({ status: 200 });
    expect((await takenAlong(jar, id)).link).toContain(share);
    expect(await takenAlong(jar, other.id)).toBeNull();
    await choose(jar, id, null);
    expect(await takenAlong(jar, id)).toBeNull();
  });

  test('is told to no phone of the room', async () => {
    const { jar, homework, share, id } = await guideWithRoom();
    await choose(jar, id, homework);
    const { code } = JSON.parse((await load('/clinic/[id]', { jar, params: { id } })).body);
    const { body } = await ask('/api/clinic/[code]/join', {
      body: { token: 't'.repeat(32) },
      params: { code }
    });
    expect(body).not.toContain(share);
    expect(body).not.toContain(homework);
  });

  test('of another guide cannot be chosen', async () => {
    const { jar, id } = await guideWithRoom();
    const stranger = await guideWithRoom();
    expect(await choose(jar, id, stranger.homework)).toMatchObject({ status: 404 });
  });
});

test('a room takes nothing along that was closed after it was chosen', async () => {
  const { jar, homework, id } = await guideWithRoom();
  await choose(jar, id, homework);
  const closing = { method: 'PATCH', body: { change: 'close' }, jar, params: { id: homework } };
  expect(await ask('/api/guide/homework/[id]', closing)).toMatchObject({ status: 200 });
  expect(await takenAlong(jar, id)).toBeNull();
});
