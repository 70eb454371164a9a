// The leader sees the same room as the screen.
export { load, prerender } from '../+page.server';
