import { curveMonotoneX, line } from 'd3-shape';

/** Size of the drawing in its own units, about a CSS pixel on a wide screen. */
const WIDTH = 1600;
const HEIGHT = 88;
/** The bottom's profile, as (x, y) down from the drawing's top. */
const PROFILE: [number, number][] = [
  [0, 44],
  [130, 40],
  [300, 48],
  [520, 36],
  [700, 42],
  [960, 30],
  [1180, 38],
  [1400, 33],
  [1600, 40]
];
/** Middle, half width and height of each stone. */
const STONES: [number, number, number][] = [
  [228, 15, 13],
  [262, 9, 7],
  [866, 22, 18],
  [1290, 12, 9]
];
const GRAINS = 420;

/** The lake bed at the foot of every page: a line, stones, and stipple that thins out downwards. */
export const bed = {
  width: WIDTH,
  height: HEIGHT,
  line: line().curve(curveMonotoneX)(PROFILE) ?? '',
  stones: STONES.map(([x, half, height]) => {
    const foot = profileAt(x) + 4;
    return `M${x - half} ${foot}q${half * 0.2} ${-height} ${half} ${-height - 4}t${half} ${height + 4}`;
  }),
  grains: Array.from({ length: GRAINS }, (_, i) => {
    // Golden-ratio steps fill the width evenly without a visible grid, and need no chance.
    const x = ((i * 0.618034) % 1) * WIDTH;
    const depth = ((i * 0.754878) % 1) ** 2;
    return { x, y: profileAt(x) + 5 + depth * (HEIGHT - 52), r: 1.3 - 0.7 * depth };
  })
};

function profileAt(x: number): number {
  const right = PROFILE.findIndex(([at]) => at > x);
  const [[x0, y0], [x1, y1]] = PROFILE.slice(right - 1, right + 1);
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}
