/**
 * Where guides see a lift go otherwise than the model does, in the one sentence that every page has.
 * Common practice without a source; beside the model in docs/trade-check.md, a1, a2 and f.
 */
export const GUIDES_SEE =
  'On a rod lift of an hour or two guides see half the model’s travel or less. On a fast sweep they see more height. Film yours.';
