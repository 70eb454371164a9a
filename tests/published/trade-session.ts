import { fit, parseSession, type FitResult } from '../../src/lib/fit';
import {
  FOOT_M,
  INCH_M,
  OUNCE_KG,
  raisedMove,
  simulate,
  type Move,
  type ScenarioInput
} from '../../src/lib/model';
import {
  DEPTH_M,
  DRAG_AREA_M2,
  fastSweep,
  lift,
  slowSweep,
  sweep,
  sweptTip_m,
  threeHops,
  TRADE_CASES,
  type TradeDraw
} from './trade-cases';

/**
 * The trade's facts as a session of tests, as if one hand had made them with one rod, and what the fit
 * makes of it. Only facts of the 1/2 oz jig can be tests of one outfit; the others are looked at with
 * what was fitted. Nothing in the model is set from this.
 */
const MIDDLE: TradeDraw = {
  slack_m: 0.15,
  dragArea_m2: DRAG_AREA_M2,
  planing: 0.2,
  angleError_deg: 0,
  rod_m: 1.75,
  cast_m: 27,
  pace: 0.5,
  other: 0.5
};

interface Fact {
  id: string;
  move: Move;
  of: 'travel' | 'height';
  unit_m: number;
}

const FACTS: readonly Fact[] = [
  { id: 'a1', move: lift(MIDDLE, 1), of: 'travel', unit_m: FOOT_M },
  { id: 'a2', move: lift(MIDDLE, 2), of: 'travel', unit_m: FOOT_M },
  { id: 'a3', move: lift(MIDDLE, 3), of: 'travel', unit_m: FOOT_M },
  { id: 'd', move: threeHops(MIDDLE), of: 'travel', unit_m: FOOT_M },
  { id: 'e', move: sweep(MIDDLE, sweptTip_m(MIDDLE), 1.5), of: 'travel', unit_m: FOOT_M },
  { id: 'f2', move: fastSweep(MIDDLE), of: 'height', unit_m: INCH_M },
  { id: 'f4', move: slowSweep(MIDDLE), of: 'height', unit_m: INCH_M }
];
/** What is said is taken for 90 of 100: its half width is 1.645 deviations. */
const Z90 = 1.6449;
const SEGMENTS = 20;

const caseOf = (id: string) => {
  const found = TRADE_CASES.find((one) => one.id === id);
  if (!found) throw new Error(`there is no fact ${id}`);
  return found;
};

export function tradeSession() {
  return {
    gear: {
      water: { depth_m: DEPTH_M },
      line: { material: 'fluorocarbon', diameter_m: 0.00033 },
      bait: { mass_kg: 0.5 * OUNCE_KG, drag_area_m2: MIDDLE.dragArea_m2 },
      rod: { length_m: MIDDLE.rod_m },
      start: { bait_x_m: MIDDLE.cast_m, slack_m: MIDDLE.slack_m },
      numerics: { segments: SEGMENTS }
    },
    tests: FACTS.map(({ id, move, of, unit_m }) => {
      const [least, most] = caseOf(id).said;
      const [measured_m, sd_m] = [
        (unit_m * (least + most)) / 2,
        (unit_m * (most - least)) / 2 / Z90
      ];
      return of === 'travel'
        ? { move, travel_m: measured_m, travel_sd_m: sd_m }
        : { move, peak_height_m: measured_m, height_sd_m: sd_m };
    })
  };
}

/** A fact beside the set-up that explains the session best. */
export interface Explained {
  id: string;
  what: string;
  said: readonly [number, number];
  unit: string;
  /** What the model says of it with that set-up, in the fact's unit. */
  fitted: number;
  isExplained: boolean;
}

export function explainedBy(result: FitResult): Explained[] {
  const others = othersWith(result);
  return TRADE_CASES.map(({ id, what, said, unit }) => {
    const test = FACTS.findIndex((one) => one.id === id);
    const fitted = test < 0 ? others[id] : testedFact(result, test);
    return { id, what, said, unit, fitted, isExplained: fitted >= said[0] && fitted <= said[1] };
  });
}

function testedFact({ tests }: FitResult, test: number): number {
  const { predicted } = tests[test];
  const { of, unit_m } = FACTS[test];
  const m = of === 'travel' ? predicted?.travel_m : predicted?.peak_height_m;
  return (m ?? NaN) / unit_m;
}

/** Heights below this are taken as this, m: as in trade-cases.ts. */
const LEAST_HEIGHT_M = 0.005;
const EASY = sweep(MIDDLE, 0.9, 1.6);
const SHALLOW_M = 7.5 * FOOT_M;
const DEEP_M = 16.5 * FOOT_M;

/** Facts of other weights and depths, with the rod, the hand and the drag that were fitted. */
function othersWith({ spread: { middle } }: FitResult): Record<string, number> {
  const { gear } = tradeSession();
  const made = (ounces: number, move: Move, depth_m = DEPTH_M) =>
    simulate({
      ...gear,
      water: { depth_m },
      bait: {
        mass_kg: ounces * OUNCE_KG,
        drag_area_m2: middle.drag_area_m2,
        lift_to_drag: middle.lift_to_drag
      },
      rod: { length_m: middle.reach_m },
      start: { ...gear.start, slack_m: middle.slack_m },
      move: raisedMove(move, middle.elevation_deg ?? 0)
    } as ScenarioInput);
  const height = (...given: Parameters<typeof made>) => made(...given).peak_height_m;
  const ratio = (light: number, heavy: number) => {
    const [one, other] = [light, heavy].map((oz) =>
      Math.max(height(oz, lift(MIDDLE, 3)), LEAST_HEIGHT_M)
    );
    return one / other;
  };
  const fast = fastSweep(MIDDLE);
  const two = lift(MIDDLE, 2);
  return {
    b: (made(0.75, two).travel_m - made(0.25, two).travel_m) / FOOT_M,
    c1: ratio(0.25, 0.5),
    c2: ratio(0.5, 0.75),
    f1: height(0.75, fast) / INCH_M,
    f3: (height(0.25, fast) - height(0.5, fast)) / INCH_M,
    g1: height(0.25, EASY, SHALLOW_M) / INCH_M,
    g2: height(0.25, EASY, DEEP_M) / INCH_M
  };
}

/** As docs/trade-check.md has it. */
export function sessionLines(result = fit(parseSession(tradeSession()))): string[] {
  const { unknowns } = result;
  const rows = explainedBy(result);
  const not = rows.filter(({ isExplained }) => !isExplained).map(({ id }) => id);
  const found = Object.entries(unknowns).map(
    ([name, { estimate, interval90, told }]) =>
      `| \`${name}\` | ${round(estimate)} | ${interval90.map(round).join(' … ')} | ${told ? 'yes' : 'no'} |`
  );
  return [
    '## The facts as one session',
    '',
    'The facts of the 1/2 oz jig (a, d, e, f2, f4) as tests of one outfit, fitted as anybody’s own tests are',
    '([fit.md](fit.md)); what is said is taken for a 90 % interval. The set-up that explains them best:',
    '',
    '| | best | 90 % | told |',
    '| --- | --- | --- | --- |',
    ...found,
    '',
    'With it the model says, of all the facts:',
    '',
    '| | | trade | model | explained |',
    '| --- | --- | --- | --- | --- |',
    ...rows.map(
      ({ id, what, said: [least, most], unit, fitted, isExplained }) =>
        `| ${id} | ${what} | ${round(least)}${most === Infinity ? ' and more' : ` … ${round(most)}`} ${unit} | ${round(fitted)} | ${isExplained ? 'yes' : 'no'} |`
    ),
    '',
    not.length > 0
      ? `No one set-up explains all of them; with the best, ${not.join(', ')} stay unexplained.`
      : 'This set-up explains all of them.',
    `The fit’s own words: “${result.verdict}”`
  ];
}

function round(value: number): string {
  const size = Math.abs(value);
  const digits = size > 1e-4 && size < 0.01 ? 5 : size < 1 ? 2 : 1;
  return value.toFixed(digits).replace(/^-(0\.?0*)$/, '$1');
}
