import type { Generator } from '../generator';
import { falls } from './falls';
import { faults } from './faults';
import { felt } from './felt';
import { markGenerators } from './marks';
import { orders } from './orders';
import { plans } from './plans';
import { rows } from './rows';
import { season } from './season';
import { ways } from './ways';

export const GENERATORS: readonly Generator[] = [
  ...markGenerators,
  ...falls,
  ...orders,
  ...rows,
  ...plans,
  ...felt,
  ...faults,
  ...season,
  ...ways
];
