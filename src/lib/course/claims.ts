import type { Basis } from './basis';
import { basisFaults } from './basis-faults';
import type { Claim, Lesson, ShownRun } from './lesson';
import { wideFaults } from './said-numbers';
import { sentencesOf } from './voice';

/** The prediction's run, as a basis names it. */
const QUESTION = 'question';

/** What the lesson states, with what it rests on: its claims, and what its signs mean. */
export function claimsOf({ claims, sections }: Lesson): Claim[] {
  const cues = sections.flatMap((section) => (section.kind === 'feel' ? section.cues : []));
  return [
    ...claims.flatMap(({ says, basis }) => [says].flat().map((one) => ({ says: one, basis }))),
    ...cues.map(({ sign, means, basis }) => ({ says: `${sign}: ${means}`, basis }))
  ];
}

/** What a lesson states and its runs do not show, and claims that it does not state; each by its words. */
export function claimFaults(lesson: Lesson): string[] {
  const runs = runsOf(lesson);
  return [
    ...unsaid(lesson).map((says) => `"${says}": the lesson does not say so`),
    ...claimsOf(lesson).flatMap(({ says, basis }) =>
      [...basisFaults(basis, runs), ...wideBasis(says, basis)].map((fault) => `"${says}": ${fault}`)
    ),
    ...lesson.sections.flatMap((section) =>
      section.kind === 'predict'
        ? section.question.options.flatMap(({ says, holds }) => wideFaults(says, holds))
        : []
    )
  ];
}

/** What a run is said to show in numbers is what it is held against. */
function wideBasis(says: string, basis: Basis): string[] {
  return typeof basis === 'object' && 'run' in basis ? wideFaults(says, basis.holds ?? {}) : [];
}

/** Every run of the lesson by its name. */
export function runsOf({ sections, challenges, proofs = [] }: Lesson): Map<string, ShownRun> {
  const questions = sections.flatMap((section) =>
    section.kind === 'predict' ? [{ id: QUESTION, run: section.question.run }] : []
  );
  const demos = sections.flatMap((section) => (section.kind === 'see' ? section.demos : []));
  const references = challenges.map(({ id, setup, plane, start, reference, hold_s }) => ({
    id,
    run: { setup, plane, start, move: reference, hold_s }
  }));
  const all = [...questions, ...demos, ...proofs, ...references];
  return new Map(all.map(({ id, run }) => [id, run]));
}

function unsaid({ claims, proofs: _, sets_up = [], ...said }: Lesson): string[] {
  const words = JSON.stringify(said);
  return [...claims.flatMap(({ says }) => says), ...sets_up].filter(
    (says) => !words.includes(JSON.stringify(says).slice(1, -1))
  );
}

/**
 * Sentences that neither a run, nor a published value, nor common practice stands behind. What sets a task's
 * water or asks for a move is marked so in the lesson, word for word; its numbers are held against the
 * run's (see set-up.ts).
 */
export function unbacked(lesson: Lesson): string[] {
  const backed = lesson.claims.flatMap(({ says }) => says).map(bare);
  return [...statementsOf(lesson).flatMap(sentencesOf), ...besideIt(lesson), ...cuesGoOn(lesson)]
    .filter((one) => one !== 'Right.' && !one.endsWith('?') && !lesson.sets_up?.includes(one))
    .filter((one) => !isBacked(bare(one), backed));
}

/** Claimed whole, or in parts that leave nothing stated between them; all of them without the stop at their ends. */
export function isBacked(sentence: string, backed: readonly string[]): boolean {
  if (backed.some((says) => says.includes(sentence))) return true;
  const parts = backed
    .filter((says) => sentence.includes(says))
    .sort((a, b) => b.length - a.length);
  const left = parts.reduce((rest, says) => rest.replace(says, ' … '), sentence);
  return parts.length > 0 && !doesState(left);
}

/** What a cue states after the first sentence of what it means: its basis is of that one. */
function cuesGoOn({ sections }: Lesson): string[] {
  const cues = sections.flatMap((section) => (section.kind === 'feel' ? section.cues : []));
  return cues.flatMap(({ means, basis }) =>
    basis === 'practice' ? [] : sentencesOf(means).slice(1).filter(doesState)
  );
}

const doesState = (one: string) => STATES.test(one) || STATES_TOO.test(one);

/** A verb that says how something is; without one, words name a move, a thing or a place. */
const STATES =
  /\b(is|are|was|were|isn’t|can’t|doesn’t|does|goes|takes|makes|pulls|needs|weighs|holds|crosses|swings|stretches|keeps|moves|feels|has|gets|comes|loads|lets|ticks|tugs|hangs|catches|stays|wore|brings?|silence|thicker)\b|\b(it|that|there|here)’s\b|’re\b/i;
/**
 * The same where its verb is in no list: a word in -s before what it acts on or where it goes ("cold water
 * slows a jig"), or a comparison ("thin lines fall faster").
 */
const STATES_TOO =
  /^(?:[\w’-]+ ){1,5}?[a-z’-]{2,}(?<![s’])s (?:an?|the|your|it|you|them|less|more|most|nothing|up|down|in|out|off|away|back|over|toward|[a-z]+er)\b|\b(?:faster|slower|sooner|later|farther|higher|lower|heavier|better|deeper|steeper|longer|shorter|less|more)[.,:;]?(?= |$)/i;
/** What is stated beside what a lesson is about: in set-ups, hints, captions, tasks and drills. */
function besideIt({ sections, challenges }: Lesson): string[] {
  const said = sections.flatMap((section) => {
    if (section.kind === 'predict')
      return [section.text, section.question.ask, section.question.hint ?? ''];
    if (section.kind === 'see')
      return [section.text ?? '', ...section.demos.map(({ caption }) => caption)];
    if (section.kind === 'field') return [section.text ?? '', ...section.needs, ...section.steps];
    return section.kind === 'try' ? [section.text ?? ''] : [];
  });
  return [...said, ...challenges.map(({ ask }) => ask)].flatMap(sentencesOf).filter(doesState);
}

function statementsOf({ about, sections }: Lesson): string[] {
  const replies = sections.flatMap((section) =>
    section.kind === 'predict' ? section.question.options.map(({ reply }) => reply) : []
  );
  const felt = sections.flatMap((section) => (section.kind === 'feel' ? [section.text ?? ''] : []));
  return [about, ...replies, ...felt];
}

/** Without the stop at its end, so that a part of a sentence can be claimed. */
export const bare = (sentence: string) => sentence.replace(/[.:;]$/, '');
