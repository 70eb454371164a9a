import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { Refusal } from '../../src/lib/server/faults';
import { loadLessons } from '../../src/lib/course';
import { takeAnswer } from '../../src/lib/server/clinic-answers';
import { homeOf } from '../../src/lib/server/clinic-home';
import { planFor, PREPARED } from '../../src/lib/server/clinic-plan';
import { pollOf } from '../../src/lib/server/clinic-poll';
import { screenViewOf } from '../../src/lib/server/clinic-view';
import { Feed } from '../../src/lib/server/feed';
import {
  act,
  admit,
  createRoom,
  forgetParticipant,
  participantId,
  roomOf
} from '../../src/lib/server/rooms';
import { lookUp } from '../../src/lib/server/participant-look';
import { openStore } from '../../src/lib/server/store';
import { newToken } from '../../src/lib/server/token';
import { guided } from './guided';
import { storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';
const plan = planFor(45, PREPARED[45], loadLessons(), () => 0.5);
const asked = plan.findIndex(({ kind }) => kind === 'predict');
const option = pollOf(plan[asked]).options[0].id;

/** What comes too late may be refused; any other fault is one of ours. */
const onlyRefused = (fault: unknown) => expect(fault).toBeInstanceOf(Refusal);

describe.each(storeKinds)('who leaves a clinic on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    const club = guided(kind, NOW);

    async function atQuestion() {
      const id = await createRoom(club.store.db, club.guide, { name: 'May meeting', plan }, NOW);
      await act(club.store.db, club.guide, id, { do: 'go', to: asked }, NOW);
      const room = await roomOf(club.store.db, club.guide, id);
      const sit = (token: string) => admit(club.store.db, room, token, NOW);
      const vote = async (token: string) => {
        const vote = { kind: 'vote' as const, id: newToken(), part: `${asked}.1`, option };
        const look = await lookUp(club.store.db, { code: room.code, token, id: vote.id });
        return (await takeAnswer(club.store.db, look, vote, NOW, 'a hall')).receipt;
      };
      return { ...room, sit, vote, screen: () => screenViewOf(club.store.db, id, NOW) };
    }

    /** Seats and what was sent, by seat. */
    async function rowsIn(room: string) {
      const { db } = club.store;
      const seats = await db.selectFrom('seats').select('id').where('room_id', '=', room).execute();
      const sent = db.selectFrom('submissions').select('scope').where('parent', '=', room);
      return {
        seats: seats.map(({ id }) => id),
        sent: (await sent.execute()).map((it) => it.scope)
      };
    }

    test('has all answers of the phone deleted, and none taken that come late, until it joins', async () => {
      const { id, code, sit, vote, screen } = await atQuestion();
      const [phone, other] = [newToken(), newToken()];
      for (const token of [phone, other]) await sit(token);
      for (const token of [phone, phone, other]) await vote(token);
      expect(await screen()).toMatchObject({ seats: 2, answered: 2 });
      await forgetParticipant(club.store.db, id, newToken());
      expect((await rowsIn(id)).sent).toHaveLength(3);
      await forgetParticipant(club.store.db, id, phone);
      expect(await screen()).toMatchObject({ seats: 1, answered: 1 });
      // Nobody waits for a phone that was forgotten.
      const gone = [phone, other].map((token) => participantId(id, token));
      const view = await screenViewOf(club.store.db, id, NOW, gone);
      expect(view).toMatchObject({ seats: 1, away: 1 });
      const left = await rowsIn(id);
      expect(left.sent).toEqual(left.seats);
      const link = `${code}-${phone}`;
      await expect(homeOf(club.store.db, link)).rejects.toMatchObject({ status: 404 });

      await expect(vote(phone)).rejects.toMatchObject({ status: 403 });
      expect(await rowsIn(id)).toEqual(left);
      await sit(phone);
      expect((await vote(phone)).kind).toBe('accepted');
      expect(await screen()).toMatchObject({ seats: 2, answered: 2 });
    });

    test('leaves nothing, though an answer is on its way', async () => {
      const { id, sit, vote } = await atQuestion();
      for (let steps = 0; steps < 200; steps += 10) {
        const token = newToken();
        await sit(token);
        const sending = vote(token).catch(onlyRefused);
        // Wherever the sending is by then.
        for (let n = 0; n < steps; n++) await Promise.resolve();
        await Promise.all([forgetParticipant(club.store.db, id, token), sending]);
      }
      expect(await rowsIn(id)).toEqual({ seats: [], sent: [] });
    });

    test('and whose key is void is sent away: at once on every node, else at the next heartbeat', async () => {
      vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
      const id = 'a room';
      onTestFinished(() => void vi.useRealTimers());
      const other = club.store.kind === 'postgres' ? await openStore(club.place) : club.store;
      const [here, there] = [await Feed.open(club.store), await Feed.open(other)];
      const heard = club.store.kind === 'postgres' ? there : here;
      const listen = async (space: string, key: { isVoid: boolean }) => {
        const keyed = { space, holds: async () => !key.isVoid };
        const wanted = { key: 'screen', view: async () => 1, from: 'here', keyed };
        const reader = heard.stream(id, wanted).getReader();
        await reader.read();
        await reader.read();
        return reader;
      };
      const [first, second, third] = [{ isVoid: true }, { isVoid: false }, { isVoid: true }];
      const renewed = await listen('Reed', first);
      const own = await listen('Reed', second);
      const late = await listen('Silt', third);
      expect(heard.listeners).toBe(3);
      here.doubt('Reed');
      expect(await renewed.read()).toMatchObject({ done: true });
      expect(heard.listeners).toBe(2);
      vi.advanceTimersByTime(15_000);
      for (const reader of [own, late])
        expect(new TextDecoder().decode((await reader.read()).value)).toBe(': still here\n\n');
      expect(await late.read()).toMatchObject({ done: true });
      expect(heard.listeners).toBe(1);
      await Promise.all([here.close(), there.close()]);
      if (other !== club.store) await other.close();
    });
  });
});
