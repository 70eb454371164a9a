export { default as RecordPage } from './RecordPage.svelte';
export { default as TryList } from './TryList.svelte';
export { recordTable } from './record-table';
