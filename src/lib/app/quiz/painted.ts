/** Runs work once the page has been painted, so that it does not hold back what is shown. */
export function painted(work: () => void): void {
  requestAnimationFrame(() => setTimeout(work));
}
