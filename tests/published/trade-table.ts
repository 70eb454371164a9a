import { sessionLines } from './trade-session';
import { MODEL_VERSION } from '../../src/lib/model';
import {
  AS_SAID,
  drawsOf,
  jointFit,
  MOST_PLANING,
  spreadOf,
  TRADE_CASES,
  type Holding,
  type Spread,
  type TradeCase,
  type TradeDraw
} from './trade-cases';

/** Share of planing at fall speed, from a jig's attitude: the same for every weight (docs/planing.md). */
export const DERIVED_PLANING = 0.16;
/** Draws a row: the ends of a 5–95 % band then stand on two draws each, its middle on forty. */
export const DRAWS = 41;
/** 30 to 60 yd: longer than the trade's own casts. */
const LONG_CASTS_M = [27, 55] as const;

/** The columns of the table: planing left out, derived, strong, or drawn from what is possible. */
export const COLUMNS: readonly { name: string; planing: (drawn: number) => number }[] = [
  { name: '0', planing: () => 0 },
  { name: `${DERIVED_PLANING}`, planing: () => DERIVED_PLANING },
  { name: '0.3', planing: () => 0.3 },
  { name: `0–${MOST_PLANING}`, planing: (drawn) => drawn }
];

const HOUR_DEG = 30;
/** End angles for a said 30/60/90° that would bring the lifts to what is said. */
const MISREAD_DEG = [18, 35, 76];

export const HOLDINGS: readonly { name: string; holding: Holding; draws?: TradeDraw[] }[] = [
  { name: 'as said: from level to 30/60/90°, the hand still', holding: AS_SAID },
  { name: 'a rod that starts 15° below level', holding: { ...AS_SAID, from_deg: -15 } },
  { name: 'a rod that starts 30° below level', holding: { ...AS_SAID, from_deg: -30 } },
  {
    name: 'hours misread: from level to 18/35/76°',
    holding: { ...AS_SAID, ends_deg: (hours) => MISREAD_DEG[hours - 1] }
  },
  {
    name: 'each hour 10° short of what is said',
    holding: { ...AS_SAID, ends_deg: (hours) => HOUR_DEG * hours - 10 }
  },
  { name: 'a hand that goes 0.3 m towards the bait', holding: { ...AS_SAID, reaches_m: 0.3 } },
  { name: 'a hand that goes 0.3 m back', holding: { ...AS_SAID, reaches_m: -0.3 } },
  {
    name: 'slack of 0.5 m or more left (0.5–1 m)',
    holding: AS_SAID,
    draws: unplaned(drawsOf(DRAWS).map((u) => ({ ...u, slack_m: 0.5 + u.slack_m })))
  },
  { name: 'casts of 27–55 m', holding: AS_SAID, draws: unplaned(drawsOf(DRAWS, LONG_CASTS_M)) }
];

export function unplaned(draws: readonly TradeDraw[]): TradeDraw[] {
  return draws.map((u) => ({ ...u, planing: 0 }));
}

/** The document, made by `npm run trade-check`. */
export function tradeDocument(): string {
  return framed(
    TRADE_CASES.map(caseLine),
    HOLDINGS.map(({ name, holding, draws }) => holdingLine(name, holding, draws)),
    sessionLines()
  );
}

/** The document as it is, with these rows of its first table made anew. @throws {RangeError} for no row */
export function withRows(document: string, ids: readonly string[]): string {
  const made = new Map(ids.map((id) => [id, caseLine(caseNamed(id))]));
  const isTable = (i: number, lines: string[]) => i < lines.indexOf('## Two hours of lift');
  return document
    .split('\n')
    .map((line, i, lines) => (isTable(i, lines) && made.get(line.split(' ')[1])) || line)
    .join('\n');
}

function caseNamed(id: string): TradeCase {
  const found = TRADE_CASES.find((one) => one.id === id);
  if (!found) throw new RangeError(`there is no row ${JSON.stringify(id)}`);
  return found;
}

/** All that is written around the rows. */
export function framed(
  cases: readonly string[],
  holdings: readonly string[],
  session: readonly string[]
): string {
  return [
    '# What practitioners see, beside the model',
    '',
    `Made by \`npm run trade-check\` with model ${MODEL_VERSION}. Trade values are common practice without a`,
    `source; nothing in the model is set from them. Each cell: the median of ${DRAWS} draws, their 5–95 %`,
    'band, and the share of draws inside what the trade says. Drawn, each evenly over its range: slack',
    '0–0.5 m, drag area 3.5–14 cm² (evenly in its logarithm), clock angle ±10°, effective rod 1.6–1.9 m,',
    'cast 18–36 m, pace, and in the last column planing (`bait.lift_to_drag`, docs/planing.md).',
    '',
    `| | | trade | ${COLUMNS.map(({ name }) => `planing ${name}`).join(' | ')} |`,
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...cases,
    '',
    '## Two hours of lift',
    '',
    'Travel in feet for lifts said to be one, two and three hours (trade: 0.9–1.1, 2–2.5, 5.4–6.6),',
    'without planing: medians, the share of draws inside, and the share of draws that fit all three at',
    'once.',
    '',
    '| if it was | 1 h | 2 h | 3 h | fit all three |',
    '| --- | --- | --- | --- | --- |',
    ...holdings,
    '',
    ...session,
    ''
  ].join('\n');
}

export function caseLine(one: TradeCase): string {
  const { id, what, unit, of, said } = one;
  const cells = COLUMNS.map(({ planing }) => {
    const draws = drawsOf(DRAWS).map((u) => ({ ...u, planing: planing(u.planing) }));
    return spreadText(spreadOf(draws.map(of), said));
  });
  return `| ${[id, what, `${saidText(said)} ${unit}`, ...cells].join(' | ')} |`;
}

export function holdingLine(name: string, holding: Holding, draws = unplaned(drawsOf(DRAWS))) {
  const { hours, joint } = jointFit(draws, holding);
  const cells = hours.map(({ median, inside }) => `${round(median)} (${percent(inside)})`);
  return `| ${[name, ...cells, percent(joint)].join(' | ')} |`;
}

function spreadText({ median, low, high, inside }: Spread): string {
  return `${round(median)} (${round(low)} … ${round(high)}), ${percent(inside)}`;
}

function saidText([low, high]: TradeCase['said']): string {
  return high === Infinity ? `${round(low)} and more` : `${round(low)} … ${round(high)}`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}

function round(value: number): string {
  return (Math.round(value * 10) / 10 || 0).toFixed(1);
}
