export { default as Attempt } from './Attempt.svelte';
export { default as ChallengeWater } from './ChallengeWater.svelte';
export { default as Verdict } from './Verdict.svelte';
export { correctionOf } from './corrections';
export { default as LeftOut } from './LeftOut.svelte';
export { Marks } from './marks.svelte';
export { runAllTries, runTries } from './run-tries';
export { tryRuns, type GradedRun } from './try-runs';
