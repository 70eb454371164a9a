// A guide's pages show what the store holds now. The client's page beside them opts in again.
export const prerender = false;
