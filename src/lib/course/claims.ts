import type { MeasureName, SignName } from './items/figures';
import { isAbove, measured } from './items/measure';
import { isCertainSign } from './items/sign';
import type { Unknowns } from '../scoring';
import type { Basis, Claim, Lesson, ShownRun } from './lesson';

type RunBasis = Extract<Basis, { run: string }>;

/** The prediction's run, as a basis names it. */
const QUESTION = 'question';

/** What the lesson states, with what it rests on: its claims, and what its signs mean. */
export function claimsOf({ claims, sections }: Lesson): Claim[] {
  const cues = sections.flatMap((section) => (section.kind === 'feel' ? section.cues : []));
  return [
    ...claims,
    ...cues.map(({ sign, means, basis }) => ({ says: `${sign}: ${means}`, basis }))
  ];
}

/** What a lesson states and its runs do not show, and claims that it does not state; each by its words. */
export function claimFaults(lesson: Lesson): string[] {
  const runs = runsOf(lesson);
  return [
    ...unsaid(lesson).map((says) => `"${says}": the lesson does not say so`),
    ...claimsOf(lesson).flatMap(({ says, basis }) =>
      basisFaults(basis, runs).map((fault) => `"${says}": ${fault}`)
    )
  ];
}

/** Every run of the lesson by its name. */
function runsOf({ sections, challenges, proofs = [] }: Lesson): Map<string, ShownRun> {
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

function unsaid({ claims, proofs: _, ...said }: Lesson): string[] {
  const words = JSON.stringify(said);
  return claims
    .map(({ says }) => says)
    .filter((says) => !words.includes(JSON.stringify(says).slice(1, -1)));
}

function basisFaults(basis: Basis, runs: Map<string, ShownRun>): string[] {
  if (basis === 'practice') return [];
  const names = 'run' in basis ? [basis.run] : basis.of;
  const missing = names.filter((id) => !runs.has(id));
  if (missing.length > 0) return [`there is no run called ${missing.join(', ')}`];
  const shown = names.map((id) => runs.get(id) as ShownRun);
  const { unknowns = 'slack and drag' } = basis;
  if ('most' in basis) {
    const values = shown.map((run) => measured(run, basis.most, unknowns));
    const isRow = values.slice(1).every((one, i) => isAbove(values[i], one, basis.most));
    const figures = values.map(({ nominal }) => nominal.toFixed(3)).join(', ');
    return isRow ? [] : [`the runs do not show the most first: ${figures}`];
  }
  return [
    ...signFaults(basis.sign, shown[0], unknowns),
    ...holdFaults(basis.holds ?? {}, shown[0], unknowns)
  ];
}

function signFaults(sign: SignName | undefined, run: ShownRun, unknowns: Unknowns): string[] {
  const isSeen = sign === undefined || isCertainSign(run, { seen: sign }, 'seen', unknowns);
  return isSeen ? [] : [`the run does not show ${sign}`];
}

function holdFaults(
  holds: NonNullable<RunBasis['holds']>,
  run: ShownRun,
  unknowns: Unknowns
): string[] {
  return Object.entries(holds).flatMap(([name, [low, high]]) => {
    const { nominal, corners } = measured(run, name as MeasureName, unknowns);
    const beyond = [nominal, ...corners].filter((value) => value < low || value > high);
    const figures = beyond.map((value) => value.toFixed(3)).join(', ');
    return beyond.length === 0 ? [] : [`${name} is ${figures}, not ${low} to ${high}`];
  });
}
