import type { Basis } from '../../basis';

/** What several questions say, by the runs that show it. */
const drag = { unknowns: 'drag' } as const;

export const SWINGS_IN: Basis = {
  most: 'travel_m',
  of: ['fall with the reel engaged', 'fall'],
  ...drag
};
export const FALLS_STRAIGHT: Basis = {
  run: 'from-the-boat:free',
  holds: { travel_m: [-0.5, 0.3] },
  ...drag
};
export const LINE_STOPS: Basis = { run: 'from-the-boat:free', holds: { fall_s: [2, 12] } };
export const SHALLOW_IS_DOWN: Basis = { run: 'a shallow fall', holds: { fall_s: [1, 5] }, ...drag };
export const DEEP_FALLS_ON: Basis = { run: 'deep fall', holds: { fall_s: [6, 60] }, ...drag };
export const DEPTH_TIMES: Basis = {
  most: 'fall_s',
  of: ['a fall twice as deep', 'half of a fall'],
  times: [1.8, 2.2],
  ...drag
};
export const WEIGHT_TIMES: Basis = {
  most: 'fall_s',
  of: ['a light fall', 'a heavy fall'],
  times: [1.7, 2.4],
  ...drag
};
export const TOO_SOON: Basis = { run: 'a drag too soon', sign: 'lifted', ...drag };
export const HEAVY_FALLS: Basis = {
  most: 'fall_s',
  of: ['weight-and-depth:fall-quarter', 'weight-and-depth:fall-ounce'],
  ...drag
};
export const TRAILER_FALLS: Basis = {
  most: 'fall_s',
  of: ['fall with a big trailer', 'fall with a small trailer'],
  ...drag
};
export const TRAILER_LIFTS: Basis = {
  most: 'contact',
  of: ['rigging:drag-bare', 'rigging:drag-big'],
  ...drag
};
export const HEAVY_STAYS: Basis = {
  most: 'contact',
  of: ['weight-and-depth:heavy', 'weight-and-depth:light']
};
export const HEAVY_PULLS: Basis = { most: 'pull_N', of: ['heavy drag', 'light drag'], ...drag };
export const COME_ALIKE: Basis = { alike: 'travel_m', of: ['heavy drag', 'light drag'], ...drag };
export const FAST_LIFTS: Basis = { most: 'peak_height_m', of: ['fast drag', 'slow drag'], ...drag };
export const SLOW_STAYS: Basis = { run: 'slow drag', sign: 'stayed down', ...drag };
export const ALL_GETS_THERE: Basis = { run: 'one-foot:slow', holds: { travel_m: [0.5, 0.61] } };
export const SLACK_TAKES: Basis = { most: 'travel_m', of: ['slow drag', 'slack drag'], ...drag };
export const SLACK_TREMBLES: Basis = {
  run: 'slack:shake-in-place',
  holds: { travel_m: [-0.15, 0.15] },
  ...drag
};
export const REEL_MOVES: Basis = {
  run: 'reeled in on tight line',
  holds: { travel_m: [0.2, 0.4] },
  ...drag
};
export const REEL_KEEPS: Basis = {
  most: 'travel_m',
  of: ['three hops, reeled', 'three hops, nothing reeled'],
  ...drag
};
export const REEL_SWIMS: Basis = { run: 'season-and-mood:swim', sign: 'lifted' };
export const LIFT_MOVES: Basis = { run: 'one hour', holds: { travel_m: [0.2, 1.2] }, ...drag };
export const CLOSE_LIFTS: Basis = {
  most: 'peak_height_m',
  of: ['speed:close-in', 'speed:far-out']
};
export const SLOW_HELPS: Basis = {
  most: 'peak_height_m',
  of: ['speed:close-in', 'speed:close-slow']
};
export const HEAVY_HELPS: Basis = {
  most: 'peak_height_m',
  of: ['speed:close-in', 'speed:close-heavy']
};
export const UNDER_LIFTS: Basis = {
  run: 'a slow lift right under the boat',
  sign: 'lifted',
  ...drag
};
export const FAR_SLIDES: Basis = { run: 'a slow lift far out', sign: 'stayed down', ...drag };
export const FAST_SKIPS: Basis = {
  most: 'contact',
  of: ['feeling-rocks:slow', 'feeling-rocks:fast']
};
export const HIGHER: Basis = {
  most: 'peak_height_m',
  of: ['hops:longer', 'hops:quick', 'hops:slow']
};
export const HIGHER_LATER: Basis = { most: 'airborne_s', of: ['hops:longer', 'hops:quick'] };
export const ROD_FOLLOWS: Basis = {
  most: 'travel_m',
  of: ['stroke-and-fall:held', 'stroke-and-fall:follow']
};
export const STRETCH_TAKES: Basis = {
  most: 'peak_height_m',
  of: ['line-and-rod:braid', 'line-and-rod:mono'],
  ...drag
};
export const LINES_DRAG_ALIKE: Basis = {
  alike: 'travel_m',
  of: ['a slow drag on braid', 'a slow drag on mono'],
  ...drag
};
export const RODS_DRAG_ALIKE: Basis = {
  alike: 'travel_m',
  of: ['a slow drag on mono', 'a slow drag with a soft rod'],
  ...drag
};
export const SNAP_PULLS: Basis = {
  most: 'pull_N',
  of: ['snap on mono', 'a slow drag on mono'],
  ...drag
};
export const LATE_HOUR: Basis = {
  most: 'travel_m',
  of: ['the-clock:eleven-to-twelve', 'the-clock:nine-to-ten']
};
export const DRIFT_TAKES: Basis = {
  most: 'travel_m',
  of: ['slow drag', 'drag, drifting onto it'],
  ...drag
};
export const DRIFT_ADDS: Basis = {
  most: 'travel_m',
  of: ['drag, drifting away', 'slow drag'],
  ...drag
};
export const WEDGES: Basis = { run: 'snags:harder', sign: 'set deeper' };
export const SLACK_FREES: Basis = { run: 'snags:shaken', sign: 'freed' };
export const ANGLE_FREES: Basis = { run: 'snags:free-from-above', sign: 'freed', ...drag };
export const MUD: Basis = { run: 'mud', sign: 'sucks at the start', ...drag };
export const SAND: Basis = { run: 'sand', sign: 'smooth', ...drag };
export const GRAVEL: Basis = { run: 'gravel', sign: 'knocks', ...drag };
export const ROCK: Basis = { run: 'chunk rock', sign: 'knocks', ...drag };
export const BOULDERS: Basis = { run: 'boulders', sign: 'long loads', ...drag };
export const BRUSH: Basis = { run: 'brush', sign: 'springs', ...drag };
/** Half a newton bends a rod's tip by an inch. */
export const BENDS_LITTLE: Basis = { run: 'late hour', holds: { pull_N: [0, 0.6] }, ...drag };
export const FEELS_NOTHING: Basis = { run: 'fall', holds: { pull_N: [0, 0.02] }, ...drag };
export const LITTLE_TAKEN: Basis = { run: 'late hour', holds: { travel_m: [0.5, 1.3] }, ...drag };
export const ONE_FOOT: Basis = {
  run: 'one-foot:exactly-one-foot',
  holds: { travel_m: [0.2, 0.4] }
};
export const WEIGHT_BEATS: Basis = {
  most: 'fall_s',
  of: ['a quarter ounce, small trailer', 'half an ounce, big trailer'],
  ...drag
};
export const TRAILER_BEATS: Basis = {
  most: 'fall_s',
  of: ['three eighths, big trailer', 'a quarter ounce, small trailer'],
  ...drag
};
export const GRASS: Basis = { run: 'grass', sign: 'springs', ...drag };
export const SHELLS: Basis = { run: 'reading-bottoms:shells', sign: 'crunches', ...drag };
export const LONGER_HIGHER: Basis = {
  most: 'peak_height_m',
  of: ['a lift of two hours in a second', 'a lift of an hour in a second'],
  ...drag
};
export const LIGHTER_HIGHER: Basis = {
  most: 'peak_height_m',
  of: ['a light jig lifted', 'a heavy jig lifted'],
  ...drag
};
export const HOUR_BRINGS: Basis = { run: 'one hour', holds: { travel_m: [0.6, 1.1] }, ...drag };
