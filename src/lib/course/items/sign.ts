import type { ShownRun } from '../lesson';
import { figuresOf } from './figures';
import { type SignName } from './measures';
import type { ItemDraft } from './generator';
import type { ItemOption } from './item';
import { cornersOf, type Unknowns } from '../../scoring';
import { shownScenarioOf } from './measure';

export interface SignOption extends ItemOption {
  /** Name of what it claims of the run. */
  sign: SignName;
}

interface Wanted {
  ask: string;
  caption: string;
  run: ShownRun;
  shows: NonNullable<ItemDraft['shows']>;
  options: readonly SignOption[];
  key: string;
  unknowns?: Unknowns;
  explain: string;
}

/** Which of these was it? Null unless the run shows the key's sign alone, whatever is unknown. */
export function recognise(wanted: Wanted): ItemDraft | null {
  const { run, options, key, unknowns = 'slack and drag', ask, caption, explain, shows } = wanted;
  const signs = Object.fromEntries(options.map(({ id, sign }) => [id, sign]));
  if (!isCertainSign(run, signs, key, unknowns)) return null;
  return {
    ask,
    explain,
    shows,
    answer: {
      form: 'choose',
      options: options.map(({ id, says, reply }) => ({ id, says, reply })),
      key
    },
    evidence: { is: 'sign', signs, unknowns },
    cases: [{ caption, run }]
  };
}

export function isCertainSign(
  run: ShownRun,
  signs: Readonly<Record<string, SignName>>,
  key: string,
  unknowns: Unknowns
): boolean {
  const scenario = shownScenarioOf(run);
  return [scenario, ...cornersOf(scenario, unknowns)].every((one) => {
    const shown = figuresOf(one).signs;
    return Object.entries(signs).every(([id, sign]) => shown.has(sign) === (id === key));
  });
}
