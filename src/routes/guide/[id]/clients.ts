import type { ClientProgress } from '$lib/server/progress';
import { isNamed } from '../find';

/** A client as the list shows one: without the rod inputs, which only the page of one client needs. */
export function briefly({ challenges, objectives, ...rest }: ClientProgress) {
  return {
    ...rest,
    challenges: challenges.map(({ challenge, tries, ...standing }) => ({
      ...standing,
      id: challenge.id,
      title: challenge.title,
      tries: tries.length,
      contact: tries.length
        ? tries.reduce((sum, { graded }) => sum + graded.contact, 0) / tries.length
        : null
    })),
    objectives: objectives.map(({ answers, ...standing }) => {
      return { ...standing, answered: answers.length };
    })
  };
}

export type Brief = ReturnType<typeof briefly>;

/** Those of that name, who is not done yet first, in the order of names. */
export function inOrder(clients: readonly Brief[], typed: string): Brief[] {
  return clients
    .filter(({ client }) => isNamed(client.nickname, typed))
    .sort(
      (a, b) =>
        Number(a.isDone) - Number(b.isDone) ||
        a.client.nickname.localeCompare(b.client.nickname) ||
        a.client.joined_at.localeCompare(b.client.joined_at)
    );
}

/** Whether anything of this client's has come. */
export function hasBegun({ lessons, challenges, objectives }: Brief): boolean {
  return (
    lessons.some(({ isDone }) => isDone) ||
    challenges.some(({ tries }) => tries > 0) ||
    objectives.some(({ answered }) => answered > 0)
  );
}

/** "2 of 3 parts done" */
export function partsText(one: Brief): string {
  if (!hasBegun(one)) return 'not begun';
  const { isDone, lessons, challenges, objectives } = one;
  const parts = [...lessons, ...challenges, ...objectives];
  const done = parts.filter((one) => one.isDone).length;
  return isDone ? 'done' : `${done} of ${parts.length} parts done`;
}

/** What to say first: to the hand where it misses by most of a band, else of the weakest questions. */
export function sayFirst({ challenges, objectives }: Brief) {
  const missed = (ruler: NonNullable<Brief['challenges'][number]['ruler']>) =>
    Math.max(Math.abs(ruler.bias_m), ruler.spread_m) / ruler.band_m;
  const rulers = challenges.flatMap(({ ruler }) => ruler ?? []);
  const [worst] = rulers.sort((a, b) => missed(b) - missed(a));
  const weak = objectives
    .filter(({ backTo }) => backTo !== null)
    .sort((a, b) => a.right / a.answered - b.right / b.answered)[0];
  return { ruler: worst ?? null, backTo: weak?.backTo ?? null };
}
