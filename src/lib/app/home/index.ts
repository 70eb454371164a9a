export { default as Home } from './Home.svelte';
