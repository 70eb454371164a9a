import { findChallenge, loadLessons } from '../src/lib/course';
import { seededRandom } from '../src/lib/course/seeded-random';
import { MODEL_VERSION, type RodInput } from '../src/lib/model';
import { gradeTry, type Challenge } from '../src/lib/scoring';
import { assignmentOf, createAssignment } from '../src/lib/server/assignments';
import { enter } from '../src/lib/server/clients';
import { takeSent } from '../src/lib/server/homework';
import { createSpace, guideOf, startSession } from '../src/lib/server/spaces';
import { openStore, placeFrom } from '../src/lib/server/store';
import { newToken } from '../src/lib/server/token';

/** Invented clients: how far each turns the rod, degrees, and how evenly. */
const CLIENTS = [
  { name: 'Ina', turn_deg: 10, spread_deg: 1 },
  { name: 'Bo', turn_deg: 17, spread_deg: 2 },
  { name: 'Wim from the jetty', turn_deg: 9, spread_deg: 6 }
];
const TRIES = 8;
const MINUTE_MS = 60_000;

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

const task = {
  title: 'Before Saturday',
  note: 'Eight slow ones. Look at the rod, not at the screen.',
  lessons: ['one-foot'],
  challenges: [challenge],
  tries: TRIES,
  due: null
};
const id = await createAssignment(db, guide, task, now.toISOString());
const share = (await assignmentOf(db, guide, id))?.share ?? '';
for (const client of CLIENTS) {
  const token = newToken();
  await enter(db, share, token, client.name, now.toISOString());
  for (let n = 0; n < TRIES; n++) {
    const turn_deg = client.turn_deg + client.spread_deg * (2 * random() - 1);
    const at = new Date(now.getTime() - (TRIES - n) * MINUTE_MS).toISOString();
    await takeSent(db, share, token, tryOf(challenge, turn_deg, at), at);
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
