export { default as LessonPage } from './LessonPage.svelte';
export { default as FirstTry } from './FirstTry.svelte';
export { default as LessonList } from './LessonList.svelte';
export { default as Today } from './Today.svelte';
export { default as Glossary } from './Glossary.svelte';
export { linkHere } from './first-result';
export { keepBegun } from './begun';
