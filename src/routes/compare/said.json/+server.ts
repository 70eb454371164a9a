import { firstSaid } from '$lib/app/water';
import { json } from '@sveltejs/kit';

/** Written once, when the app is built. */
export const prerender = true;

export const GET = (): Response => json(firstSaid());
