import type { ShownRun } from '../course';
import type { RodInput } from '../model';
import type { Challenge } from '../scoring';
import {
  answersTo,
  challengeOf,
  countVotes,
  keyOf,
  questionOf,
  type SeatAnswer
} from './clinic-answers';
import { adviceAfter, partOf, type Advice, type Phase } from './clinic-flow';
import type { Round } from './clinic-plan';
import type { Graded } from './homework';
import { errorsOf } from './hand-ruler';
import { roomById, seatsIn, type Room } from './rooms';
import type { Db } from './store';

/** What a round asks, without what is right. */
export type Shown =
  | { kind: 'talk'; title: string; says: string[] }
  | { kind: 'predict'; ask: string; options: { id: string; says: string }[] }
  | { kind: 'try'; challenge: Challenge };

/** What is told of a question once it is revealed. */
export interface Revealed {
  key: string;
  replies: Record<string, string>;
  travel_m: number;
  /** What the model was asked, to be run on the screen. */
  run: ShownRun;
}

/** What every phone sees. No counts: a phone shows what its owner did, the screen what the room did. */
export interface PhoneView {
  part: string;
  at: number;
  of: number;
  phase: Phase;
  ballot: number;
  isOver: boolean;
  shown: Shown;
  revealed: Revealed | null;
}

export interface RoomTry {
  id: string;
  travel_m: number;
  marks: number;
}

/** The room's hand at a challenge: how far it is off, and how far apart, m. */
export interface RoomHand {
  title: string;
  ballot: number;
  target_m: number;
  bias_m: number;
  spread_m: number;
  tries: number;
}

/** What the big screen sees: the room as a whole, and nobody in it. */
export interface ScreenView extends PhoneView {
  seats: number;
  answered: number;
  minutes: number;
  advice: Advice | null;
  /** Votes by option; null until they are revealed. */
  counts: Record<string, number> | null;
  hands: Record<string, number>;
  tries: RoomTry[] | null;
  /** Earlier rounds of tries, to see whether the room got closer. */
  rounds: RoomHand[];
  replay: { challenge: Challenge; input: RodInput } | null;
}

export function phoneView({ state }: Room): PhoneView {
  const round = state.plan[state.at];
  return {
    part: partOf(state),
    at: state.at,
    of: state.plan.length,
    phase: state.phase,
    ballot: state.ballot,
    isOver: state.isOver,
    shown: shownOf(round),
    revealed: state.phase === 'revealed' && round.kind === 'predict' ? revealedOf(round) : null
  };
}

function shownOf(round: Round): Shown {
  if (round.kind === 'talk') return { kind: 'talk', title: round.title, says: round.says };
  if (round.kind === 'try') return { kind: 'try', challenge: challengeOf(round) };
  const { ask, options } = questionOf(round);
  return { kind: 'predict', ask, options: options.map(({ id, says }) => ({ id, says })) };
}

function revealedOf(round: Round): Revealed {
  const question = questionOf(round);
  const { key, result } = keyOf(question);
  const replies = question.options.map(({ id, reply }) => [id, reply]);
  return {
    key: key.id,
    replies: Object.fromEntries(replies),
    travel_m: result.travel_m,
    run: question.run
  };
}

export async function screenView(db: Db, id: string): Promise<ScreenView> {
  const room = await roomById(db, id);
  const { state } = room;
  const round = state.plan[state.at];
  const part = partOf(state);
  const answers = await answersTo(db, id, part);
  const hands = state.hands[part] ?? {};
  const counts = countVotes(answers, hands);
  const isShown = state.phase === 'revealed';
  const key = round.kind === 'predict' && state.phase !== 'open' ? revealedOf(round).key : null;
  return {
    ...phoneView(room),
    seats: await seatsIn(db, id),
    answered: new Set(answers.map(({ seat }) => seat)).size,
    minutes: round.minutes,
    advice: key === null ? null : adviceAfter(counts, key),
    counts: isShown && round.kind === 'predict' ? counts : null,
    hands,
    tries: isShown && round.kind === 'try' ? answers.flatMap(tryOf) : null,
    rounds: await handsOf(db, room),
    replay: replayOf(round, answers, state.shown)
  };
}

function tryOf({ id, reply }: SeatAnswer): RoomTry[] {
  return 'travel_m' in reply ? [{ id, travel_m: reply.travel_m, marks: reply.marks }] : [];
}

function replayOf(round: Round, answers: readonly SeatAnswer[], shown: string | null) {
  const found = answers.find(({ id }) => id === shown)?.answer;
  if (found?.kind !== 'try') return null;
  return { challenge: challengeOf(round), input: found.input as RodInput };
}

/** How the room's hand did in every round of tries so far that was revealed or left. */
export async function handsOf(db: Db, { id, state }: Room): Promise<RoomHand[]> {
  const rows = await db
    .selectFrom('submissions')
    .select(['part', 'reply'])
    .where('parent', '=', id)
    .where('payload', 'like', '{"kind":"try"%')
    .execute();
  const now = state.phase === 'revealed' || state.isOver ? '' : partOf(state);
  const parts = [...new Set(rows.map(({ part }) => part))].filter((part) => part !== now).sort();
  return parts.flatMap((part) => {
    const travels = rows
      .filter((row) => row.part === part)
      .map(({ reply }) => (JSON.parse(reply) as Graded).travel_m);
    return handOf(state.plan, part, travels);
  });
}

function handOf(plan: readonly Round[], part: string, travels_m: number[]): RoomHand[] {
  const [at, ballot] = part.split('.').map(Number);
  const { title, goals } = challengeOf(plan[at]);
  const goal = goals.find((one) => one.kind === 'travel');
  if (goal?.kind !== 'travel' || travels_m.length === 0) return [];
  const { target_m } = goal;
  return [{ title, ballot, target_m, ...errorsOf(travels_m, target_m) }];
}
