import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { backupLines, restoreLines } from '../../src/lib/server/backup';
import { takeAnswer } from '../../src/lib/server/clinic-answers';
import { planFor, PREPARED } from '../../src/lib/server/clinic-plan';
import { pollOf } from '../../src/lib/server/clinic-poll';
import { screenViewOf } from '../../src/lib/server/clinic-view';
import { clearSilent, setAdmission } from '../../src/lib/server/admission';
import {
  act,
  createRoom,
  roomOf,
  participantId,
  admit,
  type Room
} from '../../src/lib/server/rooms';
import { lookUp } from '../../src/lib/server/participant-look';
import { openStore, type Db } from '../../src/lib/server/store';
import { newToken } from '../../src/lib/server/token';
import type { SilentCrowd } from '../../src/lib/wire';
import { guided } from './guided';
import { sqlite, storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';
const KEPT = { made: NOW, until: '2031-08-01T08:00:00.000Z' };
const NONE = { deletions: [], now: NOW };
const LATER = '2031-05-01T08:30:00.000Z';
const plan = planFor(45, PREPARED[45], loadLessons(), () => 0.5);
const asked = plan.findIndex(({ kind }) => kind === 'predict');
const option = pollOf(plan[asked]).options[0].id;
const shut = { status: 403, message: 'This clinic is locked. Ask the leader.' };

describe.each(storeKinds)('the door of a clinic on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    const club = guided(kind, NOW);

    async function newClinic() {
      const { store, guide } = club;
      const id = await createRoom(store.db, guide, { name: 'May meeting', plan }, NOW);
      await act(store.db, guide, id, { do: 'go', to: asked }, NOW);
      const room = () => roomOf(store.db, guide, id);
      const sit = async (token: string, address = '', at = NOW) =>
        admit(store.db, await room(), token, at, { address });
      const { code } = await room();
      const vote = async (token: string) => {
        const vote = { kind: 'vote' as const, id: newToken(), part: `${asked}.1`, option };
        const look = await lookUp(store.db, { code, token, id: vote.id });
        return (await takeAnswer(store.db, look, vote, NOW, 'a hall')).receipt;
      };
      const door = (to: 'open' | 'closed', at = NOW) => setAdmission(store.db, guide, id, to, at);
      const clear = (crowd?: SilentCrowd) => clearSilent(store.db, guide, id, crowd);
      return { id, room, sit, vote, door, clear, screen: () => screenViewOf(store.db, id, NOW) };
    }

    const rowOf = (db: Db, { id }: Pick<Room, 'id'>) =>
      db.selectFrom('rooms').selectAll().where('id', '=', id).executeTakeFirst();

    test('closed, keeps out who has no seat; who has one comes back and votes', async () => {
      const { door, sit, vote, screen } = await newClinic();
      const [early, late] = [newToken(), newToken()];
      const seat = await sit(early);
      await door('closed');
      await expect(sit(late)).rejects.toMatchObject(shut);
      expect(await sit(early)).toBe(seat);
      expect((await vote(early)).kind).toBe('accepted');
      expect(await screen()).toMatchObject({ seats: 1, answered: 1, isDoorClosed: true });
      await door('open');
      await sit(late);
      expect((await vote(late)).kind).toBe('accepted');
      expect(await screen()).toMatchObject({ seats: 2, answered: 2, isDoorClosed: false });
    });

    test('closed twice is closed once, and so with opening', async () => {
      const { door, room } = await newClinic();
      for (const at of [NOW, LATER]) await door('closed', at);
      expect((await room()).door_closed_at).toBe(NOW);
      for (const at of [NOW, LATER]) await door('open', at);
      expect((await room()).door_closed_at).toBeNull();
    });

    test('is closed at once on every node, for who saw it open just before too', async () => {
      const { door, room, id, screen } = await newClinic();
      const other = await openStore(club.place);
      const before = await roomOf(other.db, club.guide, id);
      await door('closed');
      expect(before.door_closed_at).toBeNull();
      for (const seen of [before, await room()]) {
        await expect(admit(other.db, seen, newToken(), NOW)).rejects.toMatchObject(shut);
      }
      expect(await screen()).toMatchObject({ seats: 0 });
      await other.close();
    });

    test('lets a phone in once that comes twice at the same time', async () => {
      const { sit, screen } = await newClinic();
      const token = newToken();
      const seats = await Promise.all(Array.from({ length: 8 }, () => sit(token)));
      expect(new Set(seats).size).toBe(1);
      expect(await screen()).toMatchObject({ seats: 1 });
    });

    test('stays closed through a restart, and through a backup into either kind of store', async () => {
      const { door, room } = await newClinic();
      await door('closed');
      const again = await openStore(club.place);
      const kept = await rowOf(again.db, await room());
      expect(kept).toMatchObject({ door_closed_at: NOW });
      const lines = await backupLines(again.db, KEPT);
      await again.close();
      const other = await sqlite.start();
      const server = await kind.start();
      for (const place of [await other.fresh(), await server.fresh()]) {
        const empty = await openStore(place);
        await restoreLines(empty.db, lines, NONE);
        expect(await rowOf(empty.db, await room())).toEqual(kept);
        await empty.close();
      }
      await Promise.all([other.stop(), server.stop()]);
    });

    test('is open in a backup from before there were doors', async () => {
      const { room } = await newClinic();
      const lines = await backupLines(club.store.db, KEPT);
      const body = lines.slice(0, -1).map((line, i) => {
        if (i === 0 || !line.startsWith('["rooms"')) return line;
        const [table, row] = JSON.parse(line);
        return JSON.stringify([table, { ...row, door_closed_at: undefined }]);
      });
      const sha256 = createHash('sha256').update(body.join('\n')).digest('hex');
      const other = await sqlite.start();
      const empty = await openStore(await other.fresh());
      await restoreLines(
        empty.db,
        [...body, JSON.stringify({ rows: body.length - 1, sha256 })],
        NONE
      );
      expect(await rowOf(empty.db, await room())).toMatchObject({ door_closed_at: null });
      await empty.close();
      await other.stop();
    });

    test('has who answered nothing cleared away; with the code they come in again, once it is open', async () => {
      const { door, sit, vote, clear, screen } = await newClinic();
      const [voter, silent, neighbour] = [newToken(), newToken(), newToken()];
      const next = await newClinic();
      await next.sit(neighbour);
      for (const token of [voter, silent]) await sit(token);
      await vote(voter);
      expect(await screen()).toMatchObject({ seats: 2, silent: 0 });
      await door('closed');
      expect(await screen()).toMatchObject({ seats: 2, silent: 1 });
      for (let times = 0; times < 2; times++) {
        await clear();
        expect(await screen()).toMatchObject({ seats: 1, answered: 1, silent: 0 });
      }
      expect((await vote(voter)).kind).toBe('accepted');
      await expect(vote(silent)).rejects.toMatchObject({ status: 403 });
      await expect(sit(silent)).rejects.toMatchObject(shut);
      await door('open');
      await sit(silent);
      expect((await vote(silent)).kind).toBe('accepted');
      expect(await screen()).toMatchObject({ seats: 2, answered: 2 });
      expect(await next.screen()).toMatchObject({ seats: 1 });
    });

    test('has a crowd from one address and minute cleared away, and nobody who came otherwise', async () => {
      const { door, sit, vote, clear, screen } = await newClinic();
      const [hall, flood] = ['10.0.0.1', '192.0.2.7'];
      const many = async (count: number, address: string, at: string) => {
        const tokens = Array.from({ length: count }, newToken);
        for (const token of tokens) await sit(token, address, at);
        return tokens;
      };
      const early = await many(25, hall, NOW);
      await vote(early[0]);
      await many(60, flood, LATER);
      await many(22, hall, LATER);
      await many(5, '203.0.113.9', LATER);
      expect(await screen()).toMatchObject({ silentCrowds: [] });
      await door('closed');
      const { silentCrowds, silent } = await screen();
      expect(silent).toBe(24 + 60 + 22 + 5);
      expect(silentCrowds.map(({ minute, count }) => [minute, count])).toEqual([
        ['2031-05-01T08:00Z', 24],
        ['2031-05-01T08:30Z', 60],
        ['2031-05-01T08:30Z', 22]
      ]);
      await clear(silentCrowds[1]);
      expect(await screen()).toMatchObject({ seats: 25 + 22 + 5, silent: 24 + 22 + 5 });
    });

    test('an answer that comes while seats are cleared is kept with its seat, or refused', async () => {
      const { id, sit, vote, clear, screen } = await newClinic();
      let kept = 0;
      for (let turns = 0; turns < 40; turns++) {
        const token = newToken();
        await sit(token);
        const sending = vote(token).then(
          () => true,
          ({ status }) => status !== 403
        );
        // Wherever the sending is by then.
        for (let n = 0; n < turns; n++) await setImmediate();
        const [isTaken] = await Promise.all([sending, clear()]);
        const rows = await club.store.db
          .selectFrom('submissions')
          .leftJoin('seats', 'seats.id', 'submissions.scope')
          .select('seats.id as seat')
          .where('submissions.scope', '=', participantId(id, token))
          .execute();
        expect(rows).toEqual(isTaken ? [{ seat: participantId(id, token) }] : []);
        if (isTaken) kept++;
      }
      await clear();
      expect(await screen()).toMatchObject({ seats: kept, answered: kept });
    });
  });
});
