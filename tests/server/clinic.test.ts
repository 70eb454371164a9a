import { describe, expect, test } from 'vitest';
import { loadLessons } from '../../src/lib/course';
import { MODEL_VERSION } from '../../src/lib/model';
import { gradeTry } from '../../src/lib/scoring';
import { challengeOfRound, takeAnswer } from '../../src/lib/server/clinic-answers';
import { homeOf } from '../../src/lib/server/clinic-home';
import { planFor, PREPARED } from '../../src/lib/server/clinic-plan';
import { pollOf } from '../../src/lib/server/clinic-poll';
import { clinicSummaryOf } from '../../src/lib/server/clinic-summary';
import { phoneViewOf, screenViewOf } from '../../src/lib/server/clinic-view';
import { Feed } from '../../src/lib/server/feed';
import {
  act,
  alive,
  createRoom,
  deleteRoom,
  roomByCode,
  roomOf,
  participantsIn,
  admit,
  type Room
} from '../../src/lib/server/rooms';
import { lookUp } from '../../src/lib/server/participant-look';
import { openStore } from '../../src/lib/server/store';
import { newToken } from '../../src/lib/server/token';
import { evenHand } from './samples';
import { guided } from './guided';
import { storeKinds } from './stores';
import type { ClinicAction, ClinicSubmission } from '../../src/lib/wire';

const NOW = '2031-05-01T08:00:00.000Z';
const plan = planFor(90, PREPARED[90], loadLessons(), () => 0.5);
const atPredict = plan.findIndex(({ kind }) => kind === 'predict');
const atTry = plan.findIndex(
  (round) =>
    round.kind === 'try' && challengeOfRound(round).goals.some(({ kind }) => kind === 'travel')
);
const { options, key: right } = pollOf(plan[atPredict]);
const atAsk = plan.findIndex(({ kind }) => kind === 'ask');
const wrong = options.find(({ id }) => id !== right)?.id ?? '';

describe.each(storeKinds)('a clinic on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    const club = guided(kind, NOW);

    async function take(room: Room, token: string, answer: ClinicSubmission, now = NOW) {
      await admit(club.store.db, room, token, NOW);
      const look = await lookUp(club.store.db, { code: room.code, token, id: answer.id });
      return takeAnswer(club.store.db, look, answer, now, 'a hall');
    }

    async function newClinic(at: number) {
      const id = await createRoom(club.store.db, club.guide, { name: 'May meeting', plan }, NOW);
      const doing = (action: ClinicAction) => act(club.store.db, club.guide, id, action, NOW);
      await doing({ do: 'go', to: at });
      let sent = 0;
      const phone = newToken();
      const room = () => roomOf(club.store.db, club.guide, id);
      const vote = async (option: string, part: string, token = newToken()) => {
        const answer = {
          kind: 'vote' as const,
          id: `vote-${part.replace('.', '_')}-${sent++}-`.padEnd(16, 'x'),
          part,
          option
        };
        const now = new Date(Date.parse(NOW) + sent).toISOString();
        return take(await room(), token, answer, now);
      };
      return { id, doing, vote, room, phone, screen: () => screenViewOf(club.store.db, id, NOW) };
    }

    test('shows neither screen nor phone how the room votes before it is revealed', async () => {
      const { doing, vote, room, screen } = await newClinic(atPredict);
      for (const option of [right, wrong, right]) await vote(option, `${atPredict}.1`);
      const open = await screen();
      expect(open).toMatchObject({ answered: 3, counts: null, advice: null, revealed: null });
      await doing({ do: 'hold' });
      expect(await screen()).toMatchObject({ counts: null, advice: 'discuss', revealed: null });
      await doing({ do: 'reveal' });
      expect(await screen()).toMatchObject({
        counts: { [right]: 2, [wrong]: 1 },
        revealed: { key: right }
      });
      const phone = JSON.stringify(phoneViewOf(await room()));
      expect(phone).not.toMatch(/counts|answered|seats/);
    });

    test('takes a changed mind as one vote, hands as votes, and nothing while it is held', async () => {
      const { doing, vote, screen, phone } = await newClinic(atPredict);
      const part = `${atPredict}.1`;
      await vote(wrong, part, phone);
      await vote(right, part, phone);
      await doing({ do: 'hands', option: wrong, count: 4 });
      await doing({ do: 'hold' });
      await expect(vote(wrong, part)).rejects.toMatchObject({ status: 410 });
      await doing({ do: 'reveal' });
      expect((await screen()).counts).toEqual({ [right]: 1, [wrong]: 4 });
    });

    test('knows what it took again, also once it is closed or the phone has sent its fill', async () => {
      const { id, doing, room, phone } = await newClinic(atPredict);
      const part = `${atPredict}.1`;
      const send = async (id: string, option: string) => {
        const answer = { kind: 'vote' as const, id: id.padEnd(16, 'x'), part, option };
        return take(await room(), phone, answer);
      };
      const reply = JSON.stringify({ taken: true });
      expect(await send('first', right)).toEqual({
        room: id,
        receipt: { kind: 'accepted', reply }
      });
      const scope = await admit(club.store.db, await room(), phone, NOW);
      const row = { scope, parent: id, part: '0.1', payload: '{}', reply, received_at: NOW };
      const fill = Array.from({ length: 499 }, (_, i) => {
        return { ...row, id: `fill-${i}`, payload_hash: `${i}` };
      });
      await club.store.db.insertInto('submissions').values(fill).execute();
      await expect(send('one more', right)).rejects.toMatchObject({ status: 429 });
      await doing({ do: 'hold' });
      expect((await send('first', right)).receipt).toEqual({ kind: 'repeated', reply });
      expect((await send('first', wrong)).receipt).toEqual({ kind: 'conflict' });
      expect(await screenViewOf(club.store.db, id, NOW)).toMatchObject({ answered: 1, seats: 1 });
    });

    test('keeps the first vote and the second apart, and a late first vote out of the second', async () => {
      const { doing, vote, room } = await newClinic(atPredict);
      await vote(wrong, `${atPredict}.1`);
      await doing({ do: 'hold' });
      await doing({ do: 'again' });
      await expect(vote(wrong, `${atPredict}.1`)).rejects.toMatchObject({ status: 410 });
      await vote(right, `${atPredict}.2`);
      const { asked } = await clinicSummaryOf(club.store.db, await room());
      expect(asked[0].votes).toEqual([
        { ballot: 1, share: 0, of: 1, hands: 0 },
        { ballot: 2, share: 1, of: 1, hands: 0 }
      ]);
    });

    test('shows the first vote beside the second, and whether its hands are in the second', async () => {
      const { doing, vote, screen } = await newClinic(atPredict);
      await vote(wrong, `${atPredict}.1`);
      await doing({ do: 'hands', option: wrong, count: 6 });
      await doing({ do: 'reveal' });
      expect((await screen()).first).toBeNull();
      await doing({ do: 'again' });
      await vote(right, `${atPredict}.2`);
      expect((await screen()).first).toBeNull();
      await doing({ do: 'reveal' });
      const first = { counts: { [wrong]: 7 }, hasHandsAlone: true };
      expect(await screen()).toMatchObject({ counts: { [right]: 1 }, first });
      await doing({ do: 'hands', option: right, count: 6 });
      expect((await screen()).first).toEqual({ ...first, hasHandsAlone: false });
    });

    test('asks the same thing elsewhere, and tells its key and why only once it is revealed', async () => {
      const { doing, vote, room, screen } = await newClinic(atAsk);
      const poll = pollOf(plan[atAsk]);
      await vote(poll.key, `${atAsk}.1`);
      const open = phoneViewOf(await room());
      expect(open.shown).toMatchObject({ kind: 'ask', ask: poll.ask });
      expect(JSON.stringify(open)).not.toContain(poll.explain);
      expect(poll.ask).toMatch(/^[^.]+\?$/);
      await doing({ do: 'reveal' });
      const { counts, revealed } = await screen();
      expect(counts).toEqual({ [poll.key]: 1 });
      expect(revealed).toMatchObject({ key: poll.key, explain: poll.explain, run: poll.run });
    });

    test('a hint is on screen and phones, stays through the vote after it, and goes with it', async () => {
      const { doing, vote, room, screen } = await newClinic(atPredict);
      await vote(wrong, `${atPredict}.1`);
      await doing({ do: 'hold' });
      expect(await screen()).toMatchObject({ advice: 'teach', hint: null, hasHint: true });
      await doing({ do: 'hint' });
      const { hint } = pollOf(plan[atPredict]);
      expect([(await screen()).hint, phoneViewOf(await room()).hint]).toEqual([hint, hint]);
      await doing({ do: 'again' });
      expect(phoneViewOf(await room())).toMatchObject({ phase: 'open', ballot: 2, hint });
      await vote(wrong, `${atPredict}.2`);
      await doing({ do: 'hold' });
      expect((await screen()).advice).toBe('discuss');
      await doing({ do: 'talk' });
      expect(await screen()).toMatchObject({ hint: null, talk_left_s: 120 });
    });

    test('gives a phone that comes back its seat', async () => {
      const { room, phone, id } = await newClinic(atPredict);
      const first = await admit(club.store.db, await room(), phone, NOW);
      expect(await admit(club.store.db, await room(), phone, NOW)).toBe(first);
      expect(await participantsIn(club.store.db, id)).toBe(1);
    });

    test('lets nobody new in once it is over, and whoever was there stays', async () => {
      const { doing, room, phone } = await newClinic(0);
      const seat = await admit(club.store.db, await room(), phone, NOW);
      await doing({ do: 'end' });
      const late = admit(club.store.db, await room(), newToken(), NOW);
      await expect(late).rejects.toMatchObject({ status: 410 });
      expect(await admit(club.store.db, await room(), phone, NOW)).toBe(seat);
    });

    test('its code is dead after some hours', async () => {
      const { room } = await newClinic(0);
      const { code } = await room();
      const found = await roomByCode(club.store.db, code);
      expect(alive(found, NOW)).toMatchObject({ code });
      expect(() => alive(found, '2031-05-01T23:00:00.000Z')).toThrow('No clinic has that code');
    });

    test('shows the room’s tries as a bias and a spread, and one of them without a name', async () => {
      const { doing, room, screen } = await newClinic(atTry);
      const challenge = challengeOfRound(plan[atTry]);
      const made = [8, 16].map((turn, i) => {
        const input = evenHand(challenge, turn, 3);
        const { marks, figure } = gradeTry(challenge, input).grade;
        const what = { id: `try-${i}`.padEnd(16, 'x'), part: `${atTry}.1` };
        const answer = { kind: 'try' as const, ...what, input, model: MODEL_VERSION, marks };
        return { answer, travel_m: figure ?? NaN };
      });
      for (const { answer } of made) await take(await room(), newToken(), answer);
      expect(await screen()).toMatchObject({ tries: null, rounds: [], replay: null });
      await doing({ do: 'reveal' });
      await doing({ do: 'show', id: made[1].answer.id });
      const view = await screen();
      const travels = made.map(({ travel_m }) => travel_m).sort((a, b) => a - b);
      expect(view.tries?.map(({ figure }) => figure).sort()).toEqual(travels);
      const spread = expect.closeTo((travels[1] - travels[0]) / 2, 9);
      expect(view.rounds[0]).toMatchObject({ few: travels, spread });
      expect(view.replay?.input).toEqual(made[1].answer.input);
    });

    test('gives each phone what it did itself, of a question its first vote, until all is deleted', async () => {
      const { id, doing, vote, room, phone } = await newClinic(atPredict);
      const { code } = await room();
      const other = newToken();
      const link = `${code}-${phone}`;
      await vote(right, `${atPredict}.1`, phone);
      await vote(wrong, `${atPredict}.1`, phone);
      await vote(right, `${atPredict}.1`, other);
      await doing({ do: 'hold' });
      await doing({ do: 'again' });
      await vote(right, `${atPredict}.2`, phone);
      await doing({ do: 'go', to: atAsk });
      const asked = pollOf(plan[atAsk]);
      await vote(asked.key, `${atAsk}.1`, phone);
      await doing({ do: 'go', to: atTry });
      const challenge = challengeOfRound(plan[atTry]);
      const input = evenHand(challenge, 8, 1);
      const { marks } = gradeTry(challenge, input).grade;
      const made = { kind: 'try' as const, id: 'home-try-0123456', input, model: MODEL_VERSION };
      await take(await room(), phone, { ...made, part: `${atTry}.1`, marks });

      const home = await homeOf(club.store.db, link);
      expect(home.tries).toEqual([
        { id: made.id, challenge: challenge.id, input, model: MODEL_VERSION, marks, at: NOW }
      ]);
      expect(home.predictions).toMatchObject([
        { lesson: 'one-foot', station: 'predict', option: wrong }
      ]);
      const says = (id: string) =>
        pollOf(plan[atPredict]).options.find((one) => one.id === id)?.says;
      expect(home.asked).toHaveLength(2);
      expect(home.asked[0]).toMatchObject({
        key: says(right),
        votes: [
          { ballot: 1, says: says(wrong), right: false },
          { ballot: 2, says: says(right), right: true }
        ]
      });
      await doing({ do: 'go', to: atAsk });
      expect((await homeOf(club.store.db, link)).asked).toHaveLength(1);
      const told = { given: asked.key, right: true, model: MODEL_VERSION };
      const { source: item, seed } = asked.item ?? {};
      expect(home.answers).toMatchObject([{ round: atAsk, item, seed, ...told }]);
      expect((await homeOf(club.store.db, `${code}-${other}`)).answers).toEqual([]);
      expect((await homeOf(club.store.db, `${code}-${other}`)).tries).toEqual([]);
      const gone = { status: 404 };
      await expect(homeOf(club.store.db, `${code}-${newToken()}`)).rejects.toMatchObject(gone);
      await expect(homeOf(club.store.db, link.slice(7))).rejects.toMatchObject(gone);
      await deleteRoom(club.store.db, club.guide, id);
      await expect(homeOf(club.store.db, link)).rejects.toMatchObject(gone);
    });

    test('is heard on another node, a room that votes at once as one message', async () => {
      const { id } = await newClinic(0);
      const other = club.store.kind === 'postgres' ? await openStore(club.place) : club.store;
      const [here, there] = [await Feed.open(club.store), await Feed.open(other)];
      // On SQLite they are one node, and only its own feed hears.
      const heard = club.store.kind === 'postgres' ? [here, there] : [here];
      const listeners = heard.map((feed) => {
        const seen = { views: 0 };
        const view = async () => ({ said: seen.views++ });
        const wanted = { key: 'screen', view, from: 'here' };
        return { seen, reader: feed.stream(id, wanted).getReader() };
      });
      const next = () =>
        Promise.all(
          listeners.map(async ({ reader }) => new TextDecoder().decode((await reader.read()).value))
        );
      expect(new Set(await next())).toEqual(new Set([': here\n\n']));
      expect(new Set(await next())).toEqual(new Set(['data: {"said":0}\n\n']));
      for (let i = 0; i < 50; i++) here.changed(id);
      expect(new Set(await next())).toEqual(new Set(['data: {"said":1}\n\n']));
      // Nor does a node hear of its own change again by the store.
      await new Promise((resolve) => setTimeout(resolve, 300));
      expect(listeners.map(({ seen }) => seen.views)).toEqual(heard.map(() => 2));
      await Promise.all([here.close(), there.close()]);
      for (const { reader } of listeners) expect((await reader.read()).done).toBe(true);
      if (other !== club.store) await other.close();
    });
  });
});
