import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** How a command is tried: with the least that it can be given, for it is tried at every `npm test`. */
export interface Trial {
  /** What follows the command; each flag that a document names is among it. */
  given?: string;
  stdin?: string;
  /** Words that only a run that did its work says. */
  says: RegExp;
  /** How it may end, where that is not only well. */
  ends?: readonly number[];
  /** The address in what it says once it serves; it is then asked for a page, and stopped. */
  serves?: RegExp;
  /** Another way to give it, tried after the first in the same clone. */
  also?: Trial;
  /** Works on a build, which it makes if there is none: it finds the one that `npm run build` made. */
  needsBuild?: true;
}

const SCENARIO = JSON.stringify({
  water: { depth_m: 4 },
  line: { material: 'fluorocarbon', diameter_m: 0.00033 },
  bait: { mass_kg: 0.021 },
  start: { bait_x_m: 24, slack_m: 0.15 },
  move: { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.35 },
  hold_s: 1
});

/** The session that its own page shows. */
const fitDocs = readFileSync(fileURLToPath(new URL('../../docs/fit.md', import.meta.url)), 'utf8');
const [, SESSION = ''] = /^```json\n([\s\S]*?)^```/m.exec(fitDocs) ?? [];

export const TRIALS: Readonly<Record<string, Trial>> = {
  'npm run build': { says: /The build is in/ },
  'npm start': {
    says: /is running/,
    serves: /this machine\s+(http:\S+)/,
    needsBuild: true,
    also: { given: '-- --https', says: /fingerprint/, serves: /this machine\s+(https:\S+)/ }
  },
  'npm run dev': { given: '-- --port 0', says: /ready in/, serves: /Local:\s+(http:\S+\d)/ },
  'npm run lint': { given: '-- src/lib/model/units.ts', says: /no dependency violations/ },
  'npm run format': { given: '-- src/lib/model/units.ts', says: /units\.ts.*\(unchanged\)/ },
  'npm run test:samples': { given: '-- tests/samples.test.ts', says: /3 passed/ },
  'npm run test:long': { given: '-- --list every-page', says: /Total: [1-9]/, needsBuild: true },
  'npm run trade-check': { given: '-- f2', says: /written/ },
  'npm run simulate': { given: '-- --summary', stdin: SCENARIO, says: /"travel_m":0\.\d/ },
  'npm run fit': {
    stdin: SESSION,
    says: /(?=[^]*"unknowns":)(?=[^]*"tests":)(?=[^]*"next":)(?=[^]*"verdict":)[^]*"held_out":/
  },
  'npm run golden': { says: /, 0 moved/ },
  'npm run check:content': { given: '-- --json safety', says: /"faults":\[\]/ },
  'npm run check:scenarios': { given: '-- 2', says: /2 of 2 scenarios hold/ },
  'npm run errors': { given: '-- 1', says: /1 of 1 seeded scenarios/ },
  'npm run check:rest': { given: '-- 2', says: /2 of 2 within the bounds/ },
  'npm run check:steps': { given: '-- 2', says: /2 of 2 within the bounds/ },
  'npm run check:items': { given: '-- --seeds 1 --generator mood', says: /1 seeds, .* 0 faults/ },
  'npm run items': { given: '-- --seeds 1 --generator mood', says: /"stem":/ },
  'npm run bench': { given: '-- --json ruler', says: /"met":true/ },
  'npm run demo': { says: /guide\/open#\w/ },
  'npm run backup': { given: '-- saved.jsonl', says: /rows are in saved\.jsonl/ },
  'npm run restore': { given: '-- saved.jsonl --deletions /dev/null', says: /rows were put back/ },
  'npm run licences': { given: '-- --check', says: /are written down/ },
  // Where no registry answers it cannot know, and ends so.
  'npm run audit': { says: /Known faults in what is served|NOT AUDITED/, ends: [0, 2] },
  'npm run rollback': { says: /taken back/ },
  'npm run crash-test': { given: '-- --rounds 1', says: /"rounds":1,.*"lost":0,"doubled":0/ },
  'npm run load': {
    given: '-- --phones 1 --clients 1 --over 0 --nodes 1 --json',
    says: /"lost":0/,
    needsBuild: true
  }
};

/** Not run here, and why. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  'npm test': 'it runs these tests, and so would never end',
  'npm run check': 'npm test runs its script as a step of its own, and it takes half a minute',
  'npm run format:check': 'the same',
  'npm run test:commands': 'the same',
  'npm run test:unit': 'the same, and npm run test:samples is tried, which starts the same tests',
  'npm run test:browser': 'the same, and npm run test:long is tried, which finds the same browser',
  'npm run test:e2e': 'the same, and npm run test:long is tried, which reads the same walks',
  'npm run two-nodes':
    'tests/server/two-nodes.test.ts runs its script, where a PostgreSQL is to be had',
  'npm run build:static':
    'a second build of the whole app: npm run test:long makes it and goes through its pages'
};
