export { default as RecordPage } from './RecordPage.svelte';
export { default as TryList } from './TryListLater.svelte';
export { recordTable } from './record-table';
