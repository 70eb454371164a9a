import { compute, keepAtHand } from '$lib/compute/browser';
import type { MakeItem } from './quiz-run.svelte';

keepAtHand('question');

/** Off the page: a question takes the model up to half a second. */
export const makeItem: MakeItem = (named, signal) => compute.ask('question', named, { signal });
