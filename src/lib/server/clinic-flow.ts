import type { Round } from './clinic-plan';

/** Open takes answers; held takes none and shows none; revealed shows what the room said. */
export type Phase = 'open' | 'held' | 'revealed';

export interface RoomState {
  plan: Round[];
  at: number;
  phase: Phase;
  /** 1 for the first vote on a question, 2 after the talk. */
  ballot: number;
  /** Hands counted by the instructor, by part and option. */
  hands: Record<string, Record<string, number>>;
  /** Id of the try that the screen replays. */
  shown: string | null;
  isOver: boolean;
}

export type ClinicAction =
  | { do: 'go'; to: number }
  | { do: 'hold' | 'open' | 'reveal' | 'again' | 'end' }
  | { do: 'hands'; option: string; count: number }
  | { do: 'show'; id: string | null };

export function newRoom(plan: Round[]): RoomState {
  return { plan, at: 0, phase: 'open', ballot: 1, hands: {}, shown: null, isOver: false };
}

/** Name of what is answered now; answers to anything else come too late. */
export function partOf({ at, ballot }: Pick<RoomState, 'at' | 'ballot'>): string {
  return `${at}.${ballot}`;
}

/** The room after the instructor did something. Doing it twice does no more than once. */
export function nextState(state: RoomState, action: ClinicAction): RoomState {
  switch (action.do) {
    case 'go': {
      const at = Math.min(Math.max(0, action.to), state.plan.length - 1);
      return { ...state, at, phase: 'open', ballot: 1, shown: null };
    }
    case 'hold':
      return { ...state, phase: 'held' };
    case 'open':
      return { ...state, phase: 'open' };
    case 'reveal':
      return { ...state, phase: 'revealed' };
    case 'again':
      // From open already: pressed twice, and the second ballot is running.
      return state.phase === 'open'
        ? state
        : { ...state, phase: 'open', ballot: state.ballot + 1, shown: null };
    case 'hands':
      return { ...state, hands: withHands(state, action.option, action.count) };
    case 'show':
      return { ...state, shown: action.id };
    case 'end':
      return { ...state, isOver: true, phase: 'held' };
  }
}

function withHands(state: RoomState, option: string, count: number): RoomState['hands'] {
  const part = partOf(state);
  return { ...state.hands, [part]: { ...state.hands[part], [option]: count } };
}

/** What to do after a vote, by the share that was right (teaching.md, after Smith 2009). */
export type Advice = 'teach' | 'discuss' | 'explain';

/** Below this the room has nothing to talk about yet: a hint first. */
const TEACH_BELOW = 0.35;
/** Above this talk gains little: explain, and run the model. */
const EXPLAIN_ABOVE = 0.7;

/** Null while nobody has answered. @param counts answers by option */
export function adviceAfter(counts: Record<string, number>, key: string): Advice | null {
  const all = Object.values(counts).reduce((sum, count) => sum + count, 0);
  if (all === 0) return null;
  const share = (counts[key] ?? 0) / all;
  if (share < TEACH_BELOW) return 'teach';
  return share > EXPLAIN_ABOVE ? 'explain' : 'discuss';
}
