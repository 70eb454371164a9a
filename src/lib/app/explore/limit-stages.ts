import type { GivenTo } from '$lib/compute';
import type { LimitMade } from '$lib/compute/jobs/limits';
import type { ScenarioInput } from '$lib/model';
import type { Units } from '$lib/scoring';
import { ticksOf } from './axes';
import { exploredScenario, handEnds, type ExploreBase } from './base';
import {
  placesOf,
  openIn,
  type AskJob,
  type ChartPoint,
  type ChartWanted,
  type Curve,
  type Ends,
  type Stage
} from './chart';
import { LIMIT_TIP_M } from './figures';

/** A drag that has left the bottom has done so when the tip stops, s. */
const LIMIT_HOLD_S = 0.3;
/** The drag whose limit is looked for, of its base's own way. */
export const limitDrag = (base: ExploreBase): ScenarioInput | null =>
  exploredScenario({ ...base, kind: 'sweep' }, LIMIT_HOLD_S);

/** Of several values at once: those that cannot be made are left out. */
async function limitsAt(
  ask: AskJob,
  bases: readonly ExploreBase[],
  units: Units,
  given: Omit<GivenTo<'limits'>, 'drags' | 'tip_m'>
): Promise<(LimitMade | null)[]> {
  const drags = bases.map(limitDrag);
  const asked = drags.filter((one) => one !== null);
  const made = await ask('limits', { drags: asked, tip_m: LIMIT_TIP_M[units], ...given });
  let next = 0;
  return drags.map((one) => (one ? made[next++] : null));
}

/** The pace to mean, so that the tip of this hand keeps the limit: its drags end short, and long. */
async function limitsOfHand(ask: AskJob, base: ExploreBase, units: Units): Promise<Ends | null> {
  const ends = handEnds(base);
  if (!ends) return null;
  const made = await limitsAt(ask, ends, units, { grain: 'fine' });
  const paces = made.flatMap((one) => one?.pace_m_s ?? []);
  return paces.length === 2 ? [Math.min(...paces), Math.max(...paces)] : null;
}

/** The work on a chart of limits, the roughest first. */
export function limitStages({ axis, units }: ChartWanted, curves: readonly Curve[]): Stage[] {
  const ticks = ticksOf(axis, units);
  const plain = (curve: number, grain: 'fine' | 'coarse'): Stage => ({
    curve,
    make: async (ask) => {
      const bases = ticks.map((at) => axis.set(curves[curve].base, at));
      const made = await limitsAt(ask, bases, units, { grain });
      return ticks.flatMap((at, i) => limitPoint(at, made[i]));
    }
  });
  const banded = (curve: number, at: number): Stage => ({
    curve,
    make: async (ask) => {
      const { base } = curves[curve];
      const here = axis.set(base, at);
      const given = { grain: 'fine', unknowns: openIn(base) } as const;
      const [made] = await limitsAt(ask, [here], units, given);
      return limitPoint(at, made, made && (await limitsOfHand(ask, here, units)));
    }
  });
  const asked = placesOf(curves, false);
  const kept = placesOf(curves, true);
  // The middle one first: the first picture is a whole curve.
  const [middle] = asked.splice(asked.length >> 1, 1);
  const own = [middle, ...asked];
  return [
    ...own.map((i) => plain(i, 'coarse')),
    ...own.map((i) => plain(i, 'fine')),
    ...ticks.flatMap((at) => own.map((i) => banded(i, at))),
    ...ticks.flatMap((at) => kept.map((i) => banded(i, at)))
  ];
}

function limitPoint(at: number, made: LimitMade | null, hand?: Ends | null): ChartPoint[] {
  if (!made) return [];
  const { pace_m_s: value, ends } = made;
  return [{ at, readings: { limit_m_s: { value, ...(ends && { ends }), ...(hand && { hand }) } } }];
}
