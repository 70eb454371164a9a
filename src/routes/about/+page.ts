import { errorTables, knownFaults, tradeTable } from '$lib/app/trust';
import type { PageLoad } from './$types';

export const load: PageLoad = () => ({
  errors: errorTables(),
  faults: knownFaults(),
  trade: tradeTable()
});
