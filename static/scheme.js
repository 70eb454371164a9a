// Runs before the first paint, so that a chosen night never flashes white. A file of its own and
// not inline, since the content policy lets only files of ours run.
try {
  const chosen = localStorage.getItem('feltfoot-scheme');
  if (chosen === 'light' || chosen === 'dark') document.documentElement.dataset.scheme = chosen;
} catch {
  // Storage is closed to us: the device's own choice stands.
}
