import type { Result } from '../model';
import type { Challenge } from './challenge';
import { formatFine, LEAST_M, toldLength, type Units } from './display';
import type { GoalGrade } from './grade';
import { handRun } from './hand-run';
import { hasTurnedBack, NO_MOVE_M, tipTravel } from './run-measures';
import { toldWay, type ToldLength } from './way-words';

type Watered = Pick<Challenge, 'setup'>;

/** Less between tip and jig is not told, m. */
const TOLD_M = 0.1;

/** Why a jig came short on a line that began slack; '' where that is not why, or the advice says it. */
export function slackSentence(
  challenge: Watered,
  result: Result,
  travel: GoalGrade | undefined,
  units: Units
): string {
  if (travel?.goal.kind !== 'travel' || travel.met === 1) return '';
  if (travel.value < NO_MOVE_M || travel.value > travel.goal.target_m) return '';
  const hand = handRun(challenge, result);
  const took_m = apart(hand, toldWay([travel.goal], travel.value, units), units);
  const isSlack = !isBothWays(hand) && slackIn(challenge, took_m);
  return isSlack ? `Slack took the other ${formatFine(took_m, units)}. ` : '';
}

/**
 * How one tells a jig's way, unseen, by the tip's: with what it was, this time, that made them differ.
 * @param was the jig's way as it is told
 */
export function byTheTip(
  challenge: Watered,
  result: Result,
  was: ToldLength,
  units: Units
): string {
  const hand = handRun(challenge, result);
  if (isBothWays(hand)) return 'Count only the pull, not the tip’s way back.';
  const took_m = apart(hand, was, units);
  const way = 'Go by how far the tip moved';
  if (Math.abs(took_m) < TOLD_M) return `${way}.`;
  const told = formatFine(Math.abs(took_m), units);
  return took_m > 0
    ? `${way}, less the ${told} ${takenBy(challenge, took_m)}.`
    : `${way}, plus the ${told} ${addedBy(challenge, result)}.`;
}

/** How much farther the tip went than the jig, of the lengths that are told, so that the reader's sum comes out, m. */
function apart(hand: Result, jig: ToldLength, units: Units): number {
  return toldLength(tipTravel(hand), units) - jig.m;
}

function isBothWays(hand: Result): boolean {
  const { tip_x_m: x, tip_z_m: z } = hand.trace;
  const end = x.length - 1;
  return hasTurnedBack(Math.hypot(x[end] - x[0], z[end] - z[0]), tipTravel(hand));
}

function slackIn({ setup }: Watered, took_m: number): boolean {
  return Math.min(setup.start.slack_m ?? 0, took_m) >= TOLD_M - LEAST_M;
}

function takenBy(challenge: Watered, took_m: number): string {
  if ((challenge.setup.drift_m_s ?? 0) > 0) return 'the boat gave back';
  return slackIn(challenge, took_m) ? 'slack took' : 'the line took up';
}

function addedBy({ setup }: Watered, { hops }: Result): string {
  if ((setup.drift_m_s ?? 0) < 0) return 'the boat dragged it';
  return hops.length > 0 ? 'it swung in' : 'it ran on';
}
