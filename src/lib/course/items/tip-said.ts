import { FOOT_M } from '../../model';
import { figuresOf } from './figures';
import type { Item } from './item';
import { shownScenarioOf } from './measure';

/** Where words say how far a sweep takes the tip, in either units. */
const SAID = /(?:tip goes|tip|sweep of) \{([\d½]+) (in|ft)\|([\d.]+) (cm|m)\}/i;
/** What is said is a round number, within a twentieth of what the tip does in the run. */
const ROUNDED = 0.05;
const METERS: Readonly<Record<string, number>> = { in: FOOT_M / 12, ft: FOOT_M, cm: 0.01, m: 1 };

/**
 * What a question says of the tip against what its runs did, as it is read in either units, and a jig
 * that comes further than the tip of such a sweep.
 */
export function tipFaults({ ask, cases }: Item): string[] {
  const asked = saidOf(ask);
  return cases.flatMap(({ caption, run }) => {
    const said = saidOf(caption) ?? asked;
    if (said === null) return [];
    const { tip_m, travel_m } = figuresOf(shownScenarioOf(run));
    const off = said.filter((m) => Math.abs(m / tip_m - 1) > ROUNDED);
    return [
      ...off.map((m) => `the tip is said to go ${m.toFixed(3)} m and goes ${tip_m.toFixed(3)} m`),
      ...(travel_m <= tip_m + ROUNDED * tip_m
        ? []
        : [`the tip goes ${tip_m} m, the jig ${travel_m} m`])
    ];
  });
}

function saidOf(words: string): number[] | null {
  const [, feet, unit, meters, metric] = SAID.exec(words) ?? [];
  if (!feet) return null;
  const inFeet = Number(feet.replace('½', '.5'));
  return [inFeet * METERS[unit], Number(meters) * METERS[metric]];
}
