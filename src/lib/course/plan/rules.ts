import type { PlannedDay } from './day';

/** What a rule is about, in the order in which a sheet has them. */
export const RULE_PARTS = ['bottom', 'boat', 'light', 'no bites', 'caution'] as const;
export type RulePart = (typeof RULE_PARTS)[number];

/** Common practice has no published source; lakes and guides differ. */
export type RuleSource = 'common practice' | 'lesson on boat and wind, by the model';

/** One rule of the trade: what is said on which day. */
export interface PlanRule {
  part: RulePart;
  /** In words, for who reads the table. */
  when: string;
  holds: (day: PlannedDay) => boolean;
  /** Quantities in braces. */
  says: string;
  source: RuleSource;
}

const always = { when: 'always', holds: () => true };
const PRACTICE = 'common practice' as const;
const MODEL = 'lesson on boat and wind, by the model' as const;

/** Water colder than this, °C, takes the use of the hands within minutes. Common practice. */
const COLD_C = 15;
/** Strokes begin here, 75 °F, as the retrieves have it. */
const WARM_C = 23.9;
/** Above it, 80 °F, a played fish seldom recovers well. Common practice. */
const HOT_C = 26.7;
/** Up from here and deeper, 25 ft, fish come in bloated. Common practice. */
const BLOATED_FROM_M = 7.6;
/** From here down summer water may have a thermocline, 15 ft. Common practice. */
const DEEP_M = 4.5;
/** Five feet up from less than this, 10 ft, there is hardly a boat's draft of water. Common practice. */
const SHALLOW_M = 3;
const isStratified = ({ temperature_C, depth_m }: PlannedDay) =>
  temperature_C >= WARM_C && depth_m >= DEEP_M;
const SNAGGY: ReadonlySet<string> = new Set(['chunk rock', 'boulders', 'brush', 'stump']);
const HARD: ReadonlySet<string> = new Set(['chunk rock', 'boulders', 'stump']);

/** The rules of a day, in the order in which they are said. */
export const PLAN_RULES: readonly PlanRule[] = [
  {
    part: 'bottom',
    when: 'grass',
    holds: ({ ground }) => ground === 'grass',
    says: 'Grass: pop it loose each time it loads up. A drag balls up.',
    source: PRACTICE
  },
  {
    part: 'bottom',
    when: 'brush',
    holds: ({ ground }) => ground === 'brush',
    says: 'Brush: weedguard on. Lift it over each limb, then let it fall. A drag hangs.',
    source: PRACTICE
  },
  {
    part: 'bottom',
    when: 'rock or stumps',
    holds: ({ ground }) => HARD.has(ground),
    says: 'When it hangs up, ease off, then ease it over. It drops off the back: let it sit.',
    source: PRACTICE
  },
  {
    part: 'boat',
    when: 'there is wind',
    holds: ({ wind }) => wind !== 'calm',
    says: 'Bow into the wind. Cast within 45° of straight upwind: the belly in the line stays small.',
    source: PRACTICE
  },
  {
    part: 'boat',
    when: 'there is wind',
    holds: ({ wind }) => wind !== 'calm',
    says: 'Hold the boat. Drift onto the jig and you drag slack. Drift away and you drag it without trying.',
    source: MODEL
  },
  {
    part: 'boat',
    when: 'strong wind',
    holds: ({ wind }) => wind === 'strong',
    says: 'A size heavier than in calm: the belly takes your feel before the bottom.',
    source: PRACTICE
  },
  {
    part: 'boat',
    when: 'calm',
    holds: ({ wind }) => wind === 'calm',
    says: 'Stay a full cast off the spot. Fan your casts across it, one by one.',
    source: PRACTICE
  },
  {
    part: 'boat',
    when: 'rock, brush or stumps, no strong wind',
    holds: ({ ground, wind }) => SNAGGY.has(ground) && wind !== 'strong',
    says: 'Some put the boat shallow and cast deep: pulled uphill, it holds bottom. Guides differ.',
    source: PRACTICE
  },
  {
    part: 'boat',
    when: 'with clients, no wind',
    holds: ({ clients, wind }) => clients > 0 && wind === 'calm',
    says: 'Agree who casts on which side before the first cast, and never over a head.',
    source: PRACTICE
  },
  {
    part: 'boat',
    when: 'with clients, in wind',
    holds: ({ clients, wind }) => clients > 0 && wind !== 'calm',
    says: 'Everyone casts off the same side, angled upwind, never over a head. Agree on it before the first cast.',
    source: PRACTICE
  },
  {
    part: 'light',
    when: 'bright sun',
    holds: ({ light }) => light === 'bright',
    says: 'Bright sun: shade, cover and the deeper edge first.',
    source: PRACTICE
  },
  {
    part: 'light',
    when: 'low light',
    holds: ({ light }) => light === 'low',
    says: 'Low light: start on the shallow end of the depth, and go deeper as the sun climbs. At dusk, the other way around.',
    source: PRACTICE
  },
  {
    part: 'light',
    when: 'warm and deep water',
    holds: isStratified,
    says: 'Find the thermocline on your graph: below it there are often no fish.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    ...always,
    says: 'Move first: no fish on the graph, no bite in ten casts.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    when: 'shallow water',
    holds: ({ depth_m }) => depth_m < SHALLOW_M,
    says: 'Then depth: {5 ft|1.5 m} deeper, same retrieve.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    when: 'no shallow water, nor warm and deep',
    holds: (day) => day.depth_m >= SHALLOW_M && !isStratified(day),
    says: 'Then depth: {5 ft|1.5 m} shallower, {5 ft|1.5 m} deeper, same retrieve.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    when: 'warm and deep water',
    holds: isStratified,
    says: 'Then depth: {5 ft|1.5 m} shallower, same retrieve.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    when: 'slow fish, or cold water and no word of the fish',
    holds: ({ fish, temperature_C }) =>
      fish === 'slow' || (fish === 'unknown' && temperature_C < COLD_C),
    says: 'Then the pause: twice as long, in the same place.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    when: 'active fish, or warm water and no word of the fish',
    holds: ({ fish, temperature_C }) =>
      fish === 'active' || (fish === 'unknown' && temperature_C >= WARM_C),
    says: 'Then the pace: shorter pauses, a higher hop.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    ...always,
    says: 'Then the next retrieve on the list. Jig and color come last.',
    source: PRACTICE
  },
  {
    part: 'no bites',
    ...always,
    says: 'One change in ten casts.',
    source: PRACTICE
  },
  {
    part: 'caution',
    ...always,
    says: 'Jackets on, kill switch clipped. Local rules first.',
    source: PRACTICE
  },
  {
    part: 'caution',
    when: 'water under 59 °F',
    holds: ({ temperature_C }) => temperature_C < COLD_C,
    says: 'Cold water: ten minutes is all your hands have.',
    source: PRACTICE
  },
  {
    part: 'caution',
    when: 'water over 80 °F',
    holds: ({ temperature_C }) => temperature_C > HOT_C,
    says: 'Hot water kills tired fish: land them fast, put them straight back.',
    source: PRACTICE
  },
  {
    part: 'caution',
    when: '25 ft and deeper',
    holds: ({ depth_m }) => depth_m >= BLOATED_FROM_M,
    says: 'Bloated? Send it down on a descending device.',
    source: PRACTICE
  },
  {
    part: 'caution',
    when: 'strong wind',
    holds: ({ wind }) => wind === 'strong',
    says: 'Strong wind: if you have to ask, stay in.',
    source: PRACTICE
  },
  {
    part: 'caution',
    when: 'alone',
    holds: ({ clients }) => clients === 0,
    says: 'Alone: somebody on shore knows where, and when to call.',
    source: PRACTICE
  },
  {
    part: 'caution',
    when: 'with clients',
    holds: ({ clients }) => clients > 0,
    says: 'Glasses on everyone near a cast.',
    source: PRACTICE
  },
  {
    part: 'caution',
    ...always,
    says: 'First thunder: rods down, shelter, 30 minutes after the last.',
    source: PRACTICE
  }
];

/** What this day calls for of one part, in order. */
export function rulesFor(part: RulePart, day: PlannedDay): PlanRule[] {
  return PLAN_RULES.filter((rule) => rule.part === part && rule.holds(day));
}
