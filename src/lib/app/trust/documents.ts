import access from '../../../../docs/accessibility.md?raw';
import errors from '../../../../docs/model-errors.md?raw';
import model from '../../../../docs/model.md?raw';
import trade from '../../../../docs/trade-check.md?raw';
import { blocksOf, sectionOf, type Block } from './markdown';

/** The model's own page, whole. */
export const modelPage = (): Block[] => blocksOf(model);

/** Who can use it, how that was checked, and what was not. */
export const accessPage = (): Block[] => blocksOf(access);

/** What is known to be wrong with the model. */
export const knownFaults = (): Block[] => sectionOf(modelPage(), 'What’s wrong with it');

/** What guides see, beside the model. */
export const tradeTable = (): Block[] =>
  blocksOf(trade)
    .filter(({ kind }) => kind === 'table')
    .slice(0, 1);

/** Errors and bands, as they were computed for this version of the model. */
export const errorTables = (): Block[] => blocksOf(errors).slice(1);
