import type { ShownRun } from '../lesson';
import { figuresOf } from './figures';
import { type SignName } from './measures';
import type { ItemDraft } from './generator';
import type { ItemOption } from './item';
import { cornersOf, type Unknowns } from '../../scoring';
import { shownScenarioOf } from './measure';
import { recognised, type Recognised } from './recognised';

export interface SignOption extends ItemOption {
  /** Name of what it claims of the run. */
  sign: SignName;
}

type Wanted = Recognised<SignOption> & { unknowns?: Unknowns };

/** Null unless the run shows the key's sign alone, whatever is unknown. */
export function recognise({ unknowns = 'slack and drag', ...wanted }: Wanted): ItemDraft | null {
  const { run, options, key } = wanted;
  const signs = Object.fromEntries(options.map(({ id, sign }) => [id, sign]));
  if (!isCertainSign(run, signs, key, unknowns)) return null;
  return recognised(wanted, { is: 'sign', signs, unknowns });
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
