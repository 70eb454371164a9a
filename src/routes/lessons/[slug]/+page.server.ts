import { allLessons } from '$lib/course';
import type { EntryGenerator } from './$types';

/** Here, so that no page brings all lessons along to know their names. */
export const entries: EntryGenerator = () => allLessons().map(({ id }) => ({ slug: id }));
