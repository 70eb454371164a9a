import { parseSetup, type Setup } from '$lib/model';
import { MOST, travelOf, type Assignment, type HomeworkPhase } from '$lib/practice';
import { setupOf, type Gear } from '$lib/sandbox';
import { DataError, solveCorrection, type Challenge } from '$lib/scoring';

/** Homework as a guide is putting it together. */
export interface Draft {
  title: string;
  from: string;
  note: string;
  lessons: readonly string[];
  /** Ids of challenges, in the order chosen. */
  challenges: readonly string[];
  tries: number;
  phase: HomeworkPhase;
  /** A day, or empty for none. */
  due: string;
  /** The guide's own gear and water for all of the challenges, or null for each challenge's own. */
  gear: Gear | null;
}

export const PHASE_NAMES: Record<HomeworkPhase, string> = {
  seen: 'Bait in sight',
  half_seen: 'In sight and hidden in turn',
  unseen: 'Bait hidden'
};

export function firstDraft(): Draft {
  return {
    title: 'Homework',
    from: '',
    note: '',
    lessons: [],
    challenges: [],
    tries: 8,
    phase: 'half_seen',
    due: '',
    gear: null
  };
}

/** The homework that the draft stands for. Throws DataError for a challenge that is not in `known`. */
export function assignmentOf(draft: Draft, known: readonly Challenge[]): Assignment {
  const { title, from, note, lessons, tries, phase, due, gear } = draft;
  const challenges = draft.challenges.map((id) => {
    const challenge = known.find((one) => one.id === id);
    if (!challenge) throw new DataError('challenges', id, 'no lesson has it');
    return gear ? { ...challenge, setup: withGear(challenge, gear) } : challenge;
  });
  return {
    title: title.trim() || firstDraft().title,
    from: from.trim(),
    note: note.trim(),
    lessons: [...lessons],
    challenges,
    tries: Math.min(MOST.tries, Math.max(1, Math.round(tries) || 1)),
    phase,
    due: due === '' ? null : due
  };
}

/** Titles of those challenges with a distance that no single move does in this water. */
export function undoable({ challenges }: Assignment): string[] {
  return challenges
    .filter((challenge) => travelOf(challenge) && solveCorrection(challenge) === null)
    .map(({ title }) => title);
}

/** In or out of a list, kept in the order of choosing. */
export function toggled(list: readonly string[], id: string): string[] {
  return list.includes(id) ? list.filter((one) => one !== id) : [...list, id];
}

function withGear({ setup }: Challenge, gear: Gear): Setup {
  return setupOf(gear, parseSetup(setup));
}
