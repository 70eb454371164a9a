import { hostname, networkInterfaces } from 'node:os';

/** @returns {string[]} the IPv4 addresses by which other devices on the network may reach us */
export function lanAddresses() {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}

/**
 * The names under which this server answers. A page elsewhere that points its own name at us (DNS
 * rebinding) would else be same-origin with everything here.
 * @param {string} extra Comma-separated names, from FELTFOOT_HOSTS.
 * @returns {Set<string>} lower-case host names without port
 */
export function allowedHosts(extra = '') {
  const machine = hostname().toLowerCase();
  const here = Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .map(({ address, family }) => (family === 'IPv6' ? `[${address.split('%')[0]}]` : address));
  const named = extra.split(',').map((name) => name.trim().toLowerCase());
  const all = ['localhost', '127.0.0.1', '[::1]', machine, `${machine}.local`, ...here, ...named];
  return new Set(all.filter(Boolean));
}

/**
 * @param {string | undefined} header a request's Host header
 * @returns {string | undefined} its lower-case name without port; undefined if it is malformed
 */
export function hostName(header) {
  const match = /^(\[[0-9a-f:.]+\]|[a-z0-9._-]+)(:\d{1,5})?$/i.exec(header ?? '');
  return match?.[1]?.toLowerCase();
}
