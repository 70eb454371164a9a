import type { Round } from './clinic-plan';

/** Open takes answers; held takes none and shows none; revealed shows what the room said. */
export type Phase = 'open' | 'held' | 'revealed';

/** What helps a room on between two votes: a hint, or two minutes with a neighbour. */
export type Aid = 'hint' | 'talk';

export interface RoomState {
  plan: Round[];
  at: number;
  phase: Phase;
  /** 1 for the first vote on a question, 2 after hint or talk. */
  ballot: number;
  /** What the room has had of help with this question, in order. */
  given: Aid[];
  /** The help that is shown now; a hint stays through the vote after it. */
  aid: Aid | null;
  /** When the talk ends; the room may stop earlier. ISO time. */
  talk_ends_at: string | null;
  /** Hands counted by the instructor, by part and option. */
  hands: Record<string, Record<string, number>>;
  /** Id of the try that the screen replays. */
  shown: string | null;
  /** Hash of the token of the phone that is the screen's rod. */
  rod: string | null;
  isOver: boolean;
}

export type ClinicAction =
  | { do: 'go'; to: number }
  | { do: 'hold' | 'open' | 'hint' | 'talk' | 'reveal' | 'again' | 'end' | 'resume' }
  | { do: 'hands'; option: string; count: number }
  | { do: 'show'; id: string | null }
  | { do: 'rod'; hash: string | null };

const TALK_MS = 120_000;
const nothingGiven = { given: [], aid: null, talk_ends_at: null };

export function newRoom(plan: Round[]): RoomState {
  const first = { at: 0, phase: 'open' as const, ballot: 1, ...nothingGiven };
  return { plan, ...first, hands: {}, shown: null, rod: null, isOver: false };
}

/** Name of what is answered now; answers to anything else come too late. */
export function partOf({ at, ballot }: Pick<RoomState, 'at' | 'ballot'>): string {
  return `${at}.${ballot}`;
}

/** The room after the instructor did something. Doing it twice does no more than once. */
export function nextState(state: RoomState, action: ClinicAction, now: string): RoomState {
  switch (action.do) {
    case 'go': {
      const at = Math.min(Math.max(0, action.to), state.plan.length - 1);
      return { ...state, at, phase: 'open', ballot: 1, ...nothingGiven, shown: null };
    }
    case 'hold':
      return { ...state, phase: 'held' };
    case 'open':
      return { ...state, phase: 'open' };
    case 'hint':
    case 'talk':
      return helped(state, action.do, now);
    case 'reveal':
      return { ...state, phase: 'revealed', aid: null };
    case 'again':
      return again(state);
    case 'hands':
      return { ...state, hands: withHands(state, action.option, action.count) };
    case 'show':
      return { ...state, shown: action.id };
    case 'rod':
      return { ...state, rod: action.hash };
    case 'end':
      return { ...state, isOver: true, phase: 'held', rod: null };
    case 'resume':
      return state.isOver ? { ...state, isOver: false, phase: 'open' } : state;
  }
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
  return { ...state, phase: 'held', aid, given, talk_ends_at: aid === 'talk' ? ends : null };
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

/** What to do after a vote, by the share that was right (teaching.md, after Smith 2009). */
export type Advice = 'teach' | 'discuss' | 'explain' | 'explain slowly';

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
  given: readonly Aid[] = []
): Advice | null {
  const all = Object.values(counts).reduce((sum, count) => sum + count, 0);
  if (all === 0) return null;
  const share = (counts[key] ?? 0) / all;
  if (share < TEACH_BELOW && !given.includes('hint')) return 'teach';
  if (share > EXPLAIN_ABOVE) return 'explain';
  return given.includes('talk') ? 'explain slowly' : 'discuss';
}
