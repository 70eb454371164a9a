// Every page is written at build time, so that it opens offline; one with live data opts out itself.
export const prerender = true;
// A plain web space finds a page in a folder of its own, and knows of no other way.
export const trailingSlash = __FELTFOOT_HAS_SERVER__ ? 'never' : 'always';
