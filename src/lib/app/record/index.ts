export { default as RecordPage } from './RecordPage.svelte';
export { default as Trouble } from './Trouble.svelte';
export { default as TryList } from './TryList.svelte';
export { Learner, provideLearner, useLearner } from './learner.svelte';
export { download, recordTable } from './record-file';
export { localDay, localDays, newId, now } from './stamp';
