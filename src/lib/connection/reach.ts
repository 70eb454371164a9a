const LOOPBACK = [/^127(\.\d+){3}$/, /^\[::1\]$/, /^localhost$/];
/** Within one network: RFC 1918, names that a network gives itself, and RFC 5737, made for examples. */
const NETWORK = [
  /^10(\.\d+){3}$/,
  /^192\.168(\.\d+){2}$/,
  /^172\.(1[6-9]|2\d|3[01])(\.\d+){2}$/,
  /^192\.0\.2\.\d+$/,
  /\.local$/
];

/** How far a link reaches, where that is not everywhere. */
export function nearText(link: string): string {
  if (!URL.canParse(link)) return '';
  const { hostname } = new URL(link);
  const isOf = (known: readonly RegExp[]) => known.some((one) => one.test(hostname));
  if (isOf(LOOPBACK)) return 'This link works on this device only.';
  return isOf(NETWORK) ? 'Works for phones on this network only.' : '';
}
