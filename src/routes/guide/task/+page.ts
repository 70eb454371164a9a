// Written at build time, so that it opens offline; what it shows comes from the phone itself.
export const prerender = true;
