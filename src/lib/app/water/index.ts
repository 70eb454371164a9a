export { default as ComparePage } from './ComparePage.svelte';
export { default as Retrieves } from './Retrieves.svelte';
export { default as FreePractice } from './FreePractice.svelte';
export { shownRetrieves, type ShownRetrieve } from './shown';
export { firstSaid } from './first-said';
export { runFragment } from './run-link';
