import { wordingFault } from '../../scoring';
import { figuresOf } from './figures';
import type { Evidence, Item } from './item';
import { isAbove, measured, shownScenarioOf } from './measure';
import { onlyWithin } from './limits-item';
import { isCertainSign } from './sign';
import { tipFaults } from './tip-said';

/** Longest words that stand on a narrow phone without scrolling far, characters. */
const LONGEST = { ask: 330, option: 70 };
/** Options differ in length by less than this, so that length gives nothing away. */
const LIKE_LENGTH = 26;

/** What is wrong with an item, computed from its cases anew; empty for a good one. */
export function faultsOf(item: Item): string[] {
  return [...wordFaults(item), ...answerFaults(item), ...evidenceFaults(item), ...tipFaults(item)];
}

function wordFaults({ ask, answer, explain }: Item): string[] {
  const says =
    answer.form === 'choose' ? answer.options : answer.form === 'order' ? answer.things : [];
  const lengths = says.map((one) => one.says.replace(/\{[^}]*\}/g, '12 in').length);
  const texts = [ask, explain, ...says.map((one) => one.says)];
  return [
    ...texts.flatMap((text) => (wordingFault(text) ? [`cannot write ${wordingFault(text)}`] : [])),
    ...texts
      .filter((text) => /NaN|Infinity|undefined/.test(text))
      .map((text) => `nonsense: ${text}`),
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
  return [
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
      return isRow ? [] : ['the runs do not show the most first'];
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
    case 'limit': {
      const within = cases
        .map(({ run }) => measured(run, evidence.measure, evidence.unknowns))
        .map(({ nominal, corners }) =>
          [nominal, ...corners].every((value) => value <= evidence.most)
        );
      const key = evidence.ids[within.lastIndexOf(true)];
      return answer.form === 'choose' && answer.key === key ? [] : [`the last within is ${key}`];
    }
    case 'limits': {
      const within = onlyWithin(
        cases.map(({ run }) => run),
        evidence.limits
      );
      const key = within === null ? 'none' : evidence.ids[within];
      return answer.form === 'choose' && answer.key === key ? [] : [`within its limits is ${key}`];
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
  const isSure = ranked
    .slice(1)
    .every((one, i) => isAbove(ranked[i].value, one.value, evidence.measure));
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
