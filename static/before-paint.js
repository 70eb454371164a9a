// Runs before the first paint. A file of its own and not inline, since the content policy lets only
// files of ours run.
const root = document.documentElement;
try {
  // A chosen night never flashes white.
  const chosen = localStorage.getItem('feltfoot-scheme');
  if (chosen === 'light' || chosen === 'dark') root.dataset.scheme = chosen;
  // Who has begun is never shown the first try of a newcomer, which the day takes the place of.
  if (localStorage.getItem('feltfoot-begun')) root.dataset.begun = '';
  // A page that is loaded again is as high as it was, until what it held is there again: the place
  // that one had scrolled to is found, and nothing is seen to move.
  const [{ type }] = performance.getEntriesByType('navigation');
  const left = JSON.parse(sessionStorage.getItem('feltfoot-left'));
  if (type === 'reload' && left?.href === location.href)
    root.style.setProperty('--left-height', `${left.height_px}px`);
} catch {
  // Storage is closed to us: the device's own choice stands, and the page begins at its top.
}
