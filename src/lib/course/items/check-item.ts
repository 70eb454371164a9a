import { inUnits, wordingFault, type Units } from '../../scoring';
import { reportFaults, voiceFaults, wordCount } from '../voice';
import { figuresOf } from './figures';
import type { Evidence, Item } from './item';
import { areFarApart, isAbove, measured, shownScenarioOf, timesFaults } from './measure';
import { liftsAlike, onlyWithin } from './limits-item';
import { onlyScaled } from './scaled-item';
import { isDrawnAlone } from './drawn-item';
import { claimedFaults, repliesOf } from './claimed';
import { isCertainSign } from './sign';
import { tipFaults } from './tip-said';

/** Longest words that stand on a narrow phone without scrolling far, characters. */
const LONGEST = { ask: 330, option: 70 };
/** Options differ in length by less than this, so that length gives nothing away. */
const LIKE_LENGTH = 26;
/** What is added up in one question is in feet from two on, not in inches here and in feet there. */
const LONG_INCHES = /(?<!ft\u00a0)\b(2[4-9]|[3-9]\d)\u00a0in\b/;
/** Fewer words give no reason. The reply tells why the chosen one is wrong, what is explained why the right one is right. */
const LEAST_WORDS = { reply: 3, explain: 6 };
const UNITS: readonly Units[] = ['imperial', 'metric'];

/** What is wrong with an item, computed from its cases anew; empty for a good one. */
export function faultsOf(item: Item): string[] {
  return [
    ...wordFaults(item),
    ...answerFaults(item),
    ...evidenceFaults(item),
    ...claimedFaults(item),
    ...tipFaults(item)
  ];
}

function wordFaults(item: Item): string[] {
  const { ask, answer, explain, cases } = item;
  const says =
    answer.form === 'choose' ? answer.options : answer.form === 'order' ? answer.things : [];
  const authored = [ask, ...says.map((one) => one.says), ...cases.map(({ caption }) => caption)];
  const replies = repliesOf(answer);
  const texts = [...authored, ...replies, explain];
  return [
    ...texts.flatMap((text) => (wordingFault(text) ? [`cannot write ${wordingFault(text)}`] : [])),
    ...texts
      .filter((text) => /NaN|Infinity|undefined/.test(text))
      .map((text) => `nonsense: ${text}`),
    ...authored.flatMap(voiceFaults),
    ...[...replies, explain].flatMap(reportFaults),
    ...replies
      .filter((reply) => wordCount(reply) < LEAST_WORDS.reply)
      .map((reply) => `a reply gives no reason: ${reply}`),
    ...texts
      .filter((text) => LONG_INCHES.test(inUnits(text, 'imperial')))
      .map((text) => `two feet or more in inches: ${text}`),
    ...sharedFaults([...replies, explain]),
    ...(wordCount(explain) < LEAST_WORDS.explain ? ['it is not explained'] : []),
    ...UNITS.flatMap((units) =>
      lengthFaults(
        inUnits(ask, units),
        says.map((one) => inUnits(one.says, units))
      )
    )
  ];
}

/** What is said to two answers tells neither why it is wrong, and what is explained to all is said once. */
function sharedFaults(replies: readonly string[]): string[] {
  const said = replies.flatMap((reply) => [...new Set(reply.split(/(?<=[.?])\s+/))]);
  const shared = said.filter((sentence, i) => said.indexOf(sentence) < i);
  return [...new Set(shared)].map((sentence) => `said twice: ${sentence}`);
}

function lengthFaults(ask: string, says: readonly string[]): string[] {
  const lengths = says.map((one) => one.length);
  return [
    ...(ask.length > LONGEST.ask ? [`ask: ${ask.length} characters`] : []),
    ...(Math.max(0, ...lengths) > LONGEST.option ? ['an option is too long'] : []),
    ...(Math.max(...lengths) - Math.min(...lengths) > LIKE_LENGTH
      ? ['options of unlike length']
      : [])
  ];
}

function answerFaults({ answer }: Item): string[] {
  if (answer.form === 'mark') {
    const { key, band, least, most, errors } = answer;
    const near = errors.filter(({ value }) => Math.abs(value - key) <= band);
    return [
      ...(key - band > least && key + band < most ? [] : ['the key is not on the ruler']),
      ...near.map(({ id }) => `error ${id} is within the band`)
    ];
  }
  const ids = answer.form === 'choose' ? answer.options.map(({ id }) => id) : answer.key;
  const isThere = answer.form === 'order' || ids.includes(answer.key);
  const says = answer.form === 'choose' ? answer.options : answer.things;
  const isDone = answer.form === 'order' && answer.things.every(({ id }, i) => id === ids[i]);
  return [
    ...(isDone ? ['the things stand in order from the first'] : []),
    ...(isThere ? [] : ['the key is no option']),
    ...(new Set(ids).size === ids.length ? [] : ['an option is there twice']),
    ...(new Set(says.map((one) => one.says)).size === says.length
      ? []
      : ['two options say the same'])
  ];
}

function evidenceFaults(item: Item): string[] {
  const { evidence, answer, cases } = item;
  switch (evidence.is) {
    case 'practice':
      return [];
    case 'value':
      return valueFaults(item, evidence);
    case 'shown': {
      const all = cases.map(({ run }) => measured(run, evidence.measure, evidence.unknowns));
      const isRow =
        all.length > 1 && all.slice(1).every((one, i) => isAbove(all[i], one, evidence.measure));
      if (!isRow) return ['the runs do not show the most first'];
      return timesFaults(evidence.times, all);
    }
    case 'seen': {
      const isSeen = isCertainSign(
        cases[0].run,
        { seen: evidence.sign },
        'seen',
        evidence.unknowns
      );
      return isSeen ? [] : [`the run does not show ${evidence.sign}`];
    }
    case 'sign': {
      const key = answer.form === 'choose' ? answer.key : '';
      const isOne = isCertainSign(cases[0].run, evidence.signs, key, evidence.unknowns);
      return isOne ? [] : ['the run does not show the key alone'];
    }
    case 'drawn': {
      const key = answer.form === 'choose' ? answer.key : '';
      const isOne = isDrawnAlone(cases[0].run, evidence.drawn, key);
      return isOne ? [] : ['its chart does not show the key alone'];
    }
    case 'scaled': {
      const right = onlyScaled(
        cases.map(({ run }) => run),
        evidence
      );
      const key = right === null ? 'none' : evidence.ids[right];
      return answer.form === 'choose' && answer.key === key ? [] : [`what comes to it is ${key}`];
    }
    case 'limits': {
      const runs = cases.map(({ run }) => run);
      const within = onlyWithin(runs, evidence.limits, evidence.timed_s);
      const key = within === null ? 'none' : evidence.ids[within];
      return [
        ...(answer.form === 'choose' && answer.key === key ? [] : [`within its limits is ${key}`]),
        ...(liftsAlike(runs, evidence.limits, evidence.timed_s)
          ? ['as to lifting all of them are right']
          : [])
      ];
    }
    case 'rank':
      return rankFaults(item, evidence);
  }
}

function valueFaults(
  { answer, cases }: Item,
  { measure }: Extract<Evidence, { is: 'value' }>
): string[] {
  const value = figuresOf(shownScenarioOf(cases[0].run))[measure];
  if (answer.form === 'mark') return value === answer.key ? [] : [`the model says ${value}`];
  if (answer.form !== 'choose') return ['a value is chosen or marked'];
  const { options, key, band = 0 } = answer;
  const close = options.filter((one) => Math.abs((one.value ?? Infinity) - value) <= band);
  return close.length === 1 && close[0].id === key
    ? []
    : [`right: ${close.map(({ id }) => id).join(', ')}`];
}

function rankFaults(
  { answer, cases }: Item,
  evidence: Extract<Evidence, { is: 'rank' }>
): string[] {
  const ranked = cases
    .map(({ run }, i) => ({
      id: evidence.ids[i],
      value: measured(run, evidence.measure, evidence.unknowns)
    }))
    .sort((a, b) => b.value.nominal - a.value.nominal);
  const isSure = areFarApart(
    ranked.map(({ value }) => value),
    evidence.measure,
    evidence.pick
  );
  const order = ranked.map(({ id }) => id);
  const best = evidence.pick === 'least' ? order[order.length - 1] : order[0];
  const isKey =
    answer.form === 'order'
      ? answer.key.join() === order.join()
      : answer.form === 'choose' && answer.key === best;
  return [
    ...(isSure ? [] : ['the model is not sure of the order']),
    ...(isKey ? [] : [`the order is ${order.join()}`])
  ];
}
