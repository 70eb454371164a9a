import { findLesson, allLessons, isDragged, type Retrieve } from '$lib/course';
import {
  castsIn,
  CASTS_A_CHANGE,
  firstWeight,
  lightestThatHolds,
  LONGEST_COUNT_S,
  PLAIN_MOVES,
  rulesFor,
  weightUse,
  type PlanRule,
  type WeightUse
} from '$lib/course/plan';
import { GUIDES_PART, liftMeans } from '$lib/course/guides-see';
import { useOn } from '$lib/course/retrieves/use-on';
import { isSpawnWater, ON_BEDS, restRow, seasonRowNear } from '$lib/course/season-map';
import { guidesSeeItLift, isUnderUsual, losesFeel, usualOn_kg } from '$lib/course/usual-weight';
import { FOOT_M, isOffBottom } from '$lib/model';
import { aimFor, handDrill, type HandDrill } from '$lib/practice';
import { formatDepth, formatLength, formatTime, formatWeight, inUnits } from '$lib/scoring';
import type { DayPlan, PlanAsked, PlannedWeight } from '$lib/wire';
import { plannedRetrieves } from './made-plan.svelte';

type Units = DayPlan['units'];

const USES: Record<WeightUse, string> = {
  holds: 'Stays down',
  'slow only': 'Slow drags only',
  lifts: 'Lifts, even slow',
  'long count': `Slow fall: ${LONGEST_COUNT_S} s or more`
};

/** One jig of the box as a row: what the model says of it, and whether to begin with it. */
export interface WeightLine {
  name: string;
  count: string;
  far: string;
  near: string;
  says: string;
  isFirst: boolean;
}

export const TIE_IT_ON = 'Tie it on.';
/** Of the one to begin with where the box has none for the day. */
const NEAREST = 'The nearest you have.';

/** Of a plan, or of as much of its box as is worked out. */
type Weighed = Pick<DayPlan, 'asked' | 'units'> & { weights: readonly PlannedWeight[] };

export function weightLines({ asked, weights, units }: Weighed): WeightLine[] {
  const first = weights.length > 0 ? firstWeight(weights, asked) : -1;
  const begin = isBoxLight({ asked, weights }) ? NEAREST : TIE_IT_ON;
  return weights.map((one, i) => {
    const { fall, limit } = one;
    const at = (place: number) => countOf(limit, limit.count_s[place], units);
    return {
      name: weightName(one, units),
      count: `about ${formatTime(Math.round(fall[0]))}`,
      far: at(0),
      near: at(limit.count_s.length - 1),
      says: [i === first && begin, useText(one, asked)].filter(Boolean).join(' '),
      isFirst: i === first
    };
  });
}

/** Whether every jig of the box is too light for the day: by the model, or by what guides see of it. */
export function isBoxLight({ asked, weights }: Pick<Weighed, 'asked' | 'weights'>): boolean {
  const isLight = (one: PlannedWeight) =>
    losesFeel(one.mass_kg, asked) ||
    guidesSeeItLift(one.mass_kg, asked.depth_m) ||
    (isDragged(asked.ground) && asked.ground !== 'mud' && weightUse(one) === 'lifts');
  return weights.every(isLight);
}

/** Where nobody drags, only a long count is said of it. */
function useText(one: PlannedWeight, asked: PlanAsked): string {
  const use = weightUse(one);
  if (use === 'long count' && losesFeel(one.mass_kg, asked))
    return `${USES[use]}. Wind takes your feel`;
  if (!isDragged(asked.ground) && use !== 'long count') return '';
  if (use === 'lifts' && asked.ground === 'mud') return 'Jumps when mud lets go';
  if (use !== 'holds') return USES[use];
  if (guidesSeeItLift(one.mass_kg, asked.depth_m)) return 'Guides see it lift';
  return losesFeel(one.mass_kg, asked) ? 'Wind takes your feel' : USES.holds;
}

/** Why that one, and what the model says is the lightest: "Guides usually tie on 1/2 oz in 20 ft. …" */
export function firstWords({ asked, weights, units }: Weighed): string {
  const lightest = weights[lightestThatHolds(weights)];
  const depth = formatDepth(asked.depth_m, units);
  const up = asked.wind === 'strong' ? ', a size up for the wind' : '';
  const usual = `Most guides tie on ${formatWeight(usualOn_kg(asked), units)} in ${depth}${up}.`;
  if (!lightest || !isDragged(asked.ground)) return usual;
  const model = `By the model the lightest that holds and is down in ${LONGEST_COUNT_S} s: ${weightName(lightest, units)}.`;
  return `${usual} ${model}${doubtWords(lightest, asked)}`;
}

function doubtWords({ mass_kg }: PlannedWeight, asked: PlanAsked): string {
  if (guidesSeeItLift(mass_kg, asked.depth_m)) return ' Guides see that weight lift at this depth.';
  return losesFeel(mass_kg, asked) ? ' In this wind the belly takes your feel of it.' : '';
}

/** "2 ft in 4 s" */
const countOf = ({ tip_m }: PlannedWeight['limit'], count_s: number | null, units: Units) =>
  count_s === null ? 'at no pace' : `${formatLength(tip_m, units)} in ${formatTime(count_s)}`;

/** How far out, as an eye has it: "25 ft", in fives; whole meters. */
export function outText(m: number, units: Units): string {
  const step_m = units === 'metric' ? 1 : 5 * FOOT_M;
  return formatDepth(step_m * Math.max(1, Math.round(m / step_m)), units);
}

/** "No drag quicker than 2 ft of tip in 4 s. Within 25 ft of you, 6 s."; nothing where nobody drags. */
export function speedWords({ limit }: PlannedWeight, asked: PlanAsked, units: Units): string {
  if (!isDragged(asked.ground)) return '';
  const { tip_m, out_m, count_s } = limit;
  const [far, near] = [count_s[0], count_s[count_s.length - 1]];
  const inside = `Within ${outText(out_m[out_m.length - 1], units)} of you,`;
  if (far === null) return 'No drag keeps it down here. Go heavier.';
  const first = `No drag quicker than ${formatLength(tip_m, units)} of tip in ${formatTime(far)}.`;
  if (near === null) return `${first} ${inside} reel in and cast again.`;
  return near === far ? first : `${first} ${inside} ${formatTime(near)}.`;
}

/** What to do where the box is too light; empty where it is not. */
export function lightWords({ asked, weights, units }: DayPlan): string {
  if (!isBoxLight({ asked, weights })) return '';
  const isWind = weights.every(({ mass_kg }) => losesFeel(mass_kg, asked));
  if (weights.some(({ mass_kg }) => !isUnderUsual(mass_kg, asked)))
    return 'Go heavier, drag slower, or fish shallower.';
  const guides = `${isWind ? 'In this wind guides' : 'Guides'} tie on ${formatWeight(usualOn_kg(asked), units)}`;
  return `${guides}: get one, or fish shallower${isWind ? ' or out of the wind' : ''}.`;
}

const weightName = ({ outfit, name, mass_kg }: PlannedWeight, units: Units) =>
  outfit ? `${formatWeight(mass_kg, units)}, ${name}` : formatWeight(mass_kg, units);

/** "alone", "1 client", "2 clients" */
export const partyText = (clients: number) =>
  clients === 0 ? 'alone' : `${clients} ${clients === 1 ? 'client' : 'clients'}`;

/** "Half a day" is no number to plan by: "4 hours", "4½ hours". */
export function hoursText(minutes: number): string {
  const halves = Math.round(minutes / 30);
  const text = `${halves >= 2 ? Math.floor(halves / 2) : ''}${halves % 2 === 1 ? '½' : ''}`;
  return `${text} ${halves <= 2 ? 'hour' : 'hours'}`;
}

/** A retrieve of the day, trade and model apart. */
export interface RetrieveLine {
  name: string;
  trade: string;
  /** Empty where the model was not asked: a move that hardly moves the jig. */
  model: string;
  /** Whether guides see it go otherwise than the model does. */
  isLift: boolean;
  /** The challenge to practice it with. */
  challenge: string;
}

export function retrieveLines({ asked, moves, units }: DayPlan): RetrieveLine[] {
  return plannedRetrieves(asked).map((retrieve: Retrieve) => {
    const { name, challenges } = retrieve;
    const plain = PLAIN_MOVES.find((one) => one.retrieve === name);
    const made = moves.find((one) => one.retrieve === name);
    return {
      name,
      trade: inUnits(useOn(retrieve, asked), units),
      model:
        plain && made
          ? `${inUnits(plain.says, units)}: ${movedText(made, units, plain.isLift)}`
          : '',
      isLift: plain?.isLift === true,
      challenge: challenges[0]
    };
  });
}

function movedText({ came, high }: DayPlan['moves'][number], units: Units, isLift = false): string {
  if (!high) return 'your rod can’t.';
  const length = (m: number) => formatLength(m, units);
  // Farther than the tip: no figure to carry.
  if (!came) return `comes up ${upText(high, length)} and swings in.`;
  const up = isOffBottom(high[0]) ? `, up ${upText(high, length)}` : ', stays down';
  if (!isLift) return `goes ${length(came[0])} ± ${length(came[1])}${up}.`;
  const [guides, model] = liftMeans(came, units);
  return `comes about ${guides} (guides) or ${model} (model)${up}.`;
}

/** Less is no hop to anybody, m: an inch. */
const LEAST_SEEN_M = 0.0254;

/** "3 in to 2 ft 5 in", or "to 2 ft 5 in" for what may also stay down. */
function upText([m, half]: readonly [number, number], length: (m: number) => string): string {
  const least = m - half;
  return least >= LEAST_SEEN_M
    ? `${length(least)} to ${length(m + half)}`
    : `to ${length(m + half)}`;
}

export interface SheetRules {
  bottom: PlanRule[];
  boat: PlanRule[];
  light: PlanRule[];
  noBites: PlanRule[];
  /** In one line. */
  caution: string;
}

export function sheetRules(asked: PlanAsked, units: Units): SheetRules {
  const of = (part: Parameters<typeof rulesFor>[0]) =>
    rulesFor(part, asked).map((rule) => ({ ...rule, says: inUnits(rule.says, units) }));
  return {
    bottom: of('bottom'),
    boat: of('boat'),
    light: of('light'),
    noBites: of('no bites'),
    caution: of('caution')
      .map(({ says }) => says)
      .join(' ')
  };
}

/** "60 to 75 °F: look at first drops, humps, rock. Waits of 2 to 10 seconds.": the retrieves have their own list. */
export function seasonWords({ asked, on, units }: Pick<DayPlan, 'asked' | 'on' | 'units'>): string {
  const { says, where, inSpawn, inFall } = seasonRowNear(asked.temperature_C);
  const [water] = says.split(',');
  const month = Number(on.slice(5, 7));
  const isSpring = month >= SPRING[0] && month <= SPRING[1];
  const isSpawning = isSpring && isSpawnWater(asked.temperature_C);
  const first = isSpawning && inSpawn ? `${inSpawn} ` : '';
  const look = `${first}at ${(month > SUMMER_ENDS && inFall) || where}`;
  const beds = isSpawning ? ` ${ON_BEDS}` : '';
  return inUnits(`${water}: look ${look}. Waits of ${restRow(asked).pause}.${beds}`, units);
}
/** Months of the spawn, and the last of summer. Common practice, no source. */
const SPRING = [3, 6] as const;
const SUMMER_ENDS = 8;

/** Between the trade's 2 and 15 s, by the season's row, s. */
const PAUSE_S = { cold: 10, cool: 6, mild: 5, warm: 2 };

/** "Up to 30 casts, with 5-second waits.": by the moves of the first retrieve. */
export function castsWords({ asked, weights }: Pick<DayPlan, 'asked' | 'weights'>): string {
  const { fall, limit } = weights[firstWeight(weights, asked)];
  const pause_s = PAUSE_S[restRow(asked).id];
  // A jig that swims, or lies, is not moved by the rod: the next one counts.
  const [plain = PLAIN_MOVES[0]] = plannedRetrieves(asked).flatMap(
    ({ name }) => PLAIN_MOVES.find(({ retrieve }) => retrieve === name) ?? []
  );
  // No quicker than the sheet lets it be dragged.
  const takes_s = Math.max(plain.takes_s, (plain === PLAIN_MOVES[0] && limit.count_s[0]) || 0);
  // As far as guides see the jig come: the more moves to a cast.
  const tip_m = plain.tip_m * (plain.isLift ? GUIDES_PART : 1);
  const pace = { out_m: asked.out_m, fall_s: fall[0], tip_m, takes_s, pause_s };
  const casts = castsIn(asked.minutes, asked.clients, pace);
  const room = casts < CASTS_A_CHANGE ? ' No time for a change: stay with the first.' : '';
  const [each, talk] =
    asked.clients > 0
      ? [' each', ' Two thirds of the time goes to talk, knots and moving.']
      : ['', ''];
  return `Up to ${aboutCasts(casts)} casts${each}, with ${pause_s}-second waits.${talk}${room}`;
}

/** In fives, above ten: nobody plans a day to the cast. */
const aboutCasts = (casts: number) => (casts > 10 ? 5 * Math.round(casts / 5) : casts);

export interface HandLine extends HandDrill {
  /** "Want 1 ft, aim 8 in." Empty for a hand that is not known. */
  aim: string;
  steps: string[];
}

const WANTED = { imperial: 0.3048, metric: 0.3 };

export function handLine({ hand, units }: Pick<DayPlan, 'hand' | 'units'>): HandLine {
  const drill = handDrill(hand);
  const want_m = WANTED[units];
  const aim_m = hand && aimFor({ bait: { value: hand.goes, band: hand.band } }, want_m);
  const field = findLesson(drill.lesson, allLessons())?.sections.find(
    (one) => one.kind === 'field'
  );
  return {
    ...drill,
    aim: aim_m ? `Want ${formatLength(want_m, units)}: aim ${formatLength(aim_m, units)}.` : '',
    steps: field?.kind === 'field' ? field.steps.map((step) => inUnits(step, units)) : []
  };
}
