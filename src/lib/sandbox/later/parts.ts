/** What has water in it: one piece of code, fetched when the first of it is wanted. */
export { default as Compare } from '../Compare.svelte';
export { default as PracticeWater } from '../PracticeWater.svelte';
export { default as Replay } from '../Replay.svelte';
export { default as RunFilm } from '../RunFilm.svelte';
