import { findChallenge, loadLessons } from '../src/lib/course';
import { itemOf, judgeAnswer, SOURCES, type Answer, type Given } from '../src/lib/course/items';
import { FOOT_M, INCH_M, MODEL_VERSION, seededRandom, type RodInput } from '../src/lib/model';
import { parseAssignment } from '../src/lib/practice';
import { LAWN_DRAGS, type Report, type SubmittedAnswer } from '../src/lib/wire';
import { gradeTry, type Challenge } from '../src/lib/scoring';
import { assignmentOf, createAssignment } from '../src/lib/server/assignments';
import { enter } from '../src/lib/server/clients';
import { takeSent } from '../src/lib/server/homework';
import { createSpace, guideOf, startSession } from '../src/lib/server/spaces';
import { openStore, placeFrom } from '../src/lib/server/store';
import { newToken } from '../src/lib/server/token';
import './told-plainly';

/**
 * Invented clients: how far each turns the rod, degrees, how evenly, what share each knows, and how far a
 * real rod drags on the lawn for a foot meant, feet.
 */
const CLIENTS = [
  { name: 'Ina', turn_deg: 10, spread_deg: 1, knows: 0.95, lawn_ft: 1.1, says: '' },
  {
    name: 'Bo',
    turn_deg: 17,
    spread_deg: 2,
    knows: 0.4,
    lawn_ft: 1.7,
    says: 'Why is mine always too far?'
  },
  { name: 'Wim from the jetty', turn_deg: 9, spread_deg: 6, knows: 0.8, lawn_ft: 1.3, says: '' }
];
const OBJECTIVES = ['one-foot', 'bottom-contact'];
const TRIES = 8;
const QUESTIONS = 3;
const MINUTE_MS = 60_000;
/** No phone sends what is invented here. */
const HERE = 'demo';

const random = seededRandom(6);
const store = await openStore(placeFrom(process.env));
const { db } = store;
const now = new Date();
const secret = await createSpace(db, 'Reedmere Guiding (demo)', now.toISOString());
const guide = await guideOf(
  db,
  await startSession(db, secret, now.toISOString()),
  now.toISOString()
);
const challenge = findChallenge('exactly-one-foot', loadLessons());
if (!guide || !challenge) throw new Error('The demo needs a guide and “exactly-one-foot”.');

const task = parseAssignment({
  title: 'Before Saturday (demo)',
  from: 'Reedmere Guiding',
  note: 'Eight slow ones. Look at the rod, not at the screen.',
  lessons: ['one-foot'],
  challenges: [challenge],
  objectives: OBJECTIVES,
  questions: QUESTIONS,
  tries: TRIES,
  phase: 'half_seen',
  due: null,
  lawn: { meant_m: FOOT_M }
});
const id = await createAssignment(db, guide, task, now.toISOString());
const share = (await assignmentOf(db, guide, id))?.share ?? '';
for (const client of CLIENTS) {
  const token = newToken();
  const entered = new Date(now.getTime() - 2 * TRIES * MINUTE_MS).toISOString();
  await enter(db, share, token, client.name, entered);
  for (let n = 0; n < TRIES; n++) {
    const turn_deg = client.turn_deg + client.spread_deg * (2 * random() - 1);
    const at = new Date(now.getTime() - (TRIES - n) * MINUTE_MS).toISOString();
    await takeSent(db, share, token, tryOf(challenge, turn_deg, at), at, HERE);
  }
  const at = now.toISOString();
  const drags = { kind: 'lawn', id: newToken(), moved_m: dragsOf(client.lawn_ft), at } as const;
  await takeSent(db, share, token, drags, at, HERE);
  if (client.says) {
    const word = { kind: 'word', id: newToken(), text: client.says, at } as const;
    await takeSent(db, share, token, word, at, HERE);
  }
  for (const objective of OBJECTIVES) {
    const sources = SOURCES.filter((one) => one.objective === objective);
    for (let n = 0; n < QUESTIONS; n++) {
      const { item, isGenerated } = sources[n % sources.length];
      const at = new Date(now.getTime() - (QUESTIONS - n) * MINUTE_MS).toISOString();
      const sent = answerOf(item, isGenerated ? n + 1 : 0, random() < client.knows, at);
      await takeSent(db, share, token, sent, at, HERE);
    }
  }
}
await store.close();
console.log(`The demo’s space opens with this, behind the address of your server:`);
console.log(`  /guide/open#${secret}`);

function tryOf(of: Challenge, turn_deg: number, at: string) {
  const { elevation_deg, azimuth_deg } = of.start;
  const azimuths = Array.from({ length: 300 }, (_, i) => azimuth_deg + (turn_deg * i) / 299);
  const input: RodInput = { kind: 'rod_input', rate_Hz: 100, elevation_deg, azimuth_deg: azimuths };
  const { marks } = gradeTry(of, input).grade;
  const kind = 'try' as const;
  return { kind, id: newToken(), challenge: of.id, input, model: MODEL_VERSION, at, marks };
}

/** To the half inch, as a tape is read. */
function dragsOf(mean_ft: number): number[] {
  const inches = Array.from({ length: LAWN_DRAGS }, () => 12 * mean_ft + 6 * (random() - 0.5));
  return inches.map((inch) => (Math.round(2 * inch) / 2) * INCH_M);
}

function answerOf(name: string, seed: number, knows: boolean, at: string): SubmittedAnswer {
  const { answer } = itemOf(name, seed);
  const given = knows ? answer.key : wrongOf(answer);
  const { right } = judgeAnswer(answer, given);
  const report: Report = knows ? 'knew' : 'guessed';
  return {
    ...{ kind: 'answer', id: newToken(), item: name, seed, right, report, at },
    ...{ given: typeof given === 'object' ? [...given] : given, model: MODEL_VERSION }
  };
}

function wrongOf(answer: Answer): Given {
  if (answer.form === 'order') return [...answer.key].reverse();
  if (answer.form === 'mark') return answer.most;
  return answer.options.find(({ id }) => id !== answer.key)?.id ?? answer.key;
}
