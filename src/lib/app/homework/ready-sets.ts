import type { Lesson } from '$lib/course';
import type { Objective } from '$lib/course/items';
import { firstDraft, type HomeworkDraft } from './draft';

interface Ready {
  title: string;
  /** About how long it takes a client; tested, since counting questions takes the whole bank. */
  minutes: number;
  lessons: readonly string[];
  challenges: readonly string[];
  objectives: readonly string[];
}

/** What a guide sets most often (common practice, no source): a lesson at most, and one hand. */
const READY: readonly Ready[] = [
  {
    title: 'First time',
    minutes: 14,
    lessons: ['one-foot'],
    challenges: ['exactly-one-foot'],
    objectives: []
  },
  {
    title: 'Hand only',
    minutes: 10,
    lessons: [],
    challenges: ['exactly-one-foot', 'exactly-two-feet'],
    objectives: []
  },
  {
    title: 'Count it down',
    minutes: 14,
    lessons: ['from-the-boat'],
    challenges: ['count-it-down'],
    objectives: ['fall-count']
  },
  { title: 'Hops', minutes: 18, lessons: ['hops'], challenges: ['one-hop'], objectives: ['hops'] }
];

/** Homework that is put together already, to be set as it is or changed. */
export function readySets(
  lessons: readonly Lesson[],
  objectives: readonly Objective[],
  { from, due, note }: Pick<HomeworkDraft, 'from' | 'due' | 'note'>
): { minutes: number; draft: HomeworkDraft }[] {
  return READY.map((ready) => {
    const blank = firstDraft(lessons, objectives, { from, due });
    const offers = blank.offers.map((offer) => ({
      ...offer,
      isSet: ready.lessons.includes(offer.id),
      choices: offer.choices.map((one) => {
        return { ...one, isSet: ready.challenges.includes(one.challenge.id) };
      }),
      objectives: offer.objectives.map((one) => {
        return { ...one, isSet: ready.objectives.includes(one.id) };
      })
    }));
    return { minutes: ready.minutes, draft: { ...blank, title: ready.title, note, offers } };
  });
}
