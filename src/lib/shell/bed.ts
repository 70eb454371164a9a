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
/** Grains of one size are one path: an element each would be as many as the rest of the page has. */
const SIZES = 3;

const grains = Array.from({ length: GRAINS }, (_, i) => {
  // Golden-ratio steps fill the width evenly without a visible grid, and need no chance.
  const x = ((i * 0.618034) % 1) * WIDTH;
  const depth = ((i * 0.754878) % 1) ** 2;
  return { x, y: profileAt(x) + 5 + depth * (HEIGHT - 52), depth };
});

/** The lake bed at the foot of every page: a line, stones, and stipple that thins out downwards. */
export const bed = {
  width: WIDTH,
  height: HEIGHT,
  line: smooth(PROFILE),
  stones: STONES.map(([x, half, height]) => {
    const foot = profileAt(x) + 4;
    return `M${x - half} ${foot}q${half * 0.2} ${-height} ${half} ${-height - 4}t${half} ${height + 4}`;
  }),
  /** Of each size, its diameter and a path of dots, to be drawn with round ends. */
  grains: Array.from({ length: SIZES }, (_, size) => ({
    wide: 2.4 - 0.5 * size,
    path: grains
      .filter(({ depth }) => Math.floor(depth * SIZES) === size)
      .map(({ x, y }) => `M${x.toFixed()} ${y.toFixed(1)}h0`)
      .join('')
  }))
};

/** A curve whose pieces meet half way between the points. */
function smooth([first, ...rest]: [number, number][]): string {
  const last = rest[rest.length - 1];
  const pieces = rest.slice(0, -1).map(([x, y], i) => {
    const [nextX, nextY] = rest[i + 1];
    return `Q${x} ${y} ${(x + nextX) / 2} ${(y + nextY) / 2}`;
  });
  return `M${first.join(' ')}${pieces.join('')}L${last.join(' ')}`;
}

function profileAt(x: number): number {
  const right = PROFILE.findIndex(([at]) => at > x);
  const [[x0, y0], [x1, y1]] = PROFILE.slice(right - 1, right + 1);
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}
