export { spellText } from './log-words';
export { default as LogPage } from './LogPage.svelte';
