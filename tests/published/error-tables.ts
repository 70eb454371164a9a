import { percentile } from '../../bench/metric';
import { MODEL_CASES } from '../../bench/model/cases';
import { MODEL_VERSION, parseScenario, simulateScenario } from '../../src/lib/model';
import { bandOf } from '../../src/lib/scoring';
import { differenceOf, isWithin, waitCase } from '../model/waits';
import { peerCase, peerDifferenceOf } from './peer-cases';

/** The one file of the model's errors: the docs name it, the app's page shows it. */
export const ERRORS_FILE = 'docs/model-errors.md';
export const MODEL_LINE = `Made by \`npm run errors\` with model ${MODEL_VERSION}.`;

export const WAITS = 200;
export const PEERS = 80;
/** Travels below this have no share of themselves worth the name, m: slack that is taken up, no more. */
const LEAST_TRAVEL_M = 0.01;

type Row = readonly [what: string, values: readonly number[], digits: number];

const percent = (shares: readonly number[]) => shares.map((share) => 100 * share);
const milli = (values: readonly number[]) => values.map((value) => 1000 * value);

function errorTable(rows: readonly Row[]): string[] {
  return [
    '| | median | nine in ten | worst |',
    '| --- | --- | --- | --- |',
    ...rows.map(([what, values, digits]) => {
      const cells = [0.5, 0.9, 1].map((share) => percentile(values, share).toFixed(digits));
      return `| ${what} | ${cells.join(' | ')} |`;
    })
  ];
}

/** Waiting a minute before the move, over all kinds of bottom and line. */
export function waitLines(count: number): string[] {
  const all = Array.from({ length: count }, (_, n) => differenceOf(waitCase(n)));
  const within = all.filter(isWithin).length;
  return [
    `${within} of ${count} seeded scenarios come out the same after a minute’s wait before the move: travel to 0.5 % or 1 mm, height to 2 % or 2 mm, pull to 1 % or 0.01 N.`,
    '',
    ...errorTable([
      ['Travel, mm', milli(all.map(({ travel_m }) => travel_m.by)), 2],
      ['Height, mm', milli(all.map(({ height_m }) => height_m.by)), 2],
      ['Pull, mN', milli(all.map(({ pull_N }) => pull_N.by)), 1]
    ])
  ];
}

/** Beside the project's own explicit scheme, over level ground. */
export function peerLines(count: number): string[] {
  const all = Array.from({ length: count }, (_, n) => ({
    scenario: peerCase(n),
    ...peerDifferenceOf(peerCase(n))
  }));
  const moved = all.filter(({ travel, travel_m }) => travel_m / travel >= LEAST_TRAVEL_M);
  const isNear = (one: (typeof all)[number]) =>
    (one.travel < 0.02 || one.travel_m < 0.002) && one.pull < 0.03;
  return [
    `${count} random casts on level ground; ${all.filter(isNear).length} agree to 2 % (or 2 mm) in travel and 3 % in pull.`,
    '',
    ...errorTable([
      [`Travel, % (${moved.length} that moved 1 cm)`, percent(moved.map((one) => one.travel)), 2],
      ['Travel, mm', milli(all.map((one) => one.travel_m)), 1],
      ['Height, mm', milli(all.map((one) => one.height_m)), 1],
      ['Peak pull, %', percent(all.map((one) => one.pull)), 2]
    ])
  ];
}

/** Moves whose bands are told: what people do most. */
export const BANDED = ['lift of an hour', 'slow sweep', 'fast sweep', 'three hops'] as const;

/** What slack, drag area and planing leave open of one move. */
export function bandLine(name: (typeof BANDED)[number]): string {
  const scenario = parseScenario(MODEL_CASES[name]);
  const runs = new Map<string, ReturnType<typeof simulateScenario>>();
  const run = (one: typeof scenario) => {
    const key = JSON.stringify([one.start, one.bait]);
    const known = runs.get(key) ?? simulateScenario(one);
    runs.set(key, known);
    return known;
  };
  const travel = bandOf(scenario, (one) => run(one).travel_m);
  const height = bandOf(scenario, (one) => run(one).peak_height_m);
  const pull = bandOf(scenario, (one) => run(one).peak_tip_tension_N);
  const cm = ({ nominal, half }: typeof travel) =>
    `${(100 * nominal).toFixed(0)} ± ${(100 * half).toFixed(0)}`;
  return `| ${name} | ${cm(travel)} | ${cm(height)} | ${pull.nominal.toFixed(2)} ± ${pull.half.toFixed(2)} |`;
}

/** The whole file. @param waits @param peers how many of each are run */
export function errorsDocument(waits: number, peers: number): string {
  return [
    '# Errors and bands of the model',
    '',
    MODEL_LINE,
    '',
    '## Is the start at rest',
    '',
    ...waitLines(waits),
    '',
    '## Beside an explicit scheme of our own',
    '',
    'The same physics by the plainest means: 20 µs steps that share no line with the solver.',
    '',
    ...peerLines(peers),
    '',
    '## What nobody knows makes this much',
    '',
    'A 21 g jig, 4 m deep, 24 m out. Drag area half to double, slack none to double, planing 0 to 0.4.',
    '',
    '| Move | Travel, cm | Height, cm | Pull, N |',
    '| --- | --- | --- | --- |',
    ...BANDED.map(bandLine),
    ''
  ].join('\n');
}
