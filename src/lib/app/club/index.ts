export { default as ClubPage } from './ClubPage.svelte';
