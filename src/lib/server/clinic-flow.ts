import type { Aid, ClinicAction, RoomState, VoteAdvice } from '../wire';

/** What can be done with a room: what the screen asks for, and a phone that becomes its rod. */
export type RoomChange = ClinicAction | { do: 'rod'; hash: string | null };

const TALK_MS = 120_000;
const nothingGiven = { given: [], aid: null, aid_ballot: null, talk_ends_at: null };

export function newRoom({ name, plan }: Pick<RoomState, 'name' | 'plan'>): RoomState {
  const first = { at: 0, phase: 'open' as const, ballot: 1, ...nothingGiven };
  const nobody = { shown: null, rod: null, homework: null };
  return { name, plan, ...first, began_at: null, hands: {}, ...nobody, done: [], isOver: false };
}

/** Name of what is answered now; answers to anything else come too late. */
export function partOf({ at, ballot }: Pick<RoomState, 'at' | 'ballot'>): string {
  return `${at}.${ballot}`;
}

/** The room after the instructor did something. Doing it twice does no more than once. */
export function nextState(state: RoomState, action: RoomChange, now: string): RoomState {
  switch (action.do) {
    case 'go': {
      const at = Math.min(Math.max(0, action.to), state.plan.length - 1);
      return {
        ...state,
        at,
        began_at: now,
        phase: 'open',
        ballot: 1,
        ...nothingGiven,
        shown: null
      };
    }
    case 'hold':
      return { ...withDone(state), phase: 'held' };
    case 'open':
      return { ...state, phase: 'open' };
    case 'hint':
    case 'talk':
      return helped(withDone(state), action.do, now);
    case 'reveal':
      return { ...withDone(state), phase: 'revealed', aid: null };
    case 'again':
      return again(state);
    case 'hands':
      return { ...state, hands: withHands(state, action.option, action.count) };
    case 'show':
      return { ...state, shown: action.id };
    case 'homework':
      return { ...state, homework: action.id };
    case 'rod':
      return { ...state, rod: action.hash };
    case 'end':
      return { ...state, isOver: true, phase: 'held', rod: null };
    case 'resume':
      return state.isOver ? { ...state, isOver: false, phase: 'open' } : state;
  }
}

/** The room has done this round: what is only passed over has no drill to take along. */
function withDone(state: RoomState): RoomState {
  const { done, at } = state;
  return done === null || done.includes(at) ? state : { ...state, done: [...done, at] };
}

/** From open already: pressed twice, and the second ballot is running. */
function again(state: RoomState): RoomState {
  if (state.phase === 'open') return state;
  const aid = state.aid === 'hint' ? state.aid : null;
  return { ...state, phase: 'open', ballot: state.ballot + 1, aid, shown: null };
}

/** Nobody votes meanwhile: what is voted after it is another vote. */
function helped(state: RoomState, aid: Aid, now: string): RoomState {
  if (state.aid === aid && state.phase === 'held') return state;
  const given = state.given.includes(aid) ? state.given : [...state.given, aid];
  const ends = new Date(Date.parse(now) + TALK_MS).toISOString();
  const { ballot: aid_ballot } = state;
  return {
    ...state,
    phase: 'held',
    aid,
    aid_ballot,
    given,
    talk_ends_at: aid === 'talk' ? ends : null
  };
}

/** Whether help was given since the last vote: then another vote is due, and no more help. */
export function isHelped({ aid, aid_ballot, ballot }: RoomState): boolean {
  return aid !== null && aid_ballot === ballot;
}

/** How long the round has been on, whole seconds; null where nobody knows. */
export function roundTime({ began_at }: RoomState, now: string): number | null {
  if (began_at === null) return null;
  return Math.max(0, Math.round((Date.parse(now) - Date.parse(began_at)) / 1000));
}

/** What is left of the talk, whole seconds; null while there is none. */
export function talkLeft({ aid, talk_ends_at }: RoomState, now: string): number | null {
  if (aid !== 'talk' || talk_ends_at === null) return null;
  return Math.max(0, Math.round((Date.parse(talk_ends_at) - Date.parse(now)) / 1000));
}

function withHands(state: RoomState, option: string, count: number): RoomState['hands'] {
  const part = partOf(state);
  return { ...state.hands, [part]: { ...state.hands[part], [option]: count } };
}

/** Below this the room has nothing to talk about yet: a hint first. */
const TEACH_BELOW = 0.35;
/** Above this talk gains little: explain, and run the model. */
const EXPLAIN_ABOVE = 0.7;

/**
 * Null while nobody has answered. No help is advised twice: a room that has had the hint talks, and
 * one that has talked is told; slowly, where it is still divided.
 * @param counts answers by option
 */
export function adviceAfter(
  counts: Record<string, number>,
  key: string,
  given: readonly Aid[] = [],
  hasHint = true
): VoteAdvice | null {
  const all = Object.values(counts).reduce((sum, count) => sum + count, 0);
  if (all === 0) return null;
  const share = (counts[key] ?? 0) / all;
  if (share < TEACH_BELOW && hasHint && !given.includes('hint')) return 'teach';
  if (share > EXPLAIN_ABOVE) return 'explain';
  return given.includes('talk') ? 'explain slowly' : 'discuss';
}
