export { default as Home } from './Home.svelte';
export { default as PracticePlaces } from './PracticePlaces.svelte';
