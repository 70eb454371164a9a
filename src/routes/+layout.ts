// Every page is written at build time, so that it opens offline; one with live data opts out itself.
export const prerender = true;
export const trailingSlash = 'never';
