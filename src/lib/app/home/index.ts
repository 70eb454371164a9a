export { default as Home } from './Home.svelte';
export { lessonOnward, type Onward } from './onward';
export { default as PracticePlaces } from './PracticePlaces.svelte';
export { default as PracticeNext } from './PracticeNext.svelte';
