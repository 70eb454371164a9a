import type { ShownRun } from '../../lesson';
import { BIG_TRAILER_M2, drawGear, ft, inch, oz, SMALL_TRAILER_M2 } from '../draw';
import type { Case } from '../item';
import { shownDrag, fall, shownHops, shownLift } from '../moves';

/** Runs that fixed questions show: one water, so that they can be compared. */
const middling = () => 0.5;
const water = drawGear(middling, { depth_m: ft(15), cast_m: ft(36), slack_m: inch(1) });
const slack = drawGear(middling, { depth_m: ft(15), cast_m: ft(36), slack_m: ft(2) });
const over = (
  kind: 'mud' | 'sand' | 'gravel' | 'chunk rock' | 'boulders' | 'brush' | 'grass',
  seed = 3
) => shownDrag({ ...water, bottom: { ground: { kind, seed } } }, ft(4), 6);
const far = drawGear(middling, { depth_m: ft(15), cast_m: ft(60), slack_m: inch(0.5) });
const near = drawGear(middling, { depth_m: ft(15), cast_m: ft(22), slack_m: inch(0.5) });
const snapOn = (line: typeof far.line) => shownLift({ ...far, line }, 10, 12, 0.5);
const hopWith = (tip_stiffness_N_per_m: number) =>
  shownLift({ ...far, rod: { ...far.rod, tip_stiffness_N_per_m } }, 10, 12, 0.5);
const freeFall = fall(water, 30);
const engagedFall: ShownRun = {
  ...freeFall,
  setup: { ...freeFall.setup, start: { ...freeFall.setup.start, line: 'splash', spool: 'closed' } }
};
/** A jig that pushes so much water aside, m², falls so deep. */
const falling = (drag_area_m2: number, depth_m: number) =>
  fall({ ...water, water: { ...water.water, depth_m }, bait: { ...water.bait, drag_area_m2 } }, 45);
export const SHOWN = {
  'slow drag': shownDrag(water, ft(2), 4),
  'fast drag': shownDrag(water, ft(2), 0.4),
  'slack drag': shownDrag(slack, ft(2), 4),
  'heavy drag': shownDrag({ ...water, bait: { ...water.bait, mass_kg: oz(1) } }, ft(2), 4),
  'light drag': shownDrag({ ...water, bait: { ...water.bait, mass_kg: oz(1 / 4) } }, ft(2), 4),
  fall: freeFall,
  'fall with a big trailer': falling(BIG_TRAILER_M2, ft(15)),
  'fall with a small trailer': falling(SMALL_TRAILER_M2, ft(15)),
  'fall in shallow water': falling(SMALL_TRAILER_M2, ft(12)),
  'deep fall': falling(SMALL_TRAILER_M2, ft(36)),
  'drag, drifting away': shownDrag({ ...water, drift_m_s: -0.1 }, ft(2), 4),
  'drag, drifting onto it': shownDrag({ ...water, drift_m_s: 0.1 }, ft(2), 4),
  'one hour': shownLift(water, 9, 10, 2),
  hop: shownHops(water, 10, 11, 0.6, 1, 1),
  'three hops': shownHops(near, 10, 11, 0.5, 3, 2.5),
  'slack hop': shownHops(slack, 10, 11, 0.6, 1, 1),
  'late hour': shownLift(water, 10.5, 11.5, 2),
  'hop close in': shownLift(near, 10, 11, 0.6),
  'hop far out': shownLift(far, 10, 11, 0.6),
  'snap on braid': snapOn({ material: 'braid', diameter_m: 0.0002 }),
  'snap on mono': snapOn({ material: 'nylon', diameter_m: 0.00032 }),
  'snap with a stiff rod': hopWith(20),
  'snap with a soft rod': hopWith(4),
  'fall with the reel engaged': engagedFall,
  stroke: shownLift(water, 9, 12, 0.7),
  mud: over('mud'),
  sand: over('sand'),
  gravel: over('gravel'),
  'chunk rock': over('chunk rock'),
  boulders: over('boulders'),
  brush: over('brush', 23),
  grass: over('grass')
} as const;
export type ShownName = keyof typeof SHOWN;

const GROUNDS: readonly string[] = [
  'mud',
  'sand',
  'gravel',
  'chunk rock',
  'boulders',
  'brush',
  'grass'
];

export function caseOf(name: ShownName): Case {
  const caption = GROUNDS.includes(name) ? `A slow drag over ${name}` : captionOf(name);
  return { caption, run: SHOWN[name] };
}

function captionOf(name: ShownName): string {
  return /^(three|one) /.test(name) ? `${name[0].toUpperCase()}${name.slice(1)}` : `A ${name}`;
}
