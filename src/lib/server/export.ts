import { parseSetup } from '../model';
import { planOf, travelOf } from '../practice';
import type { Challenge } from '../scoring';
import {
  csvTable,
  type Cell,
  type ClientProgress,
  type HomeworkPhase,
  type KeptAnswer,
  type KeptTry
} from '../wire';

type Line = Partial<Record<(typeof HEAD)[number], Cell>>;

/** What belongs to tries and what to answers side by side; `kind` says which a line is. */
const HEAD = [
  ...([
    'name',
    'kind',
    'of',
    'title',
    'made_at',
    'received_at',
    'right',
    'agrees',
    'model'
  ] as const),
  ...(['number', 'bait_hidden', 'weight_kg', 'depth_m', 'marks', 'marks_on_phone'] as const),
  ...(['travel_m', 'target_m', 'contact_share', 'guess_m', 'guess_lifted', 'guess_down'] as const),
  ...(['question', 'seed', 'answer', 'came_by'] as const)
];

/** Every try and every answer of every client, one a line. */
export function homeworkTable(clients: readonly ClientProgress[], phase: HomeworkPhase): string {
  const lines = clients.flatMap(({ client: { nickname }, challenges, objectives }) => [
    ...challenges.flatMap(({ challenge, tries }) =>
      tries.map((one, n) => {
        const bait_hidden = planOf(phase, n).isHidden;
        return { name: nickname, number: n + 1, bait_hidden, ...tryLine(challenge, one) };
      })
    ),
    ...objectives.flatMap(({ answers }) =>
      answers.map((one) => ({ name: nickname, ...answerLine(one) }))
    )
  ]);
  return csvTable(HEAD, lines);
}

function tryLine(challenge: Challenge, { sent, graded, received_at }: KeptTry): Line {
  const { bait, water } = parseSetup(challenge.setup);
  return {
    kind: 'try',
    of: challenge.id,
    title: challenge.title,
    weight_kg: toTenthOfGram(bait.mass_kg),
    depth_m: toMillimetre(water.depth_m),
    made_at: sent.at,
    received_at,
    right: graded.passed,
    agrees: graded.agrees,
    model: graded.model,
    marks: graded.marks,
    marks_on_phone: sent.marks,
    travel_m: toMillimetre(graded.travel_m),
    target_m: toMillimetre(travelOf(challenge)?.target_m),
    contact_share: toThousandth(graded.contact),
    guess_m: toMillimetre(sent.guess_m),
    guess_lifted: sent.guess_lifted,
    guess_down: sent.guess_down
  };
}

function answerLine({ sent, graded, received_at }: KeptAnswer): Line {
  return {
    kind: 'answer',
    of: graded.objective,
    made_at: sent.at,
    received_at,
    right: graded.right,
    agrees: graded.agrees,
    model: graded.model,
    question: sent.item,
    seed: sent.seed,
    answer: Array.isArray(sent.given) ? sent.given.join(' ') : sent.given,
    came_by: sent.report
  };
}

const toThousandth = (value: number) => Math.round(value * 1e3) / 1e3;
const toTenthOfGram = (kg: number) => Math.round(kg * 1e4) / 1e4;
/** Finer than the model tells. */
const toMillimetre = (m?: number) => (m === undefined ? null : toThousandth(m));
