import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { planFor, PREPARED } from '../../src/lib/server/clinic-plan';
import { lendRod, rodPlaceOf, rodRoom, rodWater } from '../../src/lib/server/clinic-rod';
import { screenViewOf } from '../../src/lib/server/clinic-view';
import { Feed } from '../../src/lib/server/feed';
import { act, createRoom, roomOf } from '../../src/lib/server/rooms';
import { openStore } from '../../src/lib/server/store';
import { guided } from './guided';
import { storeKinds } from './stores';
import { clinicRequest, MOST_TURNS } from '../../src/lib/wire';

const NOW = '2031-05-01T08:00:00.000Z';
const plan = planFor(45, PREPARED[45], loadLessons(), () => 0.5);
const tries = plan.flatMap((round) => (round.kind === 'try' ? [round.challenge] : []));

const batch = { hold: 'h'.repeat(16), seq: 0, again: 0, samples: [[12.5, -3]] };

describe('what the phone sends', () => {
  const sent = { link: 'ABC234-token', ...batch };
  test.each([
    ['as it comes', sent, true],
    ['too many samples', { ...sent, samples: Array(MOST_TURNS + 1).fill([1, 1]) }, false],
    ['more than a turn', { ...sent, samples: [[1, 400]] }, false],
    ['no number', { ...sent, samples: [[1, null]] }, false],
    ['a name', { ...sent, name: 'Reed' }, false],
    ['a link as long as a book', { ...sent, link: 'x'.repeat(101) }, false]
  ])('%s', (_, given, isTaken) => {
    expect(v.safeParse(clinicRequest.rod, given).success).toBe(isTaken);
  });
});

test('the rod works in the water of this round, else of the last tries, else of the first to come', () => {
  const lastAsk = plan.map(({ kind }) => kind).lastIndexOf('ask');
  expect(rodWater({ plan, at: 0 }).id).toBe(tries[0]);
  expect(rodWater({ plan, at: lastAsk }).id).toBe(tries[0]);
  expect(rodWater({ plan, at: lastAsk + 1 }).id).toBe(tries[1]);
});

describe.each(storeKinds)('a phone as the rod on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    const club = guided(kind, NOW);

    test('has a link of its own, which is void once it is put away, lent anew, or over', async () => {
      const id = await createRoom(club.store.db, club.guide, { name: 'May meeting', plan }, NOW);
      const gone = { status: 404 };
      const first = await lendRod(club.store.db, club.guide, id, NOW);
      const room = await rodRoom(club.store.db, first, NOW);
      expect(room.id).toBe(id);
      expect(JSON.stringify(room.state)).not.toContain(first.slice(7));
      expect(rodPlaceOf(room.state).start_deg).toBeGreaterThan(0);
      expect((await screenViewOf(club.store.db, id, NOW)).rod?.id).toBe(tries[0]);

      const second = await lendRod(club.store.db, club.guide, id, NOW);
      await expect(rodRoom(club.store.db, first, NOW)).rejects.toMatchObject(gone);
      await expect(
        rodRoom(club.store.db, second, '2031-05-02T08:00:00.000Z')
      ).rejects.toMatchObject(gone);
      await act(club.store.db, club.guide, id, { do: 'rod', hash: null }, NOW);
      await expect(rodRoom(club.store.db, second, NOW)).rejects.toMatchObject(gone);
      expect((await screenViewOf(club.store.db, id, NOW)).rod).toBeNull();

      const third = await lendRod(club.store.db, club.guide, id, NOW);
      const { code } = await roomOf(club.store.db, club.guide, id);
      await expect(rodRoom(club.store.db, `${code}-${'x'.repeat(32)}`, NOW)).rejects.toMatchObject(
        gone
      );
      await act(club.store.db, club.guide, id, { do: 'end' }, NOW);
      await expect(rodRoom(club.store.db, third, NOW)).rejects.toMatchObject(gone);
    });

    test('is heard at once by the screen, on another node too, and by no phone', async () => {
      const id = await createRoom(club.store.db, club.guide, { name: 'May meeting', plan }, NOW);
      const other = club.store.kind === 'postgres' ? await openStore(club.place) : club.store;
      const [here, there] = [await Feed.open(club.store), await Feed.open(other)];
      const heard = club.store.kind === 'postgres' ? there : here;
      const view = async () => ({ still: true });
      const listen = (key: string) => heard.stream(id, { key, view, from: 'here' }).getReader();
      const [screen, phone] = [listen('screen'), listen('phone')];
      const next = async (of: typeof screen) => new TextDecoder().decode((await of.read()).value);
      for (const of of [screen, phone]) expect([await next(of), await next(of)]).toHaveLength(2);

      here.relay(id, 'screen', 'rod', batch);
      expect(await next(screen)).toBe(`event: rod\ndata: ${JSON.stringify(batch)}\n\n`);
      expect(() => here.relay(id, 'screen', 'rod', 'x'.repeat(8000))).toThrow('too long');
      await Promise.all([here.close(), there.close()]);
      expect((await phone.read()).done).toBe(true);
      if (other !== club.store) await other.close();
    });
  });
});
