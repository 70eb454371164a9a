import { log } from './log';

/** What was asked, by our own names, and how it was answered. */
interface Answered {
  method: string;
  /** The address's pattern, never the address itself. */
  route: string;
  status: number;
}

/** Told where the answer was yes. */
const DONE: Record<string, string> = {
  'POST /api/guide/secret': 'new secret',
  'POST /api/guide/passkey': 'new passkey',
  'POST /api/guide/session': 'space opened',
  'POST /api/guide/passkey/open': 'space opened',
  'DELETE /api/guide/space': 'space deleted',
  'DELETE /api/guide/homework/[id]': 'homework deleted',
  'DELETE /api/guide/homework/[id]/client/[client]': 'client deleted',
  'DELETE /api/guide/clinic/[id]': 'clinic deleted',
  'POST /api/homework/forget': 'client deleted',
  'POST /api/clinic/[code]/forget': 'seat deleted'
};
const DOORS = new Set(['POST /api/guide/session', 'POST /api/guide/passkey/open']);

/** What a watcher wants to know of it; null of what is everyday. */
export function securityEventOf({ method, route, status }: Answered): string | null {
  const asked = `${method} ${route}`;
  if (status === 429) return 'too often';
  if (status === 403) return 'refused';
  if (DOORS.has(asked) && status >= 400 && status < 500) return 'key refused';
  if (status === 401) return 'no key';
  return status < 300 ? (DONE[asked] ?? null) : null;
}

const MINUTE_MS = 60_000;

/**
 * The log of such events: the first at once, what follows of its kind within a minute as one line with
 * its number, so that a flood fills no disk. It holds kinds and patterns, nothing of anybody.
 */
export class SecurityLog {
  readonly #more = new Map<string, number>();

  constructor(private readonly write: typeof log = log) {}

  note(answered: Answered): void {
    const event = securityEventOf(answered);
    if (!event) return;
    const { method, route } = answered;
    const name = `${event} ${method} ${route}`;
    const more = this.#more.get(name);
    if (more !== undefined) return void this.#more.set(name, more + 1);
    this.write('security', { what: event, method, route, times: 1 });
    this.#more.set(name, 0);
    setTimeout(() => this.#sum(name, { what: event, method, route }), MINUTE_MS).unref();
  }

  #sum(name: string, fields: Record<string, string>): void {
    const times = this.#more.get(name) ?? 0;
    this.#more.delete(name);
    if (times > 0) this.write('security', { ...fields, times });
  }
}
