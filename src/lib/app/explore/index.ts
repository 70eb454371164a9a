export { default as Explore } from './Explore.svelte';
