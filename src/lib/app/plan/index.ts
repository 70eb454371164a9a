export { readPlanFragment } from './plan-link';
export { default as DayPlanPage } from './DayPlanPage.svelte';
