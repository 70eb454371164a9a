// The phone's page is written at build time; the screen's page beside it shows what the store holds.
export const prerender = true;
