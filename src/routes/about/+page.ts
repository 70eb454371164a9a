import { knownFaults, tradeTable } from '$lib/app/trust';
import type { PageLoad } from './$types';

export const load: PageLoad = () => ({ faults: knownFaults(), trade: tradeTable() });
