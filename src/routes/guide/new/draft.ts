import type { Lesson } from '$lib/course';
import { parseSetup, type Setup } from '$lib/model';
import type { Challenge, Visibility } from '$lib/scoring';

/** A challenge that may be set, and how. */
export interface Choice {
  challenge: Challenge;
  lesson: string;
  isSet: boolean;
  /** Another gear and water than the lesson's; null is the lesson's own. */
  setup: Setup | null;
}

export interface Draft {
  title: string;
  note: string;
  due: string;
  tries: number;
  phase: Visibility | 'own';
  lessons: { id: string; title: string; isSet: boolean }[];
  choices: Choice[];
}

/** A phase of learning by teaching.md: seen, half seen, unseen; or as each challenge says. */
export const PHASES = [
  { value: 'own', name: 'As in the lesson' },
  { value: 'seen', name: 'Seen' },
  { value: 'half_seen', name: 'Half seen' },
  { value: 'unseen', name: 'Unseen' }
] as const;

export function emptyDraft(lessons: readonly Lesson[]): Draft {
  return {
    title: '',
    note: '',
    due: '',
    tries: 8,
    phase: 'own',
    lessons: lessons.map(({ id, title }) => ({ id, title, isSet: false })),
    choices: lessons.flatMap((lesson) =>
      lesson.challenges.map((challenge) => ({
        challenge,
        lesson: lesson.title,
        isSet: false,
        setup: null
      }))
    )
  };
}

/** The setup that a choice has now, all defaults filled in. */
export function setupOf({ challenge, setup }: Choice): Setup {
  return setup ?? parseSetup(challenge.setup);
}

/**
 * Homework as the server takes it. With another gear a challenge is another challenge, and has an id
 * of its own: tries and corrections are kept by id. @param suffix lower-case letters, new each time
 */
export function taskOf(draft: Draft, suffix: string) {
  const chosen = draft.choices.filter(({ isSet }) => isSet);
  return {
    title: draft.title,
    note: draft.note,
    lessons: draft.lessons.filter(({ isSet }) => isSet).map(({ id }) => id),
    challenges: chosen.map(({ challenge, setup }) => ({
      ...challenge,
      ...(setup ? { id: `${challenge.id}-${suffix}`, setup } : {}),
      ...(draft.phase === 'own' ? {} : { visibility: draft.phase })
    })),
    tries: draft.tries,
    due: draft.due || null
  };
}
