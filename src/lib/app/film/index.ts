export { default as FilmBench } from './FilmBench.svelte';
