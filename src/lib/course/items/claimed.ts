import { basisFaults } from '../basis-faults';
import { bare, isBacked } from '../claims';
import { QUESTION_CLAIMS, type QuestionClaim, type QuestionClaims } from './claims';
import { namedRuns } from './claims/proofs';
import type { Item } from './item';

/** What is said to each answer, the right one included. */
export function repliesOf(answer: Item['answer']): string[] {
  if (answer.form === 'choose') return answer.options.map(({ reply }) => reply);
  if (answer.form === 'order') return [answer.right, answer.reversed, answer.other];
  return [answer.right, answer.other, ...answer.errors.map(({ reply }) => reply)];
}

/** What a question states, sentence by sentence, with a sign for each number and quantity: those are drawn. */
export function statedIn({ answer, explain }: Pick<Item, 'answer' | 'explain'>): string[] {
  return [...repliesOf(answer), explain]
    .flatMap((text) => text.split(/(?<=[.?!]) /))
    .filter((one) => one !== 'Right.' && !one.endsWith('?'))
    .map(drawnOut);
}

/** "# out in # seconds" */
const drawnOut = (text: string) =>
  text.replace(/\{[^{}]*\}|[\d½¼¾⅜⅝⅞]+(?:[.:]\d+)*/g, '#').replace(/#+/g, '#');

/** What a question's claims say, with the same sign for what is drawn. */
export const claimWords = (claims: readonly QuestionClaim[]) =>
  claims.flatMap(({ says }) => says).map((one) => bare(drawnOut(one)));

/**
 * Sentences of a question that nothing is said to stand behind, what is said to follow from an answer that no
 * run decides, and claims that a written question does not make. A question of common practice alone
 * has no claims: all of it is practice.
 */
export function claimedFaults(item: Item, claims = QUESTION_CLAIMS[item.source]): string[] {
  const isPractice = item.evidence.is === 'practice';
  if (!claims) return isPractice ? [] : ['nothing is claimed of what it states'];
  const stated = statedIn(item);
  const words = claimWords(claims);
  const unbacked = stated.filter((one) => !isBacked(bare(one), words));
  const unanswered = isPractice && claims.some(({ basis }) => basis === 'answer');
  // A drawn question does not say all its sentences for each seed.
  const unsaid = item.seed > 0 ? [] : words.filter((says) => !isSaid(says, stated));
  return [
    ...unbacked.map((one) => `nothing stands behind it: ${one}`),
    ...(unanswered ? ['no run decides its answer, so nothing follows from it'] : []),
    ...unsaid.map((says) => `it is claimed and not said: ${says}`)
  ];
}

export const isSaid = (says: string, stated: readonly string[]) =>
  stated.some((one) => one.includes(says));

/** What the named runs do not show of what questions say, each by its words; runs are made, so it takes a while. */
export function claimedRunFaults(all: QuestionClaims = QUESTION_CLAIMS): string[] {
  const bases = Object.entries(all).flatMap(([source, claims]) =>
    claims.flatMap(({ says, basis }) => (basis === 'answer' ? [] : [{ source, says, basis }]))
  );
  return bases.flatMap(({ source, says, basis }) =>
    basisFaults(basis, namedRuns()).map((fault) => `${source}, "${[says].flat()[0]}": ${fault}`)
  );
}
