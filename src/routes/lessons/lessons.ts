import { loadLessons } from '$lib/course';

/** All lessons in order. Checking them takes a tenth of a second, so every page shares these. */
export const lessons = loadLessons();
