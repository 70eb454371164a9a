import { afterAll, describe, expect, test } from 'vitest';
import { endOpenSession, sessionsOf } from '../../src/lib/server/open-sessions';
import { createSpace, guideOf, startSession, type Guide } from '../../src/lib/server/spaces';
import { openStore } from '../../src/lib/server/store';
import { sqlite } from './stores';

const FIRST = '2031-05-01T08:00:00.000Z';
const LATER = '2031-05-09T08:00:00.000Z';
const started = await sqlite.start();
const store = await openStore(await started.fresh());
afterAll(async () => {
  await store.close();
  await started.stop();
});

async function opened(name: string) {
  const secret = await createSpace(store.db, name, FIRST);
  const open = async (now: string, device?: string) =>
    (await startSession(store.db, secret, now, device)) ?? '';
  const [phone, computer] = [await open(FIRST, 'phone'), await open(LATER, 'computer')];
  const guide = (await guideOf(store.db, computer, LATER)) as Guide;
  return { guide, phone, computer };
}

describe('where a space is open', () => {
  test('its guide sees, by kind and time, and which of them asks', async () => {
    const { guide, computer } = await opened('Reed');
    expect(await sessionsOf(store.db, guide, computer, LATER)).toMatchObject([
      { device: 'computer', opened: LATER, used: LATER, isThis: true },
      { device: 'phone', opened: FIRST, used: FIRST, isThis: false }
    ]);
    const { guide: same, phone } = await opened('Sedge');
    const byPhone = await sessionsOf(store.db, same, phone, LATER);
    expect(byPhone.map(({ device }) => device)).toEqual(['phone', 'computer']);
    const late = '2031-06-02T08:00:00.000Z';
    expect(await sessionsOf(store.db, guide, computer, late)).toHaveLength(1);
  });

  test('its guide ends one, and nobody another’s', async () => {
    const [ours, theirs] = [await opened('Reed'), await opened('Sedge')];
    const [, phone] = await sessionsOf(store.db, ours.guide, ours.computer, LATER);
    await endOpenSession(store.db, theirs.guide, phone.id);
    expect(await guideOf(store.db, ours.phone, LATER)).toBeDefined();
    await endOpenSession(store.db, ours.guide, phone.id);
    expect(await guideOf(store.db, ours.phone, LATER)).toBeUndefined();
    expect(await guideOf(store.db, ours.computer, LATER)).toBeDefined();
    expect(await guideOf(store.db, theirs.phone, LATER)).toBeDefined();
  });
});
