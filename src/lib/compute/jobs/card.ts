import type { ShownRun } from '../../course';
import { shownDrag, shownLift } from '../../course/items/moves';
import { shownHop } from '../../course/plan';
import {
  FOOT_M,
  isOffBottom,
  parseScenario,
  ScenarioError,
  type GroundKind,
  type SetupInput
} from '../../model';
import { bandsOf, type Band, type OwnSpread, type Units } from '../../scoring';
import type { CardFigures, CardMove, OutfitGear, Wind } from '../../wire';
import { daySetup, readingOf, rounded, WIND_M_S, windsOf, workedAt_m } from './day-setup';
import { fallTimes } from './falls';
import { movedIn, readingsOf, type Moved } from './moved';
import { quickestCount } from './stays-down';

export interface CardWanted {
  /** Left out, the gear of the lessons with a jig of `mass_kg`. */
  gear?: OutfitGear;
  mass_kg?: number;
  depths_m: readonly [number, number];
  /** How far out the jig lies after the cast. */
  out_m: number;
  temperature_C: number;
  bottom: GroundKind;
  wind: Wind;
  /** Moves and depths are round in these. */
  units: Units;
}

/** Rod moves of a card as they are said: tip of a low drag, hours and seconds of a lift. */
const DRAGS: Record<Units, readonly number[]> = {
  imperial: [0.5, 1, 2, 3].map((feet) => feet * FOOT_M),
  metric: [0.15, 0.3, 0.6, 0.9]
};
const LIFTS = [
  { from_hour: 10, to_hour: 10.4, duration_s: 0.25, run: shownHop },
  {
    ...{ from_hour: 9, to_hour: 10, duration_s: 1.5 },
    run: (setup: SetupInput) => shownLift(setup, 9, 10, 1.5)
  }
];
/** Pace of a card's drags, m/s: half a foot a second, inside the trade's 0.3 to 1. */
const DRAG_PACE_M_S = 0.5 * FOOT_M;
/** The drag whose limit is looked for. */
export const LIMIT_TIP: Record<Units, number> = { imperial: 2 * FOOT_M, metric: 0.6 };
/** Shares of the way out at which the limit is looked for: it falls as the jig comes near. */
const OUT_SHARES = [1, 0.7, 0.4];
const FALLS: Record<Units, readonly number[]> = {
  imperial: [5, 10, 15, 20, 25, 30, 40].map((feet) => feet * FOOT_M),
  metric: [2, 3, 4.5, 6, 8, 10, 12]
};
/** Nearer than this the rod has no room, m. */
const LEAST_OUT_M = 2;
/**
 * Everything of a boat card that the model computes: some three hundred runs. Throws ScenarioError for
 * gear or water that cannot be run at all.
 */
export function cardFigures(wanted: CardWanted, tell: (share: number) => void = () => {}) {
  const { units, depths_m, out_m } = wanted;
  const moves = [
    ...DRAGS[units].map((tip_m) => () => dragOf(wanted, tip_m)),
    ...LIFTS.map((lift) => () => liftOf(wanted, lift))
  ];
  const outs_m = OUT_SHARES.map((share) => Math.max(LEAST_OUT_M, share * out_m));
  const limits = depths_m.map((depth_m) =>
    outs_m.map(
      (at_m) => () =>
        quickestCount(
          windsOf(wanted.wind).map((wind_m_s) => setupAt(wanted, depth_m, at_m, wind_m_s)),
          LIMIT_TIP[units],
          wanted.gear?.spread
        )
    )
  );
  const steps = moves.length + limits.flat().length + 1;
  let done = 0;
  const made = <T>(work: () => T): T => {
    const one = work();
    tell(++done / steps);
    return one;
  };
  return {
    moves: moves.map(made),
    limits: {
      tip_m: LIMIT_TIP[units],
      out_m: outs_m,
      count_s: limits.map((row) => row.map(made)) as CardFigures['limits']['count_s']
    },
    falls: made(() => fallsOf(wanted))
  } satisfies CardFigures;
}

function setupAt(
  wanted: CardWanted,
  depth_m: number,
  out_m: number,
  wind_m_s = WIND_M_S[wanted.wind]
): SetupInput {
  const { gear, mass_kg, temperature_C, bottom: ground } = wanted;
  return daySetup({ gear, mass_kg, depth_m, temperature_C, ground, out_m, wind_m_s });
}

/** Where the card's moves are made, as the plan of the same day has them. */
const workedSetup = (wanted: CardWanted, depth_m: number) =>
  setupAt(wanted, depth_m, workedAt_m(wanted.out_m));

/** Of the run as it is said and in every corner of what is unknown; null for a move the rod cannot do. */
function bandsIn(
  shown: () => ShownRun,
  spread: OwnSpread | undefined
): Record<keyof Moved, Band> | null {
  try {
    const { setup, move, hold_s } = shown();
    return bandsOf(parseScenario({ ...setup, move, hold_s }), movedIn, spread);
  } catch (error) {
    if (error instanceof ScenarioError || error instanceof RangeError) return null;
    throw error;
  }
}

const inDepths = <T>({ depths_m }: CardWanted, of: (depth_m: number) => T): [T, T] => [
  of(depths_m[0]),
  of(depths_m[1])
];

/** What a low drag at a card's pace does; null for one that the rod cannot do. */
export interface DragFigure {
  readonly duration_s: number;
  /** How far the bait comes and half its band, m. */
  readonly came: [number, number] | null;
  /** Whether it may leave the bottom. */
  readonly lifts: boolean;
}

/** Of a low drag that takes the tip `tip_m` further away. Throws ScenarioError for water that cannot be run. */
export function dragFigure(given: {
  setup: SetupInput;
  tip_m: number;
  spread?: OwnSpread | undefined;
}): DragFigure {
  const { setup, tip_m, spread } = given;
  const duration_s = Math.max(1, Math.round(tip_m / DRAG_PACE_M_S));
  const bands = bandsIn(() => shownDrag(setup, tip_m, duration_s), spread);
  const lifts = !!bands && mayLift(bands.peak_height_m);
  return { duration_s, came: readingOf(bands?.travel_m), lifts };
}

function dragOf(wanted: CardWanted, tip_m: number): CardMove {
  const [shallow, deep] = inDepths(wanted, (depth_m) => {
    const setup = workedSetup(wanted, depth_m);
    return dragFigure({ setup, tip_m, spread: wanted.gear?.spread });
  });
  const { duration_s } = shallow;
  const [came, lifts] = [
    [shallow.came, deep.came] as CardMove['came'],
    [shallow.lifts, deep.lifts] as [boolean, boolean]
  ];
  return { kind: 'drag', tip_m, duration_s, came, lifts };
}

const mayLift = ({ nominal, corners }: Band) => isOffBottom(Math.max(nominal, ...corners));

function liftOf(wanted: CardWanted, { run, ...lift }: (typeof LIFTS)[number]): CardMove {
  const [shallow, deep] = inDepths(wanted, (depth_m) => {
    const bands = bandsIn(() => run(workedSetup(wanted, depth_m)), wanted.gear?.spread);
    return bands ? readingsOf(bands) : { came: null, high: null };
  });
  return {
    ...{ kind: 'lift', ...lift },
    came: [shallow.came, deep.came],
    high: [shallow.high, deep.high]
  };
}

function fallsOf(wanted: CardWanted): CardFigures['falls'] {
  const { gear, units } = wanted;
  const setup = setupAt(wanted, wanted.depths_m[0], wanted.out_m);
  return fallTimes({
    setup,
    depths_m: countedDepths(units, wanted.depths_m),
    unknowns: gear?.spread ?? 'drag'
  }).map(({ depth_m, fall_s, half_s }) => [
    rounded(depth_m),
    rounded(fall_s, 1),
    rounded(half_s, 1)
  ]);
}

/** Less between two of them is one depth, m. */
const ONE_DEPTH_M = 0.1;

/** The depths of the table, and among them those that were asked for. */
function countedDepths(units: Units, asked_m: readonly number[]): number[] {
  const others = FALLS[units].filter((m) => asked_m.every((a) => Math.abs(a - m) > ONE_DEPTH_M));
  return [...new Set([...others, ...asked_m])].sort((a, b) => a - b);
}
