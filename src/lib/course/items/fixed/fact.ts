import { drawGear, ft, inch } from '../draw';
import type { Case, Item } from '../item';
import { drag, fall, hops, lift } from '../moves';

type Option = readonly [says: string, reply: string];

/** Runs that fixed questions show: one water, so that they can be compared. */
const middling = () => 0.5;
const water = drawGear(middling, { depth_m: ft(15), cast_m: ft(36), slack_m: inch(1) });
const slack = drawGear(middling, { depth_m: ft(15), cast_m: ft(36), slack_m: ft(2) });
const over = (kind: 'mud' | 'sand' | 'gravel' | 'chunk rock' | 'brush' | 'grass') => ({
  ...water,
  bottom: { ground: { kind, seed: 3 } }
});
const SHOWN = {
  'slow drag': drag(water, ft(2), 4),
  'fast drag': drag(water, ft(2), 0.4),
  'slack drag': drag(slack, ft(2), 4),
  fall: fall(water, 30),
  'one hour': lift(water, 9, 10, 2),
  hop: hops(water, 10, 11, 0.6, 1, 1),
  'three hops': hops(water, 10, 11, 0.6, 3, 2),
  stroke: lift(water, 9, 12, 0.7),
  mud: drag(over('mud'), ft(4), 6),
  sand: drag(over('sand'), ft(4), 6),
  gravel: drag(over('gravel'), ft(4), 6),
  'chunk rock': drag(over('chunk rock'), ft(4), 6),
  brush: drag(over('brush'), ft(4), 6),
  grass: drag(over('grass'), ft(4), 6)
} as const;
export type ShownName = keyof typeof SHOWN;

/** A question with the right option first; `dealt` puts it into its place. */
export function fact(
  id: string,
  objective: string,
  ask: string,
  options: readonly [right: Option, Option, Option],
  explain: string,
  shown: readonly ShownName[] = []
): Item {
  const ids = ['right', 'first-error', 'second-error'] as const;
  const written = options.map(([says, reply], i) => ({ id: ids[i], says, reply }));
  const cases: Case[] = shown.map((name) => ({ caption: `A ${name}`, run: SHOWN[name] }));
  return {
    source: id,
    seed: 0,
    kind: 'choose',
    objective,
    ask,
    answer: { form: 'choose', options: written, key: 'right' },
    explain,
    evidence: {
      is: 'practice',
      source: 'common practice; local rules and licensed instruction come first'
    },
    cases
  };
}
