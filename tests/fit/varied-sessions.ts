import { seededRandom, type Move, type SetupInput } from '../../src/lib/model';
import { MOVES, trueOutcome, type Truth } from './sessions';

/** A session of invented measurements, the truth they were made with, and a move that was not measured. */
export interface VariedSession {
  readonly session: { gear: SetupInput; tests: object[]; known: Partial<Truth> };
  readonly truth: Truth;
  readonly gear: SetupInput;
}

/** Draws of one session. */
class Draws {
  readonly share: () => number;
  constructor(seed: number) {
    this.share = seededRandom(7919 * seed + 13);
  }
  between(least: number, most: number): number {
    return least + (most - least) * this.share();
  }
  normal(): number {
    return Math.sqrt(-2 * Math.log(1 - this.share())) * Math.cos(2 * Math.PI * this.share());
  }
  one<T>(of: readonly T[]): T {
    return of[Math.floor(this.share() * of.length)];
  }
}

/**
 * Sessions as nobody planned them: pool or lake, any jig and line, half with a leader, 3 to 12 tests, of one kind or both, with
 * heights, without or with some; measured by eye, by tape or from film, one in ten with a slip; truths from
 * bells or from even spreads, some beyond what the fit thinks likely.
 */
export function variedSession(seed: number): VariedSession {
  const draws = new Draws(seed);
  const gear = withLeader(gearOf(draws), seed);
  const truth = truthOf(draws, gear);
  const moves = movesOf(draws);
  const deviation = draws.one([eye, eye, film, tape]);
  const columns = draws.one(['both', 'both', 'both', 'travel', 'some heights']);
  const known: Partial<Truth> = {};
  if (draws.share() < 0.25) known.slack_m = truth.slack_m = draws.one([0, 0.05, 0.1]);
  const slip = draws.share() < 0.1 ? Math.floor(draws.share() * moves.length) : -1;
  const tests = moves.map((move, i) => {
    const { travel_m, peak_height_m } = trueOutcome(truth, move, gear);
    const [sd, height_sd] = [travel_m, peak_height_m].map(deviation);
    const off = i === slip ? 6 * sd * draws.one([-1, 1]) : 0;
    const isHigh = columns === 'both' || (columns !== 'travel' && draws.share() < 0.5);
    const isSaid = deviation !== eye;
    const height_m = Math.max(0, peak_height_m + height_sd * draws.normal());
    return {
      move,
      travel_m: travel_m + sd * draws.normal() + off,
      ...(isSaid && { travel_sd_m: sd }),
      ...(isHigh && { peak_height_m: height_m, ...(isSaid && { height_sd_m: height_sd }) })
    };
  });
  return { session: { gear, tests, known }, truth, gear };
}

/** Deviations of one measurement, m; that by eye is what the fit takes where none is said. */
const eye = (m: number) => Math.max(0.15 * Math.abs(m), 0.02);
const tape = (m: number) => Math.max(0.05 * Math.abs(m), 0.01);
const film = () => 0.015;

const USUAL_KG = 0.0142;
const USUAL_AREA_M2 = 6e-4;

function gearOf(draws: Draws): SetupInput {
  const material = draws.one(['fluorocarbon', 'nylon', 'braid'] as const);
  const mass_kg = draws.one([0.0071, 0.0106, 0.0142, 0.0213, 0.0283]);
  return {
    water: { depth_m: draws.between(1.5, 6) },
    line: { material, diameter_m: draws.one([0.00028, 0.00033, 0.0004]) },
    // Area goes with the square of a size, mass with its cube.
    bait: { mass_kg, drag_area_m2: USUAL_AREA_M2 * (mass_kg / USUAL_KG) ** (2 / 3) },
    rod: { length_m: draws.between(1.7, 2.2), pivot_height_m: 1.2 },
    start: { bait_x_m: draws.between(8, 22), slack_m: 0.15 }
  };
}

/** From draws of its own: with it or without, the rest of a session is drawn the same. */
function withLeader(gear: SetupInput, seed: number): SetupInput {
  const draws = new Draws(seed + 0.5);
  if (draws.share() < 0.5) return gear;
  const material = draws.one(['fluorocarbon', 'fluorocarbon', 'nylon'] as const);
  const diameter_m = draws.one([0.00025, 0.00033, 0.00045]);
  const leader = { material, diameter_m, length_m: draws.between(0.5, 4) };
  return { ...gear, line: { ...gear.line, leader } };
}

function truthOf(draws: Draws, { rod, bait }: SetupInput): Truth {
  const [reach_m, area_m2] = [rod?.length_m ?? NaN, bait.drag_area_m2 ?? NaN];
  const held = (value: number, most: number) => Math.min(Math.max(value, 0), most);
  if (draws.share() < 0.5) {
    return {
      reach_m: reach_m * draws.between(0.82, 1.18),
      elevation_deg: draws.between(-15, 15),
      slack_m: draws.between(0, 0.4),
      drag_area_m2: area_m2 * 2 ** draws.between(-1, 1),
      lift_to_drag: draws.between(0, 0.4)
    };
  }
  return {
    reach_m: reach_m * (1 + 0.1 * draws.normal()),
    elevation_deg: 8 * draws.normal(),
    slack_m: held(0.15 + 0.1 * draws.normal(), 1),
    drag_area_m2: area_m2 * Math.exp(0.4 * draws.normal()),
    lift_to_drag: held(0.2 + 0.12 * draws.normal(), 0.5)
  };
}

function movesOf(draws: Draws): readonly Move[] {
  const kind = draws.one(['both', 'both', 'both', 'sweep', 'lift']);
  const ofKind = MOVES.filter((move) => kind === 'both' || move.kind === kind);
  return ofKind.slice(0, draws.one([3, 5, 6, 8, 12, 12]));
}
