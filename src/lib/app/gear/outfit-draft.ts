import type { LineMaterialName } from '$lib/model';
import { diameterFor } from '$lib/sandbox/gear';
import {
  typedLength_m,
  typedNumber,
  typedTemperature_C,
  typedWeight_kg,
  type Units
} from '$lib/scoring';
import { outfit as outfitSchema, type Outfit } from '$lib/wire';
import * as v from 'valibot';
import { dropText } from './outfit-words';
import { written } from './written';

/** An outfit as it is being typed; an empty field is one that was not measured. */
export interface OutfitDraft {
  name: string;
  weight: string;
  head: string;
  trailer: string;
  dropDistance: string;
  dropTimes: string;
  dropWater: string;
  rod: string;
  held: string;
  hung: string;
  down: string;
  material: LineMaterialName;
  strength: string;
  diameter: string;
  hasLeader: boolean;
  leaderStrength: string;
  leaderLength: string;
}

export type DraftField = Exclude<keyof OutfitDraft, 'hasLeader' | 'material'>;
/** What is wrong with a field, in words. */
export type DraftFaults = Partial<Record<DraftField, string>>;

/** Bare numbers are in these units. */
const BARE = {
  imperial: {
    weight: 'oz',
    rod: 'ft',
    short: 'in',
    drop: 'ft',
    hung: 'oz',
    diameter: 'in',
    water: 'F'
  },
  metric: { weight: 'g', rod: 'm', short: 'cm', drop: 'm', hung: 'g', diameter: 'mm', water: 'C' }
} as const satisfies Record<Units, object>;

/** Where a rod is held that nobody has measured: BUTT_M, as each tape has it. */
const HELD: Record<Units, string> = { imperial: '15 in', metric: '38 cm' };

/** A fluorocarbon leader unless it says otherwise. */
const LEADER_MATERIAL = 'fluorocarbon';

export function draftOf(outfit: Outfit | null, units: Units): OutfitDraft {
  const { length, weight, diameter, temperature } = written(units);
  const { jig, rod, line } = outfit ?? {};
  const drop = jig?.drop;
  return {
    name: outfit?.name ?? '',
    weight: jig ? weight(jig.mass_kg) : '',
    head: jig?.head ?? '',
    trailer: jig?.trailer ?? '',
    dropDistance: drop ? length(drop.distance_m) : '',
    dropTimes: drop?.times_s.join('  ') ?? '',
    dropWater: drop ? temperature(drop.temperature_C) : '',
    rod: rod ? length(rod.length_m) : '',
    held: rod ? length(rod.held_m) : HELD[units],
    hung: rod?.flex ? weight(rod.flex.hung_kg) : '',
    down: rod?.flex ? length(rod.flex.down_m) : '',
    material: line?.material ?? 'fluorocarbon',
    strength: line?.strength_lb ? `${line.strength_lb}` : '',
    diameter: line && !line.strength_lb ? diameter(line.diameter_m) : '',
    hasLeader: line?.leader !== undefined,
    leaderStrength: line?.leader ? diameter(line.leader.diameter_m) : '',
    leaderLength: line?.leader ? length(line.leader.length_m) : ''
  };
}

/** Reads a draft over what was known of the outfit. Own numbers stay while jig, rod and line do. */
export function readDraft(
  draft: OutfitDraft,
  units: Units,
  { id, at, before }: { id: string; at: string; before: Outfit | null }
): { outfit: Outfit } | { faults: DraftFaults } {
  const read = new DraftReader(draft, units);
  const made = {
    id,
    at,
    name: read.name(),
    jig: {
      ...read.jig(),
      ...(before?.jig.drag_area_m2 && { drag_area_m2: before.jig.drag_area_m2 })
    },
    rod: read.rod(),
    line: read.line()
  };
  if (Object.keys(read.faults).length > 0) return { faults: read.faults };
  const parsed = v.safeParse(outfitSchema, made);
  if (!parsed.success) return { faults: { [fieldOf(parsed.issues[0])]: FAULTS.range } };
  const outfit = parsed.output;
  if (before?.own && isSameTackle(before, outfit)) {
    return { outfit: { ...outfit, own: before.own, asPublished: before.asPublished } };
  }
  return { outfit };
}

/** Whether what was fitted of one holds for the other. */
function isSameTackle(a: Outfit, b: Outfit): boolean {
  const tackle = ({ jig: { mass_kg, head, trailer }, rod, line }: Outfit) =>
    JSON.stringify([mass_kg, head, trailer, rod, line]);
  return tackle(a) === tackle(b);
}

const FAULTS = {
  range: 'That’s out of range. Check the unit.',
  name: 'Give it a name you’ll know in the boat.',
  weight: { imperial: 'Weight as 5/8 or 5/8 oz.', metric: 'Weight as 18 or 18 g.' },
  rod: { imperial: 'Length as 7 ft 2 in.', metric: 'Length as 2.18 m.' },
  short: { imperial: 'A length as 15 or 15 in.', metric: 'A length as 38 or 38 cm.' },
  drop: { imperial: 'Distance as 8 or 8 ft.', metric: 'Distance as 2.5 or 2.5 m.' },
  times: 'Seconds, one or more, with spaces between: 2.1 2.0 2.2.',
  water: { imperial: 'Temperature as 60 or 60 °F.', metric: 'Temperature as 15 or 15 °C.' },
  both: 'Fill in both, or neither.',
  strength: 'Pound test as 12. Or give the diameter.',
  diameter: { imperial: 'Diameter as 0.011 in.', metric: 'Diameter as 0.28 mm.' },
  leader: 'Pound test as 15, or a diameter with its unit.'
};

class DraftReader {
  readonly faults: DraftFaults = {};
  private readonly bare: (typeof BARE)[Units];

  constructor(
    private readonly draft: OutfitDraft,
    private readonly units: Units
  ) {
    this.bare = BARE[units];
  }

  name(): string {
    const name = this.draft.name.trim();
    if (name === '') this.faults.name = FAULTS.name;
    return name;
  }

  jig() {
    const { head, trailer } = this.draft;
    return {
      mass_kg: this.weight('weight', this.bare.weight),
      head: head.trim(),
      trailer: trailer.trim(),
      ...this.drop()
    };
  }

  private drop() {
    const { dropDistance, dropTimes, dropWater } = this.draft;
    if (dropDistance.trim() === '' && dropTimes.trim() === '') return {};
    const distance_m = typedLength_m(dropDistance, this.bare.drop);
    const times = dropTimes
      .trim()
      .split(/[\s;]+/)
      .map(typedNumber);
    const temperature_C =
      dropWater.trim() === '' ? undefined : typedTemperature_C(dropWater, this.bare.water);
    if (distance_m === null) this.faults.dropDistance = FAULTS.drop[this.units];
    if (times.some((time) => time === null)) this.faults.dropTimes = FAULTS.times;
    if (temperature_C === null) this.faults.dropWater = FAULTS.water[this.units];
    return { drop: { distance_m, times_s: times, temperature_C } };
  }

  rod() {
    const { hung, down } = this.draft;
    const isFlexed = hung.trim() !== '' || down.trim() !== '';
    if (isFlexed && (hung.trim() === '' || down.trim() === '')) this.faults.down = FAULTS.both;
    return {
      length_m: this.length('rod', this.bare.rod, FAULTS.rod),
      held_m: this.length('held', this.bare.short, FAULTS.short),
      ...(isFlexed && {
        flex: {
          hung_kg: this.weight('hung', this.bare.hung),
          down_m: this.length('down', this.bare.short, FAULTS.short)
        }
      })
    };
  }

  line() {
    const { material, strength, diameter, hasLeader } = this.draft;
    const strength_lb = strength.trim() === '' ? undefined : typedNumber(strength);
    const typed = diameter.trim() !== '';
    if (strength_lb === null || (strength_lb === undefined && !typed)) {
      this.faults.strength = FAULTS.strength;
    }
    return {
      material,
      strength_lb,
      diameter_m: typed
        ? this.length('diameter', this.bare.diameter, FAULTS.diameter)
        : diameterFor(material, strength_lb ?? 12),
      ...(hasLeader && { leader: this.leader() })
    };
  }

  private leader() {
    const { leaderStrength } = this.draft;
    const strength_lb = typedNumber(leaderStrength);
    const diameter_m =
      strength_lb !== null && strength_lb >= 1
        ? diameterFor(LEADER_MATERIAL, strength_lb)
        : typedLength_m(leaderStrength, this.bare.diameter);
    if (diameter_m === null) this.faults.leaderStrength = FAULTS.leader;
    return {
      material: LEADER_MATERIAL,
      diameter_m,
      length_m: this.length('leaderLength', this.bare.drop, FAULTS.drop)
    };
  }

  private weight(field: 'weight' | 'hung', bare: 'oz' | 'g'): number | null {
    const kg = typedWeight_kg(this.draft[field], bare);
    if (kg === null) this.faults[field] = FAULTS.weight[this.units];
    return kg;
  }

  private length(
    field: 'rod' | 'held' | 'down' | 'diameter' | 'leaderLength',
    bare: Parameters<typeof typedLength_m>[1],
    says: Record<Units, string>
  ): number | null {
    const m = typedLength_m(this.draft[field], bare);
    if (m === null) this.faults[field] = says[this.units];
    return m;
  }
}

const FIELDS: readonly (readonly [path: string, field: DraftField])[] = [
  ['name', 'name'],
  ['jig.mass_kg', 'weight'],
  ['jig.head', 'head'],
  ['jig.trailer', 'trailer'],
  ['jig.drop.distance_m', 'dropDistance'],
  ['jig.drop.times_s', 'dropTimes'],
  ['jig.drop.temperature_C', 'dropWater'],
  ['rod.held_m', 'held'],
  ['rod.flex.hung_kg', 'hung'],
  ['rod.flex', 'down'],
  ['rod', 'rod'],
  ['line.strength_lb', 'strength'],
  ['line.leader.length_m', 'leaderLength'],
  ['line.leader', 'leaderStrength'],
  ['line', 'diameter']
];

function fieldOf(issue: v.BaseIssue<unknown>): DraftField {
  const path = v.getDotPath(issue) ?? '';
  return FIELDS.find(([start]) => path.startsWith(start))?.[1] ?? 'name';
}

/** Stands in for whatever the drop does not need. */
const REST = {
  name: 'drop',
  rod: '2 m',
  held: '30 cm',
  ...{ hung: '', down: '', strength: '12', diameter: '', hasLeader: false }
};

/** What the drop as typed so far says; empty while it cannot be read. */
export function dropSoFar(draft: OutfitDraft, units: Units): string {
  const read = readDraft({ ...draft, ...REST }, units, { id: 'drop', at: NO_TIME, before: null });
  return 'outfit' in read ? dropText(read.outfit, units) : '';
}
const NO_TIME = '2000-01-01T00:00:00.000Z';
