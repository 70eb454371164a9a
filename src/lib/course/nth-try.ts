import { seededRandom, type Move, type Random } from '../model';
import type { Challenge } from '../scoring';

/** So many of the tries go without a bite: waiting is then right, and a strike is not. */
const BLANK_PART = 0.25;
/** Seeds of two challenges lie so far apart. */
const SEEDS_APART = 1000;
/** Stretches of a kind of bottom that a try may lie on. */
const MOST_SEED = 999;

const NTH = /^(.+)-try-(\d{1,3})$/;

/**
 * A challenge as its nth try, from 1 on, meets it: fish bite when they please, at a time that follows
 * from the challenge and the number of the try, or not at all; of bottoms that look alike it has one.
 * Without these, and for 0, it is the challenge itself. Its id says which try it is, so that a stored try is graded as it was made.
 */
export function nthTry(challenge: Challenge, n: number): Challenge {
  if (!isVaried(challenge) || n === 0) return challenge;
  const random = seededRandom(numberOf(challenge.id) * SEEDS_APART + n);
  const varied = challenge.look_alikes ? onOne(challenge, random) : bitten(challenge, random);
  return { ...varied, id: `${challenge.id}-try-${n}` };
}

/** Whether each try of it meets something else. */
export function isVaried({ bite_between_s, look_alikes }: Challenge): boolean {
  return bite_between_s !== undefined || look_alikes !== undefined;
}

/** Whether nothing bites in this try of one that is about bites. */
export function isBlank({ bite_between_s, setup }: Challenge): boolean {
  return bite_between_s !== undefined && !setup.bites?.length;
}

/** On one of the bottoms that are not told apart by eye. */
function onOne(challenge: Challenge, random: Random): Challenge {
  const { look_alikes = [], setup, goals } = challenge;
  const { ground, travel_m, reference } = look_alikes[Math.floor(random() * look_alikes.length)];
  const seed = 1 + Math.floor(random() * MOST_SEED);
  return {
    ...challenge,
    setup: { ...setup, bottom: { ...setup.bottom, ground: { kind: ground, seed } } },
    goals: goals.map((goal) => (goal.kind === 'travel' ? { ...goal, target_m: travel_m } : goal)),
    reference
  };
}

function bitten(challenge: Challenge, random: Random): Challenge {
  const { bite_between_s: between_s = [0, 0], setup, goals } = challenge;
  // Where a distance, or a sweep on a tight line, is asked after the bite, it could not be done without one.
  const needsBite = goals.some(({ kind }) => kind === 'travel' || kind === 'came_tight');
  const isBlank = random() < BLANK_PART && !needsBite;
  const [first_s, last_s] = between_s;
  const t_s = Math.round(100 * (first_s + random() * (last_s - first_s))) / 100;
  // Where nothing bites it waits until nothing could.
  const later_s = (isBlank ? last_s : t_s) - (setup.bites?.[0].t_s ?? t_s);
  const bites = isBlank ? [] : setup.bites?.map((bite) => ({ ...bite, t_s }));
  return {
    ...challenge,
    setup: { ...setup, bites },
    ...(isBlank ? { if_bitten: challenge.reference, fish: setup.bites?.[0]?.kind } : {}),
    reference: (isBlank && challenge.if_blank) || answering(challenge.reference, later_s, isBlank)
  };
}

/** The challenge's id without the number of the try. */
export function taskIdOf(id: string): string {
  return NTH.exec(id)?.[1] ?? id;
}

/** The challenge of that id among these, or its nth try; undefined where there is none. */
export function tryNamed(id: string, challenges: readonly Challenge[]): Challenge | undefined {
  const exact = challenges.find((challenge) => challenge.id === id);
  const [, task, n] = NTH.exec(id) ?? [];
  if (exact || task === undefined) return exact;
  const challenge = challenges.find((one) => one.id === task);
  return challenge && isVaried(challenge) ? nthTry(challenge, Number(n)) : undefined;
}

/** The reference waits and then answers: it waits so much longer, and answers a bite only. */
function answering(reference: Move, later_s: number, isBlank: boolean): Move {
  if (reference.kind !== 'sequence') return reference;
  const wait = reference.moves.map(({ kind }) => kind).lastIndexOf('pause');
  const moves = reference.moves.map((step, i) =>
    i === wait && step.kind === 'pause' ? { ...step, duration_s: step.duration_s + later_s } : step
  );
  return { ...reference, moves: isBlank ? moves.slice(0, wait + 1) : moves };
}

function numberOf(name: string): number {
  return [...name].reduce((sum, letter) => (31 * sum + letter.charCodeAt(0)) % 65_521, 7);
}
