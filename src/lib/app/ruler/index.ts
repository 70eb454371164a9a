export { default as RulerPlot } from './RulerPlot.svelte';
export { default as Series } from './Series.svelte';
export { marksSoFar } from './marks';
export { default as ShortDrill } from './ShortDrill.svelte';
export type { MadeTry } from './shown';
export { nextTry } from './next-try';
export { Readings } from './readings.svelte';
export { RulerNow } from './ruler-now.svelte';
export { checkText, standingText } from './standing';
