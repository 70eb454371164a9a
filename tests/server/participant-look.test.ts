import { describe, expect, test } from 'vitest';
import { planFor, PREPARED } from '../../src/lib/server/clinic-plan';
import { loadLessons } from '../../src/lib/course';
import { createRoom, hasParticipant, roomOf, admit } from '../../src/lib/server/rooms';
import { lookUp } from '../../src/lib/server/participant-look';
import { write } from '../../src/lib/server/submission-writer';
import { newToken } from '../../src/lib/server/token';
import { guided } from './guided';
import { storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';
const plan = planFor(45, PREPARED[45], loadLessons(), () => 0.5);

describe.each(storeKinds)('what is asked in one moment, on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    const club = guided(kind, NOW);

    async function openRoom() {
      const { db } = club.store;
      return roomOf(
        db,
        club.guide,
        await createRoom(db, club.guide, { name: 'May meeting', plan }, NOW)
      );
    }
    const sent = (scope: string, id: string, parent: string) => {
      const payload = JSON.stringify(id);
      const reply = `reply to ${id}`;
      return { scope, id, parent, part: '0.1', payload_hash: id, payload, reply, received_at: NOW };
    };

    test('each is told its own room, seat, count and reply', async () => {
      const { db } = club.store;
      const [here, there] = [await openRoom(), await openRoom()];
      // One phone sits in both rooms and sends the same id to both.
      const [both, one, nobody] = [newToken(), newToken(), newToken()];
      const [a, b, c] = [newToken(), newToken(), newToken()];
      const inHere = await admit(db, here, both, NOW);
      const inThere = await admit(db, there, both, NOW);
      const alone = await admit(db, here, one, NOW);
      await Promise.all(
        [sent(inHere, a, here.id), sent(inHere, b, here.id)].map((it) => write(db, it))
      );
      await write(db, sent(inThere, c, there.id));

      const asks = [
        { code: here.code, token: both, id: a },
        { code: here.code, token: both, id: b },
        { code: here.code, token: both, id: c },
        { code: there.code, token: both, id: a },
        { code: there.code, token: both, id: c },
        { code: here.code, token: one, id: a },
        { code: here.code, token: nobody, id: a },
        { code: 'NOCODE', token: both, id: a }
      ];
      const looks = await Promise.all(asks.map((ask) => lookUp(db, ask)));
      expect(
        looks.map((look) => look && [look.room.id, look.seat, look.count, look.before?.reply])
      ).toEqual([
        [here.id, inHere, 2, `reply to ${a}`],
        [here.id, inHere, 2, `reply to ${b}`],
        [here.id, inHere, 2, undefined],
        [there.id, inThere, 1, undefined],
        [there.id, inThere, 1, `reply to ${c}`],
        [here.id, alone, 0, undefined],
        [here.id, null, 0, undefined],
        null
      ]);
      expect(looks[0]?.room).toEqual(here);
    });

    test('more than one statement carries are told all the same', async () => {
      const { db } = club.store;
      const room = await openRoom();
      const tokens = Array.from({ length: 450 }, newToken);
      const seats = await Promise.all(tokens.map((token) => admit(db, room, token, NOW)));
      const ask = (token: string) => lookUp(db, { code: room.code, token, id: token });
      const looks = await Promise.all(tokens.map(ask));
      expect(looks.map((look) => look?.seat)).toEqual(seats);
    });

    test('what the store refuses is told to who asked then, and to nobody after', async () => {
      const { db } = club.store;
      const seat = await admit(db, await openRoom(), newToken(), NOW);
      const wrong = { ...sent(seat, newToken(), 'room'), payload: null as unknown as string };
      const together = [write(db, wrong), write(db, sent(seat, newToken(), 'room'))];
      const told = await Promise.allSettled(together);
      expect(told.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
      expect(await write(db, sent(seat, newToken(), 'room'))).toBe(true);
      expect(await hasParticipant(db, seat)).toBe(true);
    });
  });
});
