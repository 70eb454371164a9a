import { RETRIEVES } from '$lib/course';
import { firstWeight } from '$lib/course/plan';
import { OUNCE_KG } from '$lib/model';
import {
  waterNow,
  type DayPlan,
  type LogEntry,
  type Outfit,
  type PlannedWeight,
  type Settings,
  type SpellDraft
} from '$lib/wire';

/** Retrieves for fish: the others are skills. */
export const LOGGED_RETRIEVES = RETRIEVES.filter(({ suits }) => suits).map(({ name }) => name);

/** Casts before one thing is changed (trade.md). */
const CASTS = 10;
/** Where nothing is known. */
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

/** What the next spell may begin with, the nearest first. */
export interface SpellBefore {
  /** Of the same day. */
  last?: LogEntry;
  /** The day's. */
  plan?: DayPlan;
  /** Of a day before: where it was, and how. */
  earlier?: LogEntry;
  /** Gear and water of the other pages. */
  outfits: readonly Outfit[];
  settings: Settings;
}

/** The next spell: where and with what the last one was, or as planned, or with the gear and water of now. */
export function nextSpell(before: SpellBefore, on: string): SpellDraft {
  const { last, plan, earlier, outfits, settings } = before;
  if (last && (!plan || last.plan === plan.id)) return { on, ...fromLast(last), ...NOTHING_YET };
  if (plan) return { on, ...fromPlan(plan), ...NOTHING_YET };
  const outfit = outfits.find(({ id }) => id === settings.outfit) ?? outfits[0];
  const { depth_m, ground } = earlier && !settings.water ? earlier : waterNow(settings);
  return {
    on,
    ...(earlier ? { ...fromLast(earlier), plan: undefined } : FIRST_SPELL),
    ...(outfit && jigOf(outfit)),
    ...{ depth_m, ground },
    ...NOTHING_YET
  };
}

/** Gear and water of an entry, for the other pages. */
export function settingsOf(entry: SpellDraft, settings: Settings): Partial<Settings> {
  const { outfit, depth_m, ground, temperature_C } = entry;
  const before = waterNow(settings);
  const water = {
    ...before,
    depth_m,
    ground,
    temperature_C: temperature_C ?? before.temperature_C
  };
  return { water, ...(outfit && { outfit }) };
}

export function jigOf({ id, name, jig }: Outfit): Pick<SpellDraft, 'outfit' | 'jig' | 'mass_kg'> {
  return { outfit: id, jig: name, mass_kg: jig.mass_kg };
}

const FIRST_SPELL = {
  place: '',
  ...FIRST_JIG,
  retrieve: LOGGED_RETRIEVES[0],
  pace: 'steady'
} as const;

function fromLast(last: LogEntry): Omit<SpellDraft, Counted | 'on'> {
  const { place, plan, outfit, jig, mass_kg, depth_m, ground, temperature_C, retrieve, pace } =
    last;
  return { place, plan, outfit, jig, mass_kg, depth_m, ground, temperature_C, retrieve, pace };
}

function fromPlan({ id, asked, weights }: DayPlan): Omit<SpellDraft, Counted | 'on'> {
  const { outfit, name, mass_kg }: PlannedWeight = weights[firstWeight(weights, asked)];
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
