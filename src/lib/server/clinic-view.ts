import type { RodInput } from '../model';
import { figureOfReply } from '../practice';
import { figureOf } from '../scoring';
import type {
  PhoneView,
  Revealed,
  RoomState,
  RoomTry,
  Round,
  ScreenView,
  ShownRound
} from '../wire';
import {
  answeredIn,
  answersTo,
  challengeOfRound,
  countVotes,
  type ParticipantAnswer
} from './clinic-answers';
import { adviceAfter, isHelped, partOf, roundTime, talkLeft } from './clinic-flow';
import { firstVote } from './clinic-first-vote';
import { stationAsked } from './clinic-home';
import { handsOf } from './clinic-hands';
import { pollOf, prepare } from './clinic-poll';
import { rodWater } from './clinic-rod';
import { silentCrowds, silentIn } from './admission';
import { countParticipants, roomById, participantsIn, type Room } from './rooms';
import type { Db } from './store';

export function phoneViewOf({ state }: Room): PhoneView {
  const round = state.plan[state.at];
  const isAsked = round.kind === 'predict' || round.kind === 'ask';
  return {
    name: state.name,
    part: partOf(state),
    at: state.at,
    of: state.plan.length,
    phase: state.phase,
    ballot: state.ballot,
    isOver: state.isOver,
    shown: shownOf(round),
    aid: state.aid,
    hint: isAsked && state.aid === 'hint' ? pollOf(round).hint : null,
    revealed: state.phase === 'revealed' && isAsked ? revealedOf(round) : null
  };
}

/** What a room has to show is worked out before its own tries are graded: after a restart both are asked for. */
const onAccountOf = ({ id }: Room) => ({ space: `view ${id}`, address: `view ${id}` });

/** The same, with the question of the round worked out before, off the server's own thread. */
export async function phoneViewFor(room: Room): Promise<PhoneView> {
  const { plan, at } = room.state;
  await prepare([plan[at]], onAccountOf(room));
  return phoneViewOf(room);
}

function shownOf(round: Round): ShownRound {
  if (round.kind === 'talk') return { kind: 'talk', title: round.title, says: round.says };
  if (round.kind === 'try') {
    return { kind: 'try', challenge: challengeOfRound(round), again: round.again ?? false };
  }
  const { about, ask, options, watch, item } = pollOf(round);
  const said = options.map(({ id, says }) => ({ id, says }));
  return { kind: round.kind, about, ask, options: said, asks: stationAsked(round), watch, item };
}

function revealedOf(round: Round): Revealed {
  const { key, options, explain, measured, run } = pollOf(round);
  const replies = Object.fromEntries(options.map(({ id, reply }) => [id, reply]));
  return { key, replies, explain, measured, run };
}

/** @param left seats whose phones no longer follow the room, where that is known */
export async function screenViewOf(
  db: Db,
  id: string,
  now: string,
  left: readonly string[] = []
): Promise<ScreenView> {
  const room = await roomById(db, id);
  const { state } = room;
  await prepare(state.plan, onAccountOf(room));
  const round = state.plan[state.at];
  const part = partOf(state);
  // Of an open round the screen shows how many have answered, so their answers are not read.
  const isSeen = state.phase !== 'open' || state.shown !== null;
  const isDoorClosed = room.door_closed_at !== null;
  const [seats, away, silent, crowds, answered, answers, rounds, first] = await Promise.all([
    participantsIn(db, id),
    state.isOver ? 0 : countParticipants(db, id, left),
    isDoorClosed ? silentIn(db, id) : 0,
    isDoorClosed ? silentCrowds(db, id) : [],
    answeredIn(db, id, part),
    isSeen ? answersTo(db, id, part) : [],
    handsOf(db, room),
    firstVote(db, room)
  ]);
  const hands = state.hands[part] ?? {};
  const counts = countVotes(answers, hands);
  const isShown = state.phase === 'revealed';
  const isAsked = round.kind === 'predict' || round.kind === 'ask';
  const poll = isAsked ? pollOf(round) : null;
  const key = state.phase === 'open' ? null : (poll?.key ?? null);
  return {
    ...phoneViewOf(room),
    seats,
    away,
    answered,
    isDoorClosed,
    silent,
    silentCrowds: crowds,
    minutes: round.minutes,
    advice: key === null ? null : adviceAfter(counts, key, state.given, Boolean(poll?.hint)),
    hasHint: Boolean(poll?.hint),
    isHelped: isHelped(state),
    agenda: state.plan.map((one) => ({ title: roundTitle(one), minutes: one.minutes })),
    round_s: roundTime(state, now),
    notes: notesOf(round),
    drills: state.isOver ? drillsIn(state) : [],
    talk_left_s: talkLeft(state, now),
    counts: isShown && isAsked ? counts : null,
    split: isAsked && state.phase !== 'open' ? counts : null,
    hands,
    first,
    tries: isShown && round.kind === 'try' ? triesOf(round, answers) : null,
    rounds,
    replay: replayOf(round, answers, state.shown),
    rod: state.rod === null ? null : rodWater(state),
    homework: state.homework
  };
}

function triesOf(round: Round, answers: readonly ParticipantAnswer[]): RoomTry[] {
  const figure = figureOf(challengeOfRound(round));
  return answers.flatMap(({ id, reply }) => {
    if (!('travel_m' in reply)) return [];
    return [{ id, figure: figureOfReply(figure, reply), passed: reply.passed }];
  });
}

function replayOf(round: Round, answers: readonly ParticipantAnswer[], shown: string | null) {
  const found = answers.find(({ id }) => id === shown)?.answer;
  if (found?.kind !== 'try') return null;
  return { challenge: challengeOfRound(round), input: found.input as RodInput };
}

/** What a round is called in the agenda. */
function roundTitle(round: Round): string {
  if (round.kind === 'talk') return round.title;
  if (round.kind === 'try') return challengeOfRound(round).title;
  return pollOf(round).ask;
}

/** What to say when the question is told; of other rounds nothing that the screen does not show. */
function notesOf(round: Round): string[] {
  if (round.kind !== 'predict' && round.kind !== 'ask') return [];
  const { key, options, explain, hint } = pollOf(round);
  const right = options.find(({ id }) => id === key);
  const why = explain ?? right?.reply;
  return [
    `Right is: ${right?.says ?? ''}.`,
    ...(why ? [why] : []),
    ...(hint ? [`Hint: ${hint}`] : [])
  ];
}

/** Drills to take along: of the lessons of which the room did a round, the ones between the talk before and the drill. */
export function drillsIn({ plan, done }: Pick<RoomState, 'plan' | 'done'>) {
  return plan.flatMap((round, i) => {
    if (round.kind !== 'talk' || !round.isDrill) return [];
    const begins = plan.findLastIndex(({ kind }, at) => at < i && kind === 'talk');
    const isDone = done?.some((at) => at > begins && at < i) ?? true;
    return isDone ? [{ title: round.title, says: round.says }] : [];
  });
}
