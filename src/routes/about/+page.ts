import { blocksOf, sectionOf } from '$lib/app/trust';
import model from '../../../docs/model.md?raw';
import trade from '../../../docs/trade-check.md?raw';
import type { PageLoad } from './$types';

export const load: PageLoad = () => {
  return {
    faults: sectionOf(blocksOf(model), 'What is wrong with it'),
    trade: blocksOf(trade)
      .filter(({ kind }) => kind === 'table')
      .slice(0, 1)
  };
};
