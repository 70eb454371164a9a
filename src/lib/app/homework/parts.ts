import { questionsAbout } from '$lib/course/items';
import {
  askedParts,
  type AskedPart,
  type Assignment,
  type HomeworkResult,
  type LawnDrags,
  type LoggedDay
} from '$lib/wire';
import type { MadeTry } from '$lib/app/ruler';
import { askedAbout, type QuestionKey } from './question-set';
import type { HomeworkEntry, TaskView } from './homework-store';

/** One thing that is asked, and how far it is done. What was refused does not count. */
export interface TaskPart extends AskedPart {
  made: number;
  of: number;
}

export const isPartDone = ({ made, of }: TaskPart) => made >= of;

/** The part that was left in its midst, to be gone on with; null where none was. */
export function underWay(parts: readonly TaskPart[]): TaskPart | null {
  return parts.findLast((part) => part.made > 0 && !isPartDone(part)) ?? null;
}

/** What was done here and not refused. */
export function heldOf(entries: readonly HomeworkEntry[]) {
  return entries.filter(({ state }) => state !== 'refused').map(({ sent }) => sent);
}

/** One thing that was done here, whoever it is for. */
export type DoneHere =
  | ({ kind: 'try'; challenge: string } & MadeTry)
  | ({ kind: 'answer' } & QuestionKey)
  | { kind: 'finished'; lesson: string }
  | ({ kind: 'lawn' } & LawnDrags)
  | { kind: 'word'; text: string }
  | ({ kind: 'log' } & LoggedDay);

/** The same of homework that goes back as a link. @param through lessons that were gone through here */
export function heldIn(
  { assignment, tries, answers, lawn = [] }: HomeworkResult,
  through: readonly string[]
): DoneHere[] {
  return [
    ...tries.map((made) => {
      return { ...made, kind: 'try' as const, challenge: assignment.challenges[made.challenge].id };
    }),
    ...answers.map((made) => ({ ...made, kind: 'answer' as const })),
    ...through.map((lesson) => ({ kind: 'finished' as const, lesson })),
    ...lawn.map((set) => ({ ...set, kind: 'lawn' as const }))
  ];
}

/** All that is asked, in the order of the page. */
export function partsOf(task: Assignment, held: readonly DoneHere[]): TaskPart[] {
  return askedParts(task).map((part) => ({ ...part, ...countOf(part, task, held) }));
}

function countOf(
  { kind, id }: AskedPart,
  { tries, questions }: Assignment,
  held: readonly DoneHere[]
): Pick<TaskPart, 'made' | 'of'> {
  const made = (isOfIt: (one: DoneHere) => boolean) => held.filter(isOfIt).length;
  switch (kind) {
    case 'lesson':
      return { made: made((one) => one.kind === 'finished' && one.lesson === id), of: 1 };
    case 'challenge':
      return { made: made((one) => one.kind === 'try' && one.challenge === id), of: tries };
    case 'questions': {
      const answers = held.filter((one) => one.kind === 'answer');
      return { made: askedAbout(id, answers).length, of: questionsAbout(id, questions) };
    }
    case 'lawn':
      return {
        made: held.some((one) => one.kind === 'lawn') ? 1 : 0,
        of: 1
      };
  }
}

/** What to do after this part: the next that is not done, from the first again after the last. */
export function nextAfter(
  parts: readonly TaskPart[],
  kind: TaskPart['kind'],
  id: string
): TaskPart | null {
  const at = parts.findIndex((one) => one.kind === kind && one.id === id);
  const others = [...parts.slice(at + 1), ...parts.slice(0, at)];
  return others.find((one) => !isPartDone(one)) ?? null;
}

/** One on its way is a matter of a moment; more than that are held up. */
const MOST_ON_ITS_WAY = 1;

/** Where this homework is, in one line for the top; nothing while there is something to do and all is sent. */
export function headline(task: TaskView, entries: readonly HomeworkEntry[]): string {
  const all = partsOf(task, heldOf(entries)).every(isPartDone);
  const waiting = entries.filter(({ state }) => state === 'waiting').length;
  if (all && waiting === 0) return 'Done. Your guide has it all.';
  if (task.isClosed) return 'Your guide closed this. Nothing more can be sent.';
  const held = `${waiting} not sent yet. Kept here until there’s a connection.`;
  if (all) return `Done. ${held}`;
  return waiting > MOST_ON_ITS_WAY ? held : '';
}
