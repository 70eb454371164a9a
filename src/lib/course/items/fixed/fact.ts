import type { MeasureName, SignName } from '../measures';
import type { Evidence, Item } from '../item';
import { caseOf, type ShownName } from './shown';

type Option = readonly [says: string, reply: string];

/**
 * What the runs show of what the question states: the most first by a measure (so many times as much
 * as the second, where the words say so), or a sign of the first;
 * or that guides differ about it, and the words say both. None: common practice.
 */
type Claim =
  { most: MeasureName; times?: readonly [number, number] } | { sign: SignName } | 'guides differ';

/** A question with the right option first; `dealt` puts it into its place. */
export function fact(
  id: string,
  objective: string,
  ask: string,
  options: readonly [right: Option, Option, Option],
  explain: string,
  shown: readonly ShownName[] = [],
  claim?: Claim
): Item {
  const ids = ['right', 'first-error', 'second-error'] as const;
  const written = options.map(([says, reply], i) => ({ id: ids[i], says, reply }));
  return {
    source: id,
    seed: 0,
    kind: 'choose',
    objective,
    ask,
    answer: { form: 'choose', options: written, key: 'right' },
    explain,
    evidence: evidenceFor(claim, objective),
    cases: shown.map(caseOf)
  };
}

function evidenceFor(claim: Claim | undefined, objective: string): Evidence {
  if (claim === 'guides differ')
    return { is: 'practice', source: 'common practice, no source; guides differ' };
  if (claim && 'most' in claim) {
    const { most: measure, times } = claim;
    return { is: 'shown', measure, unknowns: 'drag', ...(times && { times }) };
  }
  if (claim) return { is: 'seen', sign: claim.sign, unknowns: 'drag' };
  const first = '; local rules and licensed instruction come first';
  return {
    is: 'practice',
    source: `common practice, no source${objective === 'safety' ? first : ''}`
  };
}
