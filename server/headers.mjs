/**
 * Headers that go on every answer, also on prerendered pages and static files, which never pass
 * through a Kit hook. The content policy proper comes from Kit (it knows the hashes); a page's own
 * meta tag cannot forbid framing, so that part is said here.
 */
export const securityHeaders = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'X-Frame-Options': 'DENY',
  'Content-Security-Policy': "frame-ancestors 'none'",
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  // A phone held as a rod is read through its motion sensors; a jig and one's own rod are filmed.
  'Permissions-Policy':
    'accelerometer=(self), gyroscope=(self), camera=(self), geolocation=(), microphone=(), payment=(), usb=()'
};

/** A browser that came by https comes by nothing else for a year: nobody between can make it. */
const comeSecurely = { 'Strict-Transport-Security': 'max-age=31536000' };

/** @param {string} protocol @returns {Record<string, string>} */
export const headersUnder = (protocol) =>
  protocol === 'https' ? { ...securityHeaders, ...comeSecurely } : securityHeaders;
