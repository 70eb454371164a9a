import { scaleLinear } from 'd3-scale';
import type { RoomHand } from '$lib/wire';

/** One round of the room's hand in a drawing: the mean, and as far again as the spread on both sides. */
export interface BiasRow {
  title: string;
  y: number;
  x: number;
  from: number;
  to: number;
  bias_m: number;
  spread_m: number;
}

/** What mark and whisker mean: the spread is a standard deviation of the tries about their middle. */
export const HAND_KEY = 'The mark is the average of all tries; about two of three lie on the line.';

export interface BiasDrawing {
  width: number;
  height: number;
  /** The asked mark: no bias. */
  asked: number;
  /** Where the scale begins. */
  left: number;
  rows: BiasRow[];
  ticks: { x: number; value: number }[];
}

const WIDTH = 900;
/** Titles stand left of this. */
const LEFT = 330;
const EDGE = 30;
const TOP = 46;
const ROW = 58;
/** The scale shows at least so much on either side, m. */
const LEAST_M = 0.1;

/** Lays out the rounds under each other, the first on top, all to one scale about the asked mark. */
export function biasRows(rounds: readonly RoomHand[]): BiasDrawing {
  const reach = Math.max(
    LEAST_M,
    ...rounds.map(({ bias_m, spread_m }) => Math.abs(bias_m) + spread_m)
  );
  const scale = scaleLinear([-reach, reach], [LEFT + EDGE, WIDTH - EDGE]);
  const rows = rounds.map((round, i) => {
    const { bias_m, spread_m } = round;
    return {
      title: roundTitle(round),
      y: TOP + ROW * (i + 0.5),
      x: scale(bias_m),
      from: scale(bias_m - spread_m),
      to: scale(bias_m + spread_m),
      bias_m,
      spread_m
    };
  });
  return {
    width: WIDTH,
    height: TOP + ROW * rounds.length + 8,
    asked: scale(0),
    left: LEFT,
    rows,
    ticks: scale.ticks(5).map((value) => ({ x: scale(value), value }))
  };
}

/** The challenge, and which time it was tried. */
export function roundTitle({ title, ballot, again }: RoomHand): string {
  const once = again ? `${title}, once more` : title;
  return ballot > 1 ? `${once} (${ballot})` : once;
}
