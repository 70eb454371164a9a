export { default as RecordPage } from './RecordPage.svelte';
export { default as Trouble } from './Trouble.svelte';
export { default as TryList } from './TryList.svelte';
export { Learner, provideLearner, useLearner } from './learner.svelte';
export { download } from '$lib/sandbox/export/download';
export { recordTable } from './record-table';
export { localDay, localDays, newId, now } from './stamp';
