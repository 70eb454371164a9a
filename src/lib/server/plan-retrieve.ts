import { findChallenge, type Lesson, type Retrieve } from '../course';
import { useOn } from '../course/retrieves/use-on';
import type { GroundKind } from '../model';
import type { Conditions } from '../wire';

/** Nobody sees the jig down there: the line that is reeled up says how far it came. Common practice, no source. */
const ONE_FOOT = [
  'Ink a dot on the line at the first guide. Sweep the tip {1 ft|30 cm}. Call how far the jig came.',
  'Rod back, reel up the slack: the dot moved as far as the jig.'
];

/** What a drag over a rough bottom tells while the jig is down, as the lesson on bottoms has it. */
const DOWN: Partial<Record<GroundKind, string>> = {
  gravel: 'Fine ticks',
  'chunk rock': 'Knocks and catches',
  boulders: 'A long load, then a free drop',
  'shell bed': 'Crunch and small catches'
};

function feelOf({ name, feel }: Retrieve, ground: GroundKind): string {
  const down = name === 'drag' && DOWN[ground];
  return down
    ? `${down}: it’s down. Light and smooth: it’s up.`
    : `What to feel for: ${lowerFirst(feel)}`;
}

/** Of the lesson's task what the boat has otherwise; on a screen nobody waits a minute. */
const AFLOAT: Partial<Record<string, readonly string[]>> = {
  drag: ONE_FOOT,
  'dead-stick': ['Drag about {1 ft|30 cm}. Do nothing for a minute. Drag on.']
};
/** The lesson's own depth, where its task names it: the day has another. */
const OWN_DEPTH = /^In \{[^}]*\}, /;

/** What a sheet says of a retrieve: when it is used, the task, and what it feels like on this bottom. */
export function retrieveAfloat(
  retrieve: Retrieve,
  conditions: Conditions,
  lessons: readonly Lesson[]
) {
  const [id] = retrieve.challenges;
  const lesson = lessons.find(({ challenges }) => challenges.some((one) => one.id === id));
  const challenge = findChallenge(id, lessons);
  if (!lesson || !challenge) throw new Error(`retrieve ${retrieve.name}: no challenge ${id}`);
  const task = AFLOAT[retrieve.name] ?? [upperFirst(challenge.ask.replace(OWN_DEPTH, ''))];
  return {
    why: useOn(retrieve, conditions),
    steps: [...task, feelOf(retrieve, conditions.ground)],
    lesson: lesson.id
  };
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
const upperFirst = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
