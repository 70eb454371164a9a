import { dayNumberOf, type Days } from '../../src/lib/practice';
import {
  type DayPlan,
  emptyRecord,
  type LearnerRecord,
  type LogEntry,
  type Outfit,
  type SpellDraft,
  type StoredAnswer,
  type StoredTry,
  type TestSession
} from '../../src/lib/wire';

export function aTry(id: string, more: Partial<StoredTry> = {}): StoredTry {
  return {
    id,
    challenge: 'reed-bay-drag',
    input: { kind: 'rod_input', rate_Hz: 100, elevation_deg: 8, azimuth_deg: [0, 4.5, 11.25] },
    model: '1.0.0',
    at: '2030-05-01T08:15:00.000Z',
    ...more
  };
}

export function anAnswer(id: string, more: Partial<StoredAnswer> = {}): StoredAnswer {
  return {
    id,
    item: 'mark-drag',
    seed: 17,
    given: 0.42,
    right: true,
    report: 'worked out',
    model: '1.1.0',
    at: '2030-05-01T08:30:00.000Z',
    ...more
  };
}

export function anOutfit(id: string, more: Partial<Outfit> = {}): Outfit {
  return {
    id,
    name: 'Half ounce on twelve pound',
    at: '2030-05-01T08:00:00.000Z',
    jig: { mass_kg: 0.0142, head: 'football', trailer: '' },
    rod: { length_m: 2.2, held_m: 0.4 },
    line: { material: 'fluorocarbon', diameter_m: 0.00028, strength_lb: 12 },
    asPublished: false,
    ...more
  };
}

/** @param id 16 letters or more */
export function aSession(id: string, more: Partial<TestSession> = {}): TestSession {
  return {
    id,
    name: 'At the pool',
    at: '2030-05-01T09:00:00.000Z',
    on: '2030-05-01',
    by: 'Ove',
    notes: '',
    gear: {
      water: { depth_m: 3 },
      line: { diameter_m: 0.00033 },
      bait: { mass_kg: 0.0142 },
      start: { bait_x_m: 12, slack_m: 0.15 }
    },
    tests: [
      {
        move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 0 },
        travel_m: 1.2,
        note: ''
      }
    ],
    known: {},
    drops: [],
    invented: false,
    ...more
  };
}

export function aDraft(more: Partial<SpellDraft> = {}): SpellDraft {
  return {
    on: '2030-05-01',
    place: 'North hump',
    outfit: 'o1',
    jig: 'Half ounce on twelve pound',
    mass_kg: 0.0142,
    depth_m: 6.1,
    ground: 'gravel',
    retrieve: 'drag',
    pace: 'steady',
    felt: ['bottom', 'tap'],
    casts: 10,
    bites: 2,
    fish: 1,
    drops_s: [],
    looks: [],
    note: '',
    ...more
  };
}

/** @param id 16 letters or more */
export function aPlan(id: string, more: Partial<DayPlan> = {}): DayPlan {
  return {
    id,
    at: '2030-05-01T05:00:00.000Z',
    on: '2030-05-01',
    name: '1 May 2030',
    model: '1.4.0',
    units: 'imperial',
    asked: {
      depth_m: 6.096,
      ground: 'gravel',
      temperature_C: 7,
      wind: 'calm',
      fish: 'slow',
      light: 'clouds',
      out_m: 18.288,
      minutes: 240,
      clients: 0
    },
    weights: [
      {
        outfit: 'o2',
        name: 'Ounce on braid',
        mass_kg: 0.0284,
        fall: [7.9, 3],
        limit: { tip_m: 0.6096, out_m: [18.288, 7.315], count_s: [2, 3] }
      },
      {
        outfit: 'o1',
        name: 'Half ounce on twelve pound',
        mass_kg: 0.0142,
        fall: [11.1, 4.2],
        limit: { tip_m: 0.6096, out_m: [18.288, 7.315], count_s: [3, 5] }
      }
    ],
    moves: [{ retrieve: 'drag', came: [0.564, 0.033], high: [0, 0] }],
    hand: { goes: 1.5, band: 0.1, tries: 12, strays: 0.2, lifted: 0.4 },
    ...more
  };
}

/** @param id 16 letters or more */
export function anEntry(id: string, more: Partial<LogEntry> = {}): LogEntry {
  return { id, at: '2030-05-01T08:40:00.000Z', ...aDraft(), ...more };
}

export function aRecord(more: Partial<LearnerRecord> = {}): LearnerRecord {
  return {
    ...emptyRecord(),
    settings: { units: 'metric', scheme: 'dark' },
    predictions: [
      { lesson: 'one-foot', station: 'predict', option: 'twice', at: '2030-05-01T08:10:00.000Z' }
    ],
    progress: [
      {
        lesson: 'one-foot',
        reached: ['about', 'drag'],
        at: '2030-05-01T08:20:00.000Z',
        finished: null
      }
    ],
    tries: [aTry('t1'), aTry('t2', { at: '2030-05-01T08:16:00.000Z', guess_m: 0.4 })],
    ...more
  };
}

/** The calendar of somebody whose clock is `offset_min` ahead of UTC, at the time `now`. */
export function daysAt(now: string, offset_min = 0): Days {
  const of = (at: string) => dayNumberOf(at, offset_min);
  return { today: of(now), of };
}
