import type { HandleClientError } from '@sveltejs/kit';

/** A page that got no answer is told from one that broke by the browser's own words, see no-page.ts. */
export const handleError: HandleClientError = ({ error, message }) => {
  return { message: error instanceof TypeError ? error.message : message };
};
