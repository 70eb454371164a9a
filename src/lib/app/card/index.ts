export { default as BoatCardPage } from './BoatCardPage.svelte';
export { cardFragment, readCardFragment } from './card-link';
export { cardSections, type CardSection } from './sections';
