/** Long work off the page and off the server's own thread: one table of jobs, see jobs.ts. */
export { Asker, BrokeOff } from './asker';
export { inPagePort } from './in-page';
export { costOf, type GivenTo, type JobName, type MadeBy } from './jobs';
export type { HostPort } from './messages';
export { serve } from './serve';
