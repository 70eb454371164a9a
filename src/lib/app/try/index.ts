export { default as Attempt } from './Attempt.svelte';
export { default as ChallengeWater } from './ChallengeWater.svelte';
export { default as Verdict } from './Verdict.svelte';
export { correctionOf } from './corrections';
export { littleByLittle } from './little-by-little';
export { Marks } from './marks.svelte';
export { type GradedTry, knownMarks, marksFor } from './marks';
