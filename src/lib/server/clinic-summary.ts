import { answersTo, countVotes } from './clinic-answers';
import { handsIn } from './clinic-first-vote';
import { handsOf } from './clinic-hands';
import { drillsIn } from './clinic-view';
import { pollOf } from './clinic-poll';
import { daysAfter, ROOM_KEPT_DAYS } from './retention';
import { participantsIn, type Room } from './rooms';
import type { Db } from './store';
import type { AskedOnce, ClinicSummary } from '../wire';

export async function clinicSummaryOf(db: Db, room: Room): Promise<ClinicSummary> {
  const asked: AskedOnce[] = [];
  for (const [at, round] of room.state.plan.entries()) {
    if (round.kind !== 'predict' && round.kind !== 'ask') continue;
    const { about, ask, options, key } = pollOf(round);
    const votes: AskedOnce['votes'] = [];
    for (let ballot = 1; ; ballot++) {
      const part = `${at}.${ballot}`;
      const shown = room.state.hands[part];
      const counts = countVotes(await answersTo(db, room.id, part), shown);
      const of = Object.values(counts).reduce((sum, count) => sum + count, 0);
      if (of === 0) break;
      votes.push({ ballot, share: (counts[key] ?? 0) / of, of, hands: handsIn(shown) });
    }
    const right = options.find(({ id }) => id === key)?.says ?? '';
    if (votes.length > 0) asked.push({ ask: `${about} ${ask}`.trim(), right, votes });
  }
  const state = { ...room.state, isOver: true };
  return {
    name: room.state.name,
    held: room.created_at,
    until: daysAfter(room.ends_at, ROOM_KEPT_DAYS),
    seats: await participantsIn(db, room.id),
    asked,
    hands: await handsOf(db, { ...room, state }),
    drills: drillsIn(state)
  };
}
