import { AIM, expectedShare, ratingsOf, UNRATED } from './elo';
import type { Days } from './days';
import { memoriesOf, recall } from './memory';
import type { StoredAnswer } from '../../wire';

/** What can be asked: a generator or a fixed item. */
export interface Askable {
  item: string;
  /** Questions of one kind are not asked one after the other. */
  kind: string;
  objective: string;
  /** The same of two that ask for the same thing: a day has one of them. */
  thing: string;
  /** Share right by guessing. */
  chance: number;
}

export interface DailySet<Q extends Askable = Askable> {
  /** In the order in which they are asked. */
  items: Q[];
  due: number;
  /** Of those due, how many were answered wrong the last time. */
  missed: number;
  fresh: number;
}

/** Questions a day: five minutes. */
export const SET_SIZE = 8;
/** Of these at most so many new ones, unless nothing is due: each new one comes back again and again. */
const MOST_FRESH = 4;

/**
 * The questions for today: first what was missed or is about to be forgotten, then new ones that
 * come closest to the share right that is aimed at. Days that were missed change nothing but what is
 * due; the set never grows. It is what the day began with, less what was answered since: whoever comes
 * back goes on with the question that was left. `isOpen` says which new ones ask what the learner has learnt.
 */
export function dailySet<Q extends Askable>(
  all: readonly Q[],
  answers: readonly StoredAnswer[],
  { today, of: dayOf }: Days,
  isOpen: (one: Q) => boolean = () => true
): DailySet<Q> {
  const before = answers.filter(({ at }) => dayOf(at) < today);
  const done = answers.filter(({ at }) => dayOf(at) === today);
  const asked = all.filter(({ item }) => done.some((one) => one.item === item));
  const memories = memoriesOf(before, dayOf);
  const due = all
    .flatMap((one) => {
      const memory = memories.get(one.item);
      return memory && memory.due_day <= today ? [{ one, share: recall(memory, today) }] : [];
    })
    .sort((a, b) => a.share - b.share || byName(a.one, b.one))
    .map(({ one }) => one)
    .filter((one, i, earlier) => !isTwin(one, earlier.slice(0, i)))
    .slice(0, SET_SIZE);
  const places = due.length === 0 ? SET_SIZE : Math.min(MOST_FRESH, SET_SIZE - due.length);
  const planned = interleaved([...due, ...freshOnes(all, before, isOpen, places, due)]);
  const items = planned
    .filter((one) => !asked.includes(one) && !isTwin(one, asked))
    .slice(0, Math.max(0, SET_SIZE - done.length));
  const left = items.filter((one) => due.includes(one));
  const missed = left.filter(({ item }) => !isLastRight(item, answers)).length;
  return { items, due: left.length, missed, fresh: items.length - left.length };
}

/** Whether one of these asks for the same thing in other words. */
function isTwin({ item, thing }: Askable, others: readonly Askable[]): boolean {
  return others.some((one) => one.thing === thing && one.item !== item);
}

function isLastRight(item: string, answers: readonly StoredAnswer[]): boolean {
  const own = answers.filter((one) => one.item === item);
  return own.reduce((last, one) => (one.at >= last.at ? one : last)).right;
}

/** What a second question on one objective, or of one kind, counts against it in the choice. */
const SAME_OBJECTIVE = 1;
const SAME_KIND = 0.5;

/** Up to `places` new ones about what was learnt: the closest to the aim, and a mixture. */
function freshOnes<Q extends Askable>(
  all: readonly Q[],
  answers: readonly StoredAnswer[],
  isOpen: (one: Q) => boolean,
  places: number,
  taken: readonly Q[]
): Q[] {
  const chances = new Map(all.map(({ item, chance }) => [item, chance]));
  const { learner, items } = ratingsOf(answers, (item) => chances.get(item) ?? 0);
  const chosen: Q[] = [];
  const against = ({ item, chance, objective, kind }: Askable) =>
    Math.abs(expectedShare(learner, items.get(item) ?? UNRATED, chance) - AIM.best) +
    SAME_OBJECTIVE * chosen.filter((one) => one.objective === objective).length +
    SAME_KIND * chosen.filter((one) => one.kind === kind).length;
  const left = all.filter((one) => !items.has(one.item) && isOpen(one));
  while (chosen.length < places && left.length > 0) {
    const scores = left.map(against);
    const [next] = left.splice(scores.indexOf(Math.min(...scores)), 1);
    if (!isTwin(next, [...taken, ...chosen])) chosen.push(next);
  }
  return chosen;
}

/** The same questions, with no two of a kind or an objective side by side where that can be had. */
export function interleaved<Q extends Askable>(items: readonly Q[]): Q[] {
  const left = [...items];
  const order: Q[] = [];
  while (left.length > 0) {
    const last = order[order.length - 1];
    const likeness = (one: Askable) =>
      last ? Number(one.kind === last.kind) + 2 * Number(one.objective === last.objective) : 0;
    const least = Math.min(...left.map(likeness));
    order.push(
      ...left.splice(
        left.findIndex((one) => likeness(one) === least),
        1
      )
    );
  }
  return order;
}

function byName(a: Askable, b: Askable): number {
  return a.item < b.item ? -1 : 1;
}
