import { allLessons, findLesson, isDragged } from '$lib/course';
import { cautions, snagCaution } from '$lib/course/cautions';
import { fishCare } from '$lib/course/fish-care';
import { liftTexts } from '$lib/course/guides-see';
import { HOP_SAYS, LONGEST_COUNT_S, ownCount } from '$lib/course/plan';
import { overGround, windText } from '$lib/app/gear';
import { workedAt_m } from '$lib/compute/jobs/day-setup';
import { INCH_M, isOffBottom } from '$lib/model';
import { aimFor } from '$lib/practice';
import {
  formatDepth,
  formatLength,
  formatShare,
  formatTime,
  inUnits,
  type Units
} from '$lib/scoring';
import type { BoatCard, CardMove, CardRow } from '$lib/wire';

/** A part of the card: a heading on paper, a question on the phone, and a table or lines. */
export interface CardSection {
  row: CardRow;
  title: string;
  asks: string;
  table?: { head: readonly string[]; rows: readonly (readonly string[])[] };
  /** A sign with what it means, or a plain line. */
  lines?: readonly { sign?: string; says: string }[];
  note?: string;
}

/** Distances that a hand's correction is printed for. */
const MEANT: Record<Units, readonly number[]> = {
  imperial: [0.3048, 0.6096, 0.9144],
  metric: [0.3, 0.6, 0.9]
};
/** Cautions for a lawn and a pool have no place in a boat. */
const NOT_AFLOAT = new Set(['On the lawn']);

/** Why a jig that was tested may be dragged faster than the same one as published, though it planes. */
const OWN_COUNTS = ' From your own tests: less is left open, so a time may be shorter.';
/** What ± stands for: slack from none to twice what is left in the line, as the runs have it. */
const LEFT_OPEN = ' ± is slack, {0 to 2 in|0 to 5 cm}, and skirt.';
const OWN_LEAVES = ' ± is what your own tests leave open.';
/** Of drags alone: a lift has a range. */
const leftOpen = (bottom: BoatCard['bottom'], isOwn: boolean, units: Units) =>
  isDragged(bottom) ? inUnits(isOwn ? OWN_LEAVES : LEFT_OPEN, units) : '';
/** Common practice, no source: a lesson’s drag in wind begins so. */
const BELLY = ' Wind bellies the line: tip down, reel down, then move.';
/** No hand stops a tip nearer than this, m: common practice, no source. */
const LEAST_GIVE_M: Record<Units, number> = { imperial: INCH_M, metric: 0.02 };

const MAKERS: Record<CardRow, (card: BoatCard) => Omit<CardSection, 'row'> | null> = {
  moves: ({ moves, depths_m, out_m, bottom, wind, isOwn, units }) => ({
    title: 'Rod to jig',
    asks: 'How far does it go?',
    table: {
      head: ['Rod', ...depths_m.map((m) => `${formatDepth(m, units)} deep`)],
      rows: moves
        .filter(({ kind }) => kind !== 'drag' || isDragged(bottom))
        .map((one) => [
          moveText(one, units),
          ...[0, 1].map((i) => cameText(one, i, units, swingsIn(moves)))
        ])
    },
    note: `Jig ${formatDepth(workedAt_m(out_m), units)} out, a third of the cast fished.${leftOpen(bottom, isOwn, units)}${liftNote(moves)}${wind === 'calm' ? '' : BELLY}`
  }),
  // In grass and brush a drag balls up or hangs, at any count.
  limits: ({ limits, depths_m, isOwn, bottom, units }) =>
    isDragged(bottom)
      ? {
          title: 'Stays down',
          asks: 'How fast can I drag?',
          table: {
            head: ['Jig out', ...depths_m.map((m) => `${formatDepth(m, units)} deep`)],
            rows: limits.out_m.map((m, i) => [
              formatDepth(m, units),
              ...limits.count_s.map((row) => countText(row[i], limits.tip_m, units))
            ])
          },
          note: `No quicker than this, or it may leave the bottom.${isOwn ? OWN_COUNTS : ''} ${overGround(bottom)}`.trimEnd()
        }
      : null,
  falls: ({ falls, units }) => ({
    title: 'Count it down',
    asks: 'When is it down?',
    table: {
      head: ['Depth', 'Count'],
      rows: falls.map(([m, s]) => [formatDepth(m, units), `about ${formatTime(Math.round(s))}`])
    },
    note: `Free spool, from the splash. ${ownCount(falls.map(([, s, half]) => [s, half]))}${slowNote(falls)} Early stop? Reel down. It moves or pulls back: sweep. Dead: a ledge.`
  }),
  hand: ({ hand, units }) =>
    hand && {
      title: 'Your hand',
      asks: 'What do I aim for?',
      lines: [...MEANT[units].map((m) => ({ says: aimText(hand, m, units) }))],
      note: `Your last ${hand.tries} tries: ${formatShare(hand.goes)} of what you mean, give or take ${Math.round(hand.band * 100)}.`
    },
  bites: ({ units }) => ({
    title: 'Bite or bottom',
    asks: 'Is it a fish?',
    lines: cuesOf('bite-or-bottom', units),
    note: 'Bottom holds still. Fish move.'
  }),
  bottoms: ({ units }) => ({
    title: 'What bottom is it',
    asks: 'What am I on?',
    lines: cuesOf('reading-bottoms', units),
    note: 'Guides’ words. Drag slow to tell.'
  }),
  snag: ({ units }) => ({
    title: 'Snagged',
    asks: 'It’s stuck. What now?',
    lines: stepsOf('snags', units),
    note: 'Nobody in line with it, face turned away. Never wrap line on a hand.'
  }),
  fish: () => ({
    title: 'Fish care',
    asks: 'I have a fish.',
    lines: fishCare.map((says) => ({ says })),
    note: 'Common practice. Local rules come first.'
  }),
  cautions: ({ units, rows }) => ({
    title: 'Safety',
    asks: 'What can hurt?',
    lines: cautions
      .filter(({ name }) => !NOT_AFLOAT.has(name))
      // The part on snags says so itself.
      .map(({ name, text }) => ({
        sign: name,
        says: inUnits(rows.includes('snag') ? text.replace(snagCaution, '').trim() : text, units)
      }))
  })
};

/** The parts that this card shows, in the order of printing; a hand that is not known has none. */
export function cardSections(card: BoatCard): CardSection[] {
  return (Object.keys(MAKERS) as CardRow[]).flatMap((row) => {
    const made = card.rows.includes(row) ? MAKERS[row](card) : null;
    return made ? [{ row, ...made }] : [];
  });
}

/** What is asked in the boat before anything else. */
const ASKED_FIRST: readonly CardRow[] = ['snag', 'bites'];

/** The parts as a phone has them, one question at a time. */
export function phoneOrder(sections: readonly CardSection[]): CardSection[] {
  const first = ASKED_FIRST.flatMap((row) => sections.find((one) => one.row === row) ?? []);
  return [...first, ...sections.filter(({ row }) => !ASKED_FIRST.includes(row))];
}

/** Letters up to which a part leaves much room on a phone, or some. */
const MUCH_BELOW = 90;
const SOME_BELOW = 240;

/** How much room a part leaves on a phone's screen: it is set so much larger. */
export function phoneRoom({ table, lines }: Pick<CardSection, 'table' | 'lines'>) {
  const texts = [
    ...(table?.rows.flat() ?? []),
    ...(lines?.flatMap(({ sign = '', says }) => [sign, says]) ?? [])
  ];
  const letters = texts.reduce((sum, text) => sum + text.length, 0);
  if (letters < MUCH_BELOW) return 'much';
  return letters < SOME_BELOW ? 'some' : '';
}

/** The lesson's hop is told by its tip; no other lift of a card is as short. */
const isHop = (move: CardMove) => move.kind === 'lift' && move.to_hour - move.from_hour < 0.5;

/** "1 ft in 2 s", "9 to 10 in 1.5 s" */
function moveText(move: CardMove, units: Units): string {
  const seconds = formatTime(move.duration_s);
  if (isHop(move)) return inUnits(HOP_SAYS, units);
  return move.kind === 'drag'
    ? `Tip ${formatLength(move.tip_m, units)} in ${seconds}`
    : `Up ${move.from_hour} to ${move.to_hour} o’clock in ${seconds}`;
}

/** Whether a lift of the card brings the jig farther than its tip: there is no figure to carry, then for none of them. */
const swingsIn = (moves: readonly CardMove[]) =>
  moves.some((move) => move.kind === 'lift' && move.came.some((one, i) => !one && move.high[i]));

/** The card has a jig's counts and not its weight: a count that nobody holds says that it is light there. */
function slowNote(falls: BoatCard['falls']): string {
  if (falls.every(([, s]) => Math.round(s) <= LONGEST_COUNT_S)) return '';
  return ` Over ${LONGEST_COUNT_S} s: light for that depth. Go heavier.`;
}

function liftNote(moves: readonly CardMove[]): string {
  if (moves.every(({ kind }) => kind !== 'lift')) return '';
  return swingsIn(moves)
    ? ' Lifts swing in: the jig lands closer to you than the tip’s pull alone.'
    : ' Lifts: guides see the low end.';
}

/** "1 ft ± 1 in", "1 ft to 3 ft, up to 8 in high", and where lifts swing in "up to 8 in high" */
function cameText(move: CardMove, depth: number, units: Units, isSwung: boolean): string {
  const came = move.came[depth];
  if (move.kind === 'drag')
    return came ? `${give(came, units)}${move.lifts[depth] ? ', may lift' : ''}` : 'can’t';
  const high = move.high[depth];
  if (!high) return 'can’t';
  const most_m = high[0] + high[1];
  const up = isOffBottom(most_m) ? `up to ${formatLength(most_m, units)} high` : 'stays down';
  return isSwung || !came ? up : `${liftTexts(came, units).join(' to ')}, ${up}`;
}

function give([m, half]: readonly [number, number], units: Units): string {
  const give_m = Math.max(half, LEAST_GIVE_M[units]);
  return `${formatLength(m, units)} ± ${formatLength(give_m, units)}`;
}

/** "2 ft in 4 s" */
function countText(count_s: number | null, tip_m: number, units: Units): string {
  return count_s === null
    ? 'at no pace'
    : `${formatLength(tip_m, units)} in ${formatTime(count_s)}`;
}

/** "Mean 1 ft, aim 8 in." */
function aimText({ goes, band }: NonNullable<BoatCard['hand']>, m: number, units: Units): string {
  const aim_m = aimFor({ bait: { value: goes, band } }, m);
  const want = formatLength(m, units);
  return aim_m === null
    ? `Want ${want}: your tries are too uneven to say`
    : `Want ${want}, aim ${formatLength(aim_m, units)}`;
}

function cuesOf(lesson: string, units: Units): { sign: string; says: string }[] {
  const feel = sectionsOf(lesson).find((one) => one.kind === 'feel');
  if (feel?.kind !== 'feel') throw new Error(`card: lesson ${lesson} has nothing to feel`);
  return feel.cues.map(({ sign, means }) => ({ sign, says: inUnits(means, units) }));
}

function stepsOf(lesson: string, units: Units): { says: string }[] {
  const field = sectionsOf(lesson).find((one) => one.kind === 'field');
  if (field?.kind !== 'field') throw new Error(`card: lesson ${lesson} has no steps`);
  return field.steps.map((step) => ({ says: inUnits(step, units) }));
}

function sectionsOf(id: string) {
  const lesson = findLesson(id, allLessons());
  if (!lesson) throw new Error(`card: no lesson ${id}`);
  return lesson.sections;
}

/** "15 ft and 30 ft deep, 60 ft cast, sand, 60 °F, no wind" */
export function waterText(card: BoatCard, temperature: string): string {
  const { depths_m, out_m, bottom, wind, units } = card;
  const depths = depths_m.map((m) => formatDepth(m, units)).join(' and ');
  const cast = `${formatDepth(out_m, units)} cast`;
  return [`${depths} deep`, cast, bottom, temperature, windText(wind, units)].join(', ');
}
