import { RETRIEVES } from '$lib/course';
import { firstWeight } from '$lib/course/plan';
import { FOOT_M, OUNCE_KG } from '$lib/model';
import type { DayPlan, LogEntry, Outfit, PlannedWeight, SpellDraft } from '$lib/wire';

/** Retrieves for fish: the others are skills. */
export const LOGGED_RETRIEVES = RETRIEVES.filter(({ suits }) => suits).map(({ name }) => name);

/** Casts before one thing is changed (trade.md). */
const CASTS = 10;
/** Where nothing is known. */
const FIRST_DEPTH_M = 15 * FOOT_M;
const FIRST_JIG = { jig: '1/2 oz jig', mass_kg: OUNCE_KG / 2 };

type Counted = 'felt' | 'casts' | 'bites' | 'fish' | 'drops_s' | 'looks' | 'note';
const NOTHING_YET: Pick<SpellDraft, Counted> = {
  felt: [],
  casts: CASTS,
  bites: 0,
  fish: 0,
  drops_s: [],
  looks: [],
  note: ''
};

/** The next spell: where and with what the last one was, or as planned, or as it comes. */
export function nextSpell(
  last: LogEntry | undefined,
  plan: DayPlan | undefined,
  outfits: readonly Outfit[],
  on: string
): SpellDraft {
  if (last && (!plan || last.plan === plan.id)) return { on, ...fromLast(last), ...NOTHING_YET };
  if (plan) return { on, ...fromPlan(plan), ...NOTHING_YET };
  const [outfit] = outfits;
  return {
    on,
    place: '',
    ...(outfit ? jigOf(outfit) : FIRST_JIG),
    depth_m: FIRST_DEPTH_M,
    ground: 'gravel',
    retrieve: LOGGED_RETRIEVES[0],
    pace: 'steady',
    ...NOTHING_YET
  };
}

export function jigOf({ id, name, jig }: Outfit): Pick<SpellDraft, 'outfit' | 'jig' | 'mass_kg'> {
  return { outfit: id, jig: name, mass_kg: jig.mass_kg };
}

function fromLast(last: LogEntry): Omit<SpellDraft, Counted | 'on'> {
  const { place, plan, outfit, jig, mass_kg, depth_m, ground, temperature_C, retrieve, pace } =
    last;
  return { place, plan, outfit, jig, mass_kg, depth_m, ground, temperature_C, retrieve, pace };
}

function fromPlan({ id, asked, weights }: DayPlan): Omit<SpellDraft, Counted | 'on'> {
  const { outfit, name, mass_kg }: PlannedWeight = weights[firstWeight(weights)];
  const { depth_m, ground, temperature_C } = asked;
  return {
    place: '',
    plan: id,
    ...{ outfit, jig: name, mass_kg, depth_m, ground, temperature_C },
    retrieve: LOGGED_RETRIEVES[0],
    pace: 'steady'
  };
}

/** More bites than casts, or fish than bites, draw the others along. */
export function recounted(
  draft: SpellDraft,
  change: Partial<Pick<SpellDraft, 'casts' | 'bites' | 'fish'>>
): SpellDraft {
  const { casts, bites, fish } = { ...draft, ...change };
  if (change.fish !== undefined) {
    const bitten = Math.max(bites, fish);
    return { ...draft, fish, bites: bitten, casts: Math.max(casts, bitten) };
  }
  if (change.bites !== undefined) {
    return { ...draft, bites, fish: Math.min(fish, bites), casts: Math.max(casts, bites) };
  }
  return { ...draft, casts, bites: Math.min(bites, casts), fish: Math.min(fish, bites, casts) };
}

/** What is kept of it. */
export function loggedSpell(draft: SpellDraft, made: Pick<LogEntry, 'id' | 'at'>): LogEntry {
  return { ...draft, ...made, place: draft.place.trim(), note: draft.note.trim() };
}
