import * as v from 'valibot';
import { GROUND_KINDS } from '../model';
import { WINDS } from './conditions';
import { between, day, line, shortName } from './fields';

const CARD_SIZES = ['letter', 'a4', 'a6'] as const;
/** Parts of a card that may be left off, in the order in which they are printed. */
export const CARD_ROWS = [
  'moves',
  'limits',
  'falls',
  'hand',
  'bites',
  'bottoms',
  'snag',
  'fish',
  'cautions'
] as const;

const length_m = between(-100, 100);
const duration_s = between(0, 600);
/** A value with its give or take; null where the gear cannot do it. */
export const reading = v.nullable(v.tuple([length_m, between(0, 100)]));
/** In each of the card's two depths. */
const inBoth = <S extends v.GenericSchema>(one: S) => v.tuple([one, one]);

const move = v.variant('kind', [
  v.strictObject({
    kind: v.literal('drag'),
    /** The tip goes so much away from the jig, low and to the side. */
    tip_m: between(0.01, 6),
    duration_s,
    came: inBoth(reading),
    /** Whether it may leave the bottom, in each depth. */
    lifts: inBoth(v.boolean())
  }),
  v.strictObject({
    kind: v.literal('lift'),
    from_hour: between(6, 12),
    to_hour: between(6, 12),
    duration_s,
    came: inBoth(reading),
    high: inBoth(reading)
  })
]);

/** What the model says of one outfit for a card: figures alone, in SI. */
const cardFiguresEntries = {
  moves: v.pipe(v.array(move), v.maxLength(12)),
  /** Fewest whole seconds for a drag of the tip that stays down whatever is unknown; null for none. */
  limits: v.strictObject({
    tip_m: between(0.01, 6),
    out_m: v.pipe(v.array(between(1, 100)), v.minLength(1), v.maxLength(5)),
    count_s: inBoth(v.pipe(v.array(v.nullable(duration_s)), v.minLength(1), v.maxLength(5)))
  }),
  /** Depth, seconds from the splash to the bottom on a free spool, give or take. */
  falls: v.pipe(v.array(v.tuple([between(0.1, 80), duration_s, between(0, 600)])), v.maxLength(12))
};

/** A hand as a ruler, at the end of so many tries. */
export const handEntries = {
  goes: between(0, 20),
  band: between(0, 20),
  tries: between(1, 10_000)
};

/** A boat card whole: what is printed, and what its link carries. */
export const boatCard = v.strictObject({
  on: day,
  /** Version of the bait model that the figures are from. */
  model: shortName,
  name: line(60),
  /** The outfit in words. */
  gear: line(200),
  /** Whether its figures are with what tests of this outfit told. */
  isOwn: v.optional(v.boolean(), false),
  place: v.optional(line(60, 0), ''),
  units: v.picklist(['imperial', 'metric']),
  size: v.picklist(CARD_SIZES),
  rows: v.pipe(v.array(v.picklist(CARD_ROWS)), v.maxLength(CARD_ROWS.length)),
  depths_m: inBoth(between(0.5, 40)),
  /** How far out the jig lies after the cast. */
  out_m: between(1, 100),
  temperature_C: between(0, 40),
  bottom: v.picklist(GROUND_KINDS),
  /** The day's wind; a card of a time when there was none on it is of a calm day. */
  wind: v.optional(v.picklist(WINDS), 'calm'),
  ...cardFiguresEntries,
  /** What the hand does of what it means, give or take, after so many tries. */
  hand: v.nullable(v.strictObject(handEntries))
});

export type BoatCard = v.InferOutput<typeof boatCard>;
export type CardFigures = Pick<BoatCard, keyof typeof cardFiguresEntries>;
export type CardMove = BoatCard['moves'][number];
export type CardRow = (typeof CARD_ROWS)[number];
export type CardSize = (typeof CARD_SIZES)[number];
