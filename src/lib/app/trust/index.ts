/** How far to trust what is computed here: values that others published, what guides say, known faults. */
export { default as Checks } from './Checks.svelte';
export { default as Markdown } from './Markdown.svelte';
export { blocksOf, sectionOf } from './markdown';
