/** Questions: generated ones, whose keys the model computes, and fixed ones. */
export { isAsked, itemOf, lessonOf, optionsOf, questionsAbout, SOURCES, type Source } from './bank';
export { CHECKED_SEEDS, drawCheckedSeed, LAST_CHECKED_SEED } from './checked-seeds';
export { askedBy, COVERAGE } from './coverage';
export { FIXED } from './fixed';
export { generate, type Generator } from './generator';
export { GENERATORS } from './generators';
export { isWithin, judgeAnswer, type Judgement } from './judge';
export { withKeyAt } from './key-place';
export { OBJECTIVES, type Objective } from './objectives';
export { isRetired } from './retired';
export type { Answer, Case, ChooseAnswer, Given, Item, MarkAnswer, OrderAnswer } from './item';
