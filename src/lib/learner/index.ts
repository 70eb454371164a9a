export { default as Trouble } from './Trouble.svelte';
export { Learner, provideLearner, useLearner } from './learner.svelte';
export { localDay, localDayAhead, localDays, newId, now } from './stamp';
