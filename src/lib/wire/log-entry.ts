import * as v from 'valibot';
import { baseMove, GROUND_KINDS } from '../model';
import { between, day, id, line, shortName, time, whole } from './fields';

/** Most entries of a log: ten seasons of twenty days, ten spells a day. */
export const MOST_ENTRIES = 2000;

/** What came up the line, in the trade's words. */
export const FELT_SIGNS = [
  'nothing',
  'bottom',
  'tap',
  'mush',
  'weight gone',
  'line moved',
  'snag'
] as const;
export const LOG_PACES = ['still', 'slow', 'steady', 'quick'] as const;

/** What a lowered camera showed of one move. */
const look = v.strictObject({
  move: baseMove,
  /** How far out the jig lay. */
  out_m: between(0.5, 100),
  /** Towards the angler. */
  travel_m: v.optional(between(-20, 20)),
  /** Above the bottom, at its highest. */
  peak_height_m: v.optional(between(0, 20))
});

const spellEntries = {
  on: day,
  /** As its angler calls it. It leaves the device in an export alone. */
  place: v.optional(line(60, 0), ''),
  /** The plan it was fished by. */
  plan: v.optional(shortName),
  /** Of the record's outfits; left out for none of them. */
  outfit: v.optional(shortName),
  /** The jig as it was called then. */
  jig: line(60),
  mass_kg: between(1e-4, 1),
  depth_m: between(0.3, 80),
  ground: v.picklist(GROUND_KINDS),
  temperature_C: v.optional(between(0, 40)),
  retrieve: line(40),
  pace: v.picklist(LOG_PACES),
  felt: v.pipe(v.array(v.picklist(FELT_SIGNS)), v.maxLength(FELT_SIGNS.length)),
  casts: whole(1, 500),
  /** Casts that were bitten on, those with a fish among them. */
  bites: whole(0, 500),
  fish: whole(0, 500),
  /** The jig let fall straight down beside the boat on a free spool, splash to slack. */
  drops_s: v.optional(v.pipe(v.array(between(0.2, 300)), v.maxLength(20)), []),
  looks: v.optional(v.pipe(v.array(look), v.maxLength(20)), []),
  note: v.optional(line(200, 0), '')
};

/** One spell of casts with one jig and one retrieve in one place. SI. docs/log-format.md. */
export const logEntry = v.pipe(
  v.strictObject({
    id,
    /** When it was last changed: of two the later stands. */
    at: time,
    ...spellEntries
  }),
  v.check(({ fish, bites }) => fish <= bites, 'fish must be bites, too'),
  v.check(({ bites, casts }) => bites <= casts, 'bites must be from as many casts or more')
);

/** A spell that is still being filled in: a reload must not lose it. */
export const spellDraft = v.pipe(
  v.strictObject(spellEntries),
  v.check(
    ({ casts, bites, fish }) => fish <= bites && bites <= casts,
    'casts, bites, fish must fall'
  )
);

export type SpellDraft = v.InferOutput<typeof spellDraft>;
export type LogEntry = v.InferOutput<typeof logEntry>;
export type FeltSign = (typeof FELT_SIGNS)[number];
export type LogPace = (typeof LOG_PACES)[number];
export type CameraLook = LogEntry['looks'][number];
