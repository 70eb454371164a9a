export { default as LogPage } from './LogPage.svelte';
