export { default as DayPlanPage } from './DayPlanPage.svelte';
