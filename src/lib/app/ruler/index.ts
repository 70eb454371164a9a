export { default as DrillsPage } from './DrillsPage.svelte';
export { default as RulerPage } from './RulerPage.svelte';
export { default as RulerPlot } from './RulerPlot.svelte';
export { default as TrySeries } from './TrySeries.svelte';
export { marksSoFar } from './marks';
export type { MadeTry } from './shown';
export { Readings } from './readings.svelte';
export { RulerNow } from './ruler-now.svelte';
