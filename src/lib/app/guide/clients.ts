import { dayText } from '$lib/shell';
import { figureOfReply } from '$lib/practice';
import { figureOf, type Challenge } from '$lib/scoring';
import { isNamed } from './find';
import type { ClientProgress, ClientStanding, KeptTry } from '$lib/wire';

/** A client as the list shows one: without the rod inputs, which only the page of one client needs. */
export function briefly({ challenges, objectives, ...rest }: ClientProgress) {
  return {
    ...rest,
    challenges: challenges.map(({ challenge, tries, ...standing }) => ({
      ...standing,
      id: challenge.id,
      goals: challenge.goals,
      title: challenge.title,
      tries: tries.length,
      few: standing.level ? [] : tries.flatMap((one) => reachedOf(challenge, one)),
      contact: tries.length
        ? tries.reduce((sum, { graded }) => sum + graded.contact, 0) / tries.length
        : null
    })),
    objectives: objectives.map(({ answers, ...standing }) => {
      return { ...standing, answered: answers.length };
    })
  };
}

/** What a try reached of its task's figure: too few for a level are told one by one. */
function reachedOf(challenge: Challenge, { graded }: KeptTry): number[] {
  const reached = figureOfReply(figureOf(challenge), graded);
  return reached === null ? [] : [reached];
}

export type Brief = ReturnType<typeof briefly>;

/** So many clients are shown at a time, and what they sent is read. */
const PAGE = 60;

/** A page of clients, from 1, and how many there are; the last where there are fewer. */
export function pageOf<T>(all: readonly T[], asked: number) {
  const pages = Math.max(1, Math.ceil(all.length / PAGE));
  const page = Math.min(pages, Math.max(1, Math.floor(asked) || 1));
  return { page, pages, shown: all.slice((page - 1) * PAGE, page * PAGE) };
}

export const isAllDone = ({ done, parts }: ClientStanding) => done === parts;

/** Those of that name, who is not done yet first, in the order of names. */
export function inOrder(clients: readonly ClientStanding[], typed: string): ClientStanding[] {
  return clients
    .filter(({ nickname }) => isNamed(nickname, typed))
    .sort(
      (a, b) =>
        Number(isAllDone(a)) - Number(isAllDone(b)) ||
        a.nickname.localeCompare(b.nickname, undefined, { numeric: true }) ||
        a.joined_at.localeCompare(b.joined_at)
    );
}

/** "2 of 3 parts done" */
export function partsText(one: ClientStanding): string {
  if (!one.hasBegun) return 'not begun';
  if (one.done === 0) return 'begun, no part done yet';
  return isAllDone(one) ? 'done' : `${one.done} of ${one.parts} parts done`;
}

/** A homework as the list of them shows it. */
export interface Counted {
  clients: number;
  done: number;
  isClosed: boolean;
  due: string | null;
}

/** "1 of 3 clients done, due May 9, 2031" */
export function homeworkText({ clients, done, isClosed, due }: Counted): string {
  const counted =
    clients === 0
      ? 'no clients yet'
      : `${done} of ${clients} ${clients === 1 ? 'client' : 'clients'} done`;
  return `${counted}${isClosed ? ', closed' : ''}${due ? `, due ${dayText(due)}` : ''}`;
}

/** What to say first: to the hand where it misses by most of a band, else of the weakest questions. */
export function sayFirst({ challenges, objectives }: Pick<Brief, 'challenges' | 'objectives'>) {
  const known = challenges.flatMap(({ goals, level }) => (level ? [{ goals, level }] : []));
  const [worst] = known.sort((a, b) => b.level.miss - a.level.miss);
  const weak = objectives
    .filter(({ backTo }) => backTo !== null)
    .sort((a, b) => a.right / a.answered - b.right / b.answered)[0];
  return {
    hand: worst ? { figure: figureOf(worst), level: worst.level } : null,
    backTo: weak?.backTo ?? null
  };
}
