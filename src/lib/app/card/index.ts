export { default as BoatCardPage } from './BoatCardPage.svelte';
