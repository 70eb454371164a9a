import { beforeAll, describe, expect, test } from 'vitest';
import { ask, load, newClinic, newGuide, newHomework, shareOf, withStore } from './endpoints';
import type { Jar } from './events';

withStore();

/** A guide's homework and room; rooms cost seconds, so all tests share it. */
let jar: Jar;
let [homework, share, id, code] = ['', '', '', ''];
beforeAll(async () => {
  ({ jar } = await newGuide('Reed'));
  homework = await newHomework(jar);
  share = await shareOf(jar, homework);
  ({ id, code } = await newClinic(jar));
});

const choose = (chosen: string | null) =>
  ask('/api/guide/clinic/[id]', { body: { do: 'homework', id: chosen }, jar, params: { id } });

const takenAlong = async () =>
  JSON.parse((await load('/clinic/[id]/summary', { jar, params: { id } })).body).homework;

describe('the homework of paying clients', () => {
  const sheets = ['/clinic/[id]', '/clinic/[id]/lead', '/clinic/[id]/summary'];
  test.each(sheets)('has no link on %s unless its guide chose it for that room', async (path) => {
    const { body } = await load(path, { jar, params: { id } });
    expect(body).not.toContain(share);
  });

  test('goes along once it was chosen, is told to no phone, and is taken back', async () => {
    expect(await choose(homework)).toMatchObject({ status: 200 });
    expect((await takenAlong()).link).toContain(share);
    const joining = { body: { token: 't'.repeat(32) }, params: { code } };
    const { body } = await ask('/api/clinic/[code]/join', joining);
    expect(body).not.toContain(share);
    expect(body).not.toContain(homework);
    await choose(null);
    expect(await takenAlong()).toBeNull();
  });

  test('of another guide cannot be chosen', async () => {
    const stranger = await newHomework((await newGuide('Wels')).jar);
    expect(await choose(stranger)).toMatchObject({ status: 404 });
  });

  test('that was closed after it was chosen goes along no more', async () => {
    await choose(homework);
    const closing = { method: 'PATCH', body: { change: 'close' }, jar, params: { id: homework } };
    expect(await ask('/api/guide/homework/[id]', closing)).toMatchObject({ status: 200 });
    expect(await takenAlong()).toBeNull();
  });
});
